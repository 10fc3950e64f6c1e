import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dragged, keyed, stepped, typedNumber } from "../../src/widgets/live-steps.ts";

const speed = { from: 60, to: 180, step: 5, circle: false };
const heading = { from: 0, to: 360, step: 5, circle: true };

describe("keyed", () => {
  test.each([
    ["ArrowRight", 100],
    ["ArrowUp", 100],
    ["ArrowLeft", 90],
    ["ArrowDown", 90],
    ["PageUp", 105],
    ["PageDown", 85],
    ["Home", 60],
    ["End", 180],
  ])("keyed by %s leads from 95 to %d", (key, value) => {
    expect(keyed(key, 95, speed)).toBe(value);
  });

  test.each(["Tab", "a", "Enter", "constructor"])("keyed leaves %s to the page", (key) => {
    expect(keyed(key, 95, speed)).toBeUndefined();
  });

  test("keyed keeps what was typed between two steps", () => {
    expect(keyed("ArrowRight", 97, speed)).toBe(102);
  });
});

describe("stepped", () => {
  test("stepped leaves no dust of binary fractions", () => {
    expect(stepped(0.1, 2, { from: 0, to: 1, step: 0.1, circle: false })).toBe(0.3);
  });

  test("stepped goes round on a full circle", () => {
    expect(stepped(355, 2, heading)).toBe(5);
    expect(stepped(0, -1, heading)).toBe(355);
  });

  test("stepped never leaves the range it starts in", () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 180 }), fc.integer({ min: -100, max: 100 }), (value, steps) => {
        const next = stepped(value, steps, speed);
        expect(next).toBeGreaterThanOrEqual(60);
        expect(next).toBeLessThanOrEqual(180);
      }),
    );
  });
});

describe("dragged", () => {
  test("dragged takes four pixels to a step", () => {
    expect(dragged(95, 4, speed)).toBe(100);
    expect(dragged(95, -8, speed)).toBe(85);
    expect(dragged(95, 1, speed)).toBe(95);
  });

  test("dragged crosses any range within 200 pixels", () => {
    const altitude = { from: 0, to: 20000, step: 100, circle: false };
    expect(dragged(0, 200, altitude)).toBe(20000);
    expect(dragged(60, 200, speed)).toBe(180);
  });

  test("dragged there and back is where it began", () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 180 }), (start) => {
        expect(dragged(start, 0, speed)).toBe(start);
      }),
    );
  });
});

describe("typedNumber", () => {
  test.each([
    ["95", 95],
    [" 95 kt", 95],
    ["15°", 15],
    ["0,6", 0.6],
    ["0,600", 0.6],
    ["1,100", 1100],
    ["1 100", 1100],
    [".5", 0.5],
    ["-5", -5],
    ["−5 °C", -5],
    ["+17", 17],
  ])("typedNumber reads %s as %d", (text, value) => {
    expect(typedNumber(text)).toBe(value);
  });

  test.each(["", "kt", "1.2.3", "5 6 k 7", "--3"])("typedNumber doesn't make a number of '%s'", (text) => {
    expect(typedNumber(text)).toBeUndefined();
  });
});
