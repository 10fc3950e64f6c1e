import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Hold,
  holdEntry,
  holdOutbound,
  holdOutboundByRule,
  OutOfRange,
  shortestTurn,
  windTriangle,
} from "../../src/calc/index.ts";
import { between } from "./evenly.ts";
import { flown } from "./hold-flown.ts";

const hold = (given: Partial<Hold> = {}): Hold => ({
  inbound: 0,
  tas: 90,
  windFrom: 0,
  windSpeed: 0,
  inboundTime: 60,
  turns: "right",
  rate: 3,
  ...given,
});
/** In winds under a quarter of the true airspeed, which leave an outbound leg to fly. */
const flyable = fc
  .record({
    inbound: between(0, 359),
    tas: between(70, 200),
    windFrom: between(0, 359),
    part: between(0, 0.25),
    inboundTime: between(60, 120),
    turns: fc.constantFrom("left", "right"),
    rate: between(2.5, 4),
  })
  .map(({ part, ...rest }): Hold => ({ ...rest, windSpeed: part * rest.tas }));

describe("holdEntry", () => {
  test.each([
    [90, "direct"],
    [90 + 109.9, "direct"],
    [90 + 110, "direct"],
    [90 + 110.1, "offset"],
    [90 + 180, "offset"],
    [90 + 180.1, "parallel"],
    [90 - 70.1, "parallel"],
    [90 - 70, "direct"],
    [90 - 69.9, "direct"],
  ])("joins 090 right-hand on heading %d° by the %s entry", (heading, entry) => {
    expect(holdEntry(90, heading, "right")).toBe(entry);
    expect(holdEntry(90, 180 - heading, "left")).toBe(entry);
    expect(holdEntry(90 + 720, heading - 360, "right")).toBe(entry);
  });

  test("counts a boundary as met in spite of binary fractions", () => {
    for (const inbound of [33.3, 0.1, 217.7]) {
      expect(holdEntry(inbound, inbound + 110, "right")).toBe("direct");
      expect(holdEntry(inbound, inbound - 70, "right")).toBe("direct");
      expect(holdEntry(inbound, inbound + 180, "right")).toBe("offset");
    }
  });
});

describe("holdOutbound", () => {
  test("closes the pattern, flown leg by leg and turn by turn", () => {
    fc.assert(
      fc.property(flyable, (given) => {
        const { gap } = flown(given, holdOutbound(given)!);
        expect(gap).toBeLessThan(0.001);
      }),
    );
  });

  test("times the leg from abeam the fix as the flown pattern passes it", () => {
    fc.assert(
      fc.property(flyable, (given) => {
        const out = holdOutbound(given)!;
        expect(out.timeFromAbeam).toBeCloseTo(flown(given, out).fromAbeam, 2);
      }),
    );
  });

  test("mirrors right and left", () => {
    fc.assert(
      fc.property(flyable, (given) => {
        const turns = given.turns === "left" ? "right" : "left";
        const mirrored = holdOutbound({ ...given, inbound: -given.inbound, windFrom: -given.windFrom, turns })!;
        const out = holdOutbound(given)!;
        expect(Math.abs(shortestTurn(-out.heading, mirrored.heading))).toBeLessThan(1e-9);
        expect(mirrored.time).toBeCloseTo(out.time, 9);
        expect(mirrored.timeFromAbeam).toBeCloseTo(out.timeFromAbeam, 9);
      }),
    );
  });

  test("is the reciprocal for the inbound time in still air", () => {
    const still = { heading: 180, time: expect.closeTo(60, 9), timeFromAbeam: expect.closeTo(60, 9) };
    expect(holdOutbound(hold())).toEqual(still);
    expect(holdOutbound(hold({ inbound: 250, turns: "left", rate: -3 }))).toEqual({ ...still, heading: 70 });
  });

  test.each([
    [10, "2.95"],
    [30, "2.6"],
  ])("in %d kt across, at 90 kt, corrects %s times as much as inbound", (windSpeed, times) => {
    for (const windFrom of [90, 270]) {
      const given = hold({ windFrom, windSpeed });
      const inbound = windTriangle(0, 90, windFrom, windSpeed)!.correction;
      const ratio = shortestTurn(holdOutbound(given)!.heading, 180) / inbound;
      expect(ratio.toFixed(times.length - 2)).toBe(times);
    }
  });

  // A light wind w across moves both turns and the leg by w (T + t), which a leg of t must fly back: T/t + 1 times.
  test("corrects three times as much as inbound in the lightest wind, for a one-minute leg at rate one", () => {
    for (const [inboundTime, rate] of [
      [60, 3],
      [90, 3],
      [60, 1.5],
    ] as const) {
      const given = hold({ windFrom: 90, windSpeed: 0.001, inboundTime, rate });
      const inbound = windTriangle(0, 90, 90, 0.001)!.correction;
      const ratio = shortestTurn(holdOutbound(given)!.heading, 180) / inbound;
      expect(ratio).toBeCloseTo(360 / rate / inboundTime + 1, 4);
    }
  });

  test("needs 42 s from abeam, 36 s from wings level, in 10 kt on the nose inbound", () => {
    const out = holdOutbound(hold({ windSpeed: 10 }))!;
    expect(out.timeFromAbeam.toFixed(0)).toBe("42");
    expect(out.time).toBeCloseTo(36, 9);
    expect(out.heading).toBeCloseTo(180, 9);
  });

  // Behind: 100 kt × 60 s and 10 kt × 120 s, flown back at 80 kt; 10 kt × 60 s of it before coming abeam.
  test("needs 90 s from wings level, 82.5 s from abeam, in 10 kt behind inbound", () => {
    const out = holdOutbound(hold({ windFrom: 180, windSpeed: 10 }))!;
    expect(out.time).toBeCloseTo(90, 9);
    expect(out.timeFromAbeam).toBeCloseTo(82.5, 9);
  });

  test("ends two thirds of a mile off where one drift is corrected outbound in 20 kt across", () => {
    const given = hold({ windFrom: 90, windSpeed: 20 });
    const single = windTriangle(180, 90, 90, 20)!;
    const { gap } = flown(given, { heading: single.heading, time: 60 });
    expect(gap.toFixed(2)).toBe("0.67");
  });

  test("points upwind, and still closes, where the turns drift as far as the inbound leg", () => {
    const given = hold({ windFrom: 2, windSpeed: 40 });
    const out = holdOutbound(given)!;
    expect(Math.abs(shortestTurn(0, out.heading))).toBeLessThan(90);
    expect(flown(given, out).gap).toBeLessThan(0.001);
  });

  // Straight down the course neither turn takes any time at first: the leg starts where the fix is, flown upwind.
  test("counts from wings level where the fix is never abeam", () => {
    const out = holdOutbound(hold({ windSpeed: 40 }))!;
    expect(out).toEqual({ heading: 0, time: expect.closeTo(36, 9), timeFromAbeam: expect.closeTo(36, 9) });
  });

  test("takes the slowest of turns, whose drift needs the longest of legs", () => {
    const slow = hold({ windFrom: 180, windSpeed: 10, rate: 0.5 });
    expect(flown(slow, holdOutbound(slow)!).gap).toBeLessThan(0.001);
  });

  test("has no answer in a wind as strong as the true airspeed, or where the course cannot be held", () => {
    expect(holdOutbound(hold({ windFrom: 180, windSpeed: 90 }))).toBeNull();
    expect(holdOutbound(hold({ windFrom: 180, windSpeed: 89.9 }))).not.toBeNull();
    expect(holdOutbound(hold({ windFrom: 90, windSpeed: 95 }))).toBeNull();
    expect(holdOutbound(hold({ windFrom: 0, windSpeed: 95 }))).toBeNull();
  });

  test("refuses a rate of nothing", () => {
    expect(() => holdOutbound(hold({ rate: 0 }))).toThrow(OutOfRange);
    expect(() => holdOutboundByRule(hold({ rate: 0 }))).toThrow(OutOfRange);
  });
});

describe("holdOutboundByRule", () => {
  test("takes off a second for each knot of inbound headwind: 50 s in 10 kt, where the answer is 42", () => {
    expect(holdOutboundByRule(hold({ windSpeed: 10 }))).toEqual({ heading: 180, time: 50 });
    expect(holdOutboundByRule(hold({ windFrom: 180, windSpeed: 10 }))!.time).toBeCloseTo(70, 9);
  });

  test("corrects three times as much as inbound, to the other side, or as often as given", () => {
    const given = hold({ inbound: 90, windFrom: 180, windSpeed: 15 });
    const { correction } = windTriangle(90, 90, 180, 15)!;
    expect(holdOutboundByRule(given)!.heading).toBeCloseTo(270 - 3 * correction, 9);
    expect(holdOutboundByRule({ ...given, driftMultiple: 2 })!.heading).toBeCloseTo(270 - 2 * correction, 9);
  });

  test("leaves no less than no time, and no answer where the course cannot be held", () => {
    expect(holdOutboundByRule(hold({ windSpeed: 70 }))!.time).toBe(0);
    expect(holdOutboundByRule(hold({ windFrom: 90, windSpeed: 95 }))).toBeNull();
  });
});
