import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  levelOffLead,
  levelOffLeadByRule,
  rollOutLead,
  rollOutLeadByRule,
  turnLeadDistance,
  turnRadius,
  turnRate,
} from "../../src/calc/index.ts";
import { airspeed, bank, between } from "./arbitrary.ts";

const rollRate = between(1, 60);
const reaction = between(0, 5);

describe("rollOutLead", () => {
  /** Heading gained while the bank comes off, summed over short times by the midpoint rule. */
  function integrated(tas: number, φ: number, p: number): number {
    const steps = 2000;
    const dt = Math.abs(φ) / p / steps;
    let turned = 0;
    for (let i = 0; i < steps; i++) turned += turnRate(tas, Math.abs(φ) - p * (i + 0.5) * dt) * dt;
    return turned;
  }

  test("is what the turn goes on by in an integrated roll-out", () => {
    fc.assert(
      fc.property(airspeed, bank, rollRate, (tas, φ, p) => {
        fc.pre(Math.abs(φ) > 0.1);
        expect(rollOutLead(tas, φ, p) / integrated(tas, φ, p)).toBeCloseTo(1, 5);
      }),
    );
  });

  test("adds the turn at full bank during the reaction", () => {
    fc.assert(
      fc.property(airspeed, bank, rollRate, reaction, (tas, φ, p, t) => {
        const added = rollOutLead(tas, φ, p, t) - rollOutLead(tas, φ, p);
        expect(added).toBeCloseTo(Math.abs(turnRate(tas, φ)) * t, 8);
      }),
    );
  });

  test("is the same to the left and to the right, and zero with the wings level", () => {
    fc.assert(fc.property(airspeed, bank, rollRate, (tas, φ, p) => rollOutLead(tas, φ, p) === rollOutLead(tas, -φ, p)));
    expect(rollOutLead(90, 0, 5, 2)).toBe(0);
  });

  test("at small bank is half of it rolling at the rate of turn, a third rolling half as fast again", () => {
    fc.assert(
      fc.property(airspeed, between(0.1, 2), (tas, φ) => {
        expect(rollOutLead(tas, φ, turnRate(tas, φ)) / φ).toBeCloseTo(1 / 2, 3);
        expect(rollOutLead(tas, φ, 1.5 * turnRate(tas, φ)) / φ).toBeCloseTo(1 / 3, 3);
      }),
    );
  });

  test("at 90 kt and 5°/s is 4.8° from 15° of bank and 20° from 30°", () => {
    expect(rollOutLead(90, 15, 5).toFixed(1)).toBe("4.8");
    expect(rollOutLead(90, 30, 5).toFixed(0)).toBe("20");
  });
});

test("rollOutLeadByRule is half the bank, or the fraction it is told", () => {
  expect(rollOutLeadByRule(15)).toBe(7.5);
  expect(rollOutLeadByRule(-15, 1 / 3)).toBeCloseTo(5, 12);
});

describe("turnLeadDistance", () => {
  test("is the radius for a right angle and 0.58 of it for 60°, whichever way", () => {
    expect(turnLeadDistance(0.5, 90)).toBeCloseTo(0.5, 12);
    expect(turnLeadDistance(1, -60)).toBeCloseTo(1 / Math.sqrt(3), 12);
  });

  test("leads a circle onto the new course: tangent point, corner and centre make the right triangle", () => {
    fc.assert(
      fc.property(between(0.1, 5), between(1, 175), (radius, change) => {
        const lead = turnLeadDistance(radius, change);
        const half = (change * Math.PI) / 360;
        expect(Math.hypot(lead, radius) * Math.cos(half)).toBeCloseTo(radius, 9);
      }),
    );
  });

  test("is zero without a change of course", () => {
    expect(turnLeadDistance(turnRadius(90, 15), 0)).toBe(0);
  });
});

describe("levelOffLead", () => {
  /** Height flown in ft while a pull-up or push-over takes the vertical speed off, in short steps. */
  function integrated(verticalSpeed: number, extraLoad: number, delay: number): number {
    const dt = 1e-4;
    let w = Math.abs(verticalSpeed) / 60;
    let height = w * delay;
    while (w > 0) {
      const next = w - ((extraLoad * 9.80665) / 0.3048) * dt;
      height += ((w + Math.max(0, next)) / 2) * dt;
      w = next;
    }
    return height;
  }

  test("is what an integrated level-off takes", () => {
    fc.assert(
      fc.property(between(100, 3000), between(0.02, 0.5), reaction, (vs, Δn, t) => {
        expect(levelOffLead(vs, Δn, t) / integrated(vs, Δn, t)).toBeCloseTo(1, 4);
      }),
      { numRuns: 30 },
    );
  });

  test("is the same for climb and descent, pull and push", () => {
    fc.assert(
      fc.property(between(-3000, 3000), between(0.01, 1), reaction, (vs, Δn, t) => {
        expect(levelOffLead(-vs, Δn, t)).toBe(levelOffLead(vs, -Δn, t));
      }),
    );
  });

  test("at 0.05 g is 22 ft from 500 ft/min and 194 ft from 1,500", () => {
    expect(levelOffLead(500, 0.05).toFixed(0)).toBe("22");
    expect(levelOffLead(-1500, 0.05).toFixed(0)).toBe("194");
  });

  test("refuses an extra load of nothing, which never levels off", () => {
    expect(() => levelOffLead(500, 0)).toThrow(/extra load must be over 0/);
    expect(() => levelOffLead(0, -0)).toThrow(/extra load/);
  });
});

describe("levelOffLeadByRule", () => {
  test("is a tenth of the vertical speed, or the fraction it is told", () => {
    expect(levelOffLeadByRule(500)).toBe(50);
    expect(levelOffLeadByRule(-800, 0.05)).toBe(40);
  });

  test("takes 12 s at any vertical speed, by the mean of vertical speed and nothing", () => {
    fc.assert(
      fc.property(between(100, 3000), (vs) => {
        expect((levelOffLeadByRule(vs) / (vs / 2)) * 60).toBeCloseTo(12, 9);
      }),
    );
  });
});
