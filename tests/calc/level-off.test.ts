import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  levelOffLead,
  levelOffLoad,
  levelOffMiss,
  levelOffPath,
  levelOffPathByRule,
  levelOffTime,
  OutOfRange,
} from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const verticalSpeed = between(-2000, 2000);
const load = between(0.02, 0.5);
const FEET_PER_SECOND_SQUARED = 9.80665 / 0.3048;

describe("levelOffPath", () => {
  test("starts the lead before the altitude and ends on it, level", () => {
    fc.assert(
      fc.property(verticalSpeed, load, between(0, 5), (w, extraLoad, reaction) => {
        fc.pre(Math.abs(w) > 1);
        const path = levelOffPath({ verticalSpeed: w, extraLoad, reaction });
        const lead = levelOffLead(w, extraLoad, reaction);
        expect(path[0]!).toEqual({
          time: 0,
          altitude: expect.closeTo(-Math.sign(w) * lead, 9),
          verticalSpeed: expect.closeTo(w, 9),
        });
        expect(path.at(-1)!.altitude).toBeCloseTo(0, 8);
        expect(path.at(-1)!.verticalSpeed).toBeCloseTo(0, 6);
        expect(path.at(-1)!.time).toBeCloseTo(reaction + Math.abs(w) / 60 / (extraLoad * FEET_PER_SECOND_SQUARED), 9);
      }),
    );
  });

  test("keeps the vertical speed for the reaction time, then takes it off evenly", () => {
    const path = levelOffPath({ verticalSpeed: 600, extraLoad: 0.05, reaction: 2, lead: 100, step: 0.5 });
    const at = (time: number) => path.find((point) => Math.abs(point.time - time) < 1e-9)!;
    expect(at(1)).toEqual({ time: 1, altitude: expect.closeTo(-90, 9), verticalSpeed: 600 });
    expect(at(2).altitude).toBeCloseTo(-80, 9);
    const [pulling, later] = path.slice(path.indexOf(at(2)), path.indexOf(at(2)) + 2);
    const change = (later!.verticalSpeed - pulling!.verticalSpeed) / 60 / (later!.time - pulling!.time);
    expect(change).toBeCloseTo(-0.05 * FEET_PER_SECOND_SQUARED, 9);
  });

  test("does not change with half the step", () => {
    const given = { verticalSpeed: -1500, extraLoad: 0.1, lead: 150, reaction: 1 };
    const [coarse, fine] = [0.1, 0.05].map((step) => levelOffPath({ ...given, step }).at(-1)!);
    expect(fine!.altitude).toBeCloseTo(coarse!.altitude, 6);
    expect(fine!.time).toBeCloseTo(coarse!.time, 9);
    expect(levelOffPath(given)).toEqual(levelOffPath({ ...given, step: 0.1 }));
  });

  test("is one point of level flight where there is no vertical speed", () => {
    expect(levelOffPath({ verticalSpeed: 0, extraLoad: 0.1 })).toEqual([{ time: 0, altitude: 0, verticalSpeed: 0 }]);
  });

  test("never gives −0", () => {
    expect(levelOffPath({ verticalSpeed: -0, extraLoad: 0.1, lead: 20 })).toEqual([
      { time: 0, altitude: 0, verticalSpeed: 0 },
    ]);
    expect(levelOffPath({ verticalSpeed: 500, extraLoad: 0.1, lead: 0 })[0]!.altitude).toBe(0);
  });

  test.each([
    { verticalSpeed: 40_000 },
    { extraLoad: 0 },
    { extraLoad: 0, lead: 50 },
    { extraLoad: 5.1 },
    { lead: -1 },
    { lead: 20_001 },
    { reaction: 61 },
    { step: 0 },
    { step: 11 },
  ])("refuses %o", (wrong) => {
    expect(() => levelOffPath({ verticalSpeed: 500, extraLoad: 0.1, ...wrong })).toThrow(OutOfRange);
  });
});

describe("levelOffPathByRule", () => {
  test("begins a tenth of the vertical speed before the altitude and ends on it after 12 s", () => {
    fc.assert(
      fc.property(verticalSpeed, (w) => {
        fc.pre(Math.abs(w) > 1);
        const path = levelOffPathByRule(w);
        expect(path[0]!.altitude).toBeCloseTo(-w / 10, 9);
        expect(path.at(-1)!).toEqual({
          time: expect.closeTo(12, 9),
          altitude: expect.closeTo(0, 8),
          verticalSpeed: expect.closeTo(0, 8),
        });
      }),
    );
  });

  test("is the path of the steady load that the rule asks for", () => {
    const rule = levelOffPathByRule(-900, 0.2, 0.5);
    const steady = levelOffPath({ verticalSpeed: -900, extraLoad: levelOffLoad(-900, 0.2), lead: 180, step: 0.5 });
    expect(rule).toHaveLength(steady.length);
    for (const [i, point] of rule.entries()) expect(point.altitude).toBeCloseTo(steady[i]!.altitude, 6);
  });

  test("does not change with half the step", () => {
    const [coarse, fine] = [0.1, 0.05].map((step) => levelOffPathByRule(1000, 0.1, step).at(-1)!);
    expect(fine!.altitude).toBeCloseTo(coarse!.altitude, 6);
    expect(levelOffPathByRule(1000)).toEqual(levelOffPathByRule(1000, 0.1, 0.1));
  });

  test("refuses what lies outside its limits", () => {
    expect(() => levelOffPathByRule(40_000)).toThrow(OutOfRange);
    expect(() => levelOffPathByRule(500, 0)).toThrow(OutOfRange);
    expect(() => levelOffPathByRule(500, 0.1, 0)).toThrow(OutOfRange);
  });
});

describe("levelOffTime", () => {
  test("is 12 s for a tenth, and goes with the fraction", () => {
    expect(levelOffTime()).toBe(12);
    expect(levelOffTime(0.25)).toBe(30);
  });
});

describe("levelOffLoad", () => {
  test("is the load with which levelOffLead is the fraction of the vertical speed", () => {
    fc.assert(
      fc.property(between(50, 3000), between(0.05, 0.5), (w, fraction) => {
        expect(levelOffLead(w, levelOffLoad(w, fraction))).toBeCloseTo(w * fraction, 6);
        expect(levelOffLoad(-w, fraction)).toBe(levelOffLoad(w, fraction));
      }),
    );
    expect(levelOffLoad(500)).toBe(levelOffLoad(500, 0.1));
  });
});

describe("levelOffMiss", () => {
  // At 0.05 g the model asks for 22 ft from 500 ft/min and for 194 from 1,500; the rule for 50 and 150.
  test("of the tenth at 0.05 g is 28 ft short of the altitude from 500 ft/min, 44 ft past it from 1,500", () => {
    expect(levelOffMiss(500, 0.05, 50).toFixed(0)).toBe("-28");
    expect(levelOffMiss(1500, 0.05, 150).toFixed(0)).toBe("44");
    expect(levelOffMiss(-500, 0.05, 50).toFixed(0)).toBe("28");
  });

  test("is where levelOffPath ends", () => {
    fc.assert(
      fc.property(verticalSpeed, load, between(0, 300), between(0, 4), (w, extraLoad, lead, reaction) => {
        fc.pre(Math.abs(w) > 1);
        const end = levelOffPath({ verticalSpeed: w, extraLoad, lead, reaction }).at(-1)!;
        expect(levelOffMiss(w, extraLoad, lead, reaction)).toBeCloseTo(end.altitude, 6);
      }),
    );
  });
});
