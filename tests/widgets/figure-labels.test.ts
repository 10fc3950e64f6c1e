import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ticksOf } from "../../src/widgets/drawing/axes.ts";
import { evenly, reaching } from "../../src/widgets/drawing/frames.ts";
import { type Point, spread, valueBeside } from "../../src/widgets/drawing/labels.ts";
import type { Frame } from "../../src/widgets/drawing/panel.ts";
import { turnRateRadius } from "../../src/widgets/turn-rate-radius/figure.ts";
import { dunlin } from "./dunlin.ts";

const heights = fc.array(fc.double({ min: -50, max: 250, noNaN: true }), { minLength: 1, maxLength: 6 });

describe("spread", () => {
  test("spread keeps names apart, in their order and within bounds", () => {
    fc.assert(
      fc.property(heights, (wanted) => {
        const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
        const places = spread(wanted, 0, 200, 16);
        const sorted = order.map((i) => places[i]!);
        for (let i = 1; i < sorted.length; i++) expect(sorted[i]! - sorted[i - 1]!).toBeGreaterThanOrEqual(16 - 1e-6);
        expect(sorted[0]).toBeGreaterThanOrEqual(-1e-6);
        expect(sorted.at(-1)).toBeLessThanOrEqual(200 + 1e-6);
      }),
    );
  });

  test("spread leaves alone what is apart already", () => {
    expect(spread([100, 20, 60], 0, 200, 16)).toEqual([100, 20, 60]);
  });

  test("spread sets two that collide evenly about their middle", () => {
    expect(spread([50, 52], 0, 200, 16)).toEqual([43, 59]);
  });
});

describe("valueBeside", () => {
  const frame: Frame = turnRateRadius
    .show({ values: { tas: 95, bank: 15 }, aircraft: dunlin })
    .panels({ width: 580 })[0]!.frame;
  const middle: Point = [(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2];
  const side = (lines: Point[][], at = middle) => {
    const { x, y } = valueBeside(frame, at, "3.08 °/s", lines);
    return [x[0]! < at[0] ? "left" : "right", y[0]! < at[1] ? "above" : "below"];
  };
  const through = (slope: number): Point[] => [
    [middle[0] - 100, middle[1] - 100 * slope],
    [middle[0] + 100, middle[1] + 100 * slope],
  ];

  test("valueBeside stands above right of a point that no line crosses", () => {
    expect(side([])).toEqual(["right", "above"]);
  });

  test("valueBeside takes the side that a line leaves free", () => {
    expect(side([through(-0.4)])).toEqual(["right", "below"]);
    expect(side([through(0.4)])).toEqual(["right", "above"]);
  });

  test("valueBeside stays inside the frame near its right edge", () => {
    const at: Point = [frame.right - 20, middle[1]];
    expect(side([], at)[0]).toBe("left");
  });

  test("valueBeside doesn't part a value from its point by another line", () => {
    const above: Point[] = [
      [frame.left, middle[1] - 20],
      [frame.right, middle[1] - 20],
    ];
    expect(side([above])).toEqual(["right", "below"]);
  });
});

describe("axes", () => {
  test("ticksOf gives multiples of the first step that leaves room, ends included", () => {
    const axis = { from: 0, to: 10, steps: [1, 2, 5], text: String, name: "" };
    expect(ticksOf(axis, 100, 20)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(ticksOf(axis, 250, 20)).toHaveLength(11);
    expect(ticksOf({ ...axis, from: -3, to: 5, steps: [2] }, 100, 20)).toEqual([-2, 0, 2, 4]);
  });

  test("reaching is the first of a ladder that a value doesn't pass, or a multiple of the last", () => {
    expect(reaching(10, [10, 15])).toBe(10);
    expect(reaching(10.1, [10, 15])).toBe(15);
    expect(reaching(31, [10, 15])).toBe(45);
  });

  test("evenly gives both ends exactly", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 0.1, max: 1e3, noNaN: true }),
        (from, length) => {
          const list = evenly(from, from + length, 7);
          expect([list[0]! - from, list.at(-1)! - (from + length), list.length]).toEqual([0, 0, 8]);
        },
      ),
    );
  });
});
