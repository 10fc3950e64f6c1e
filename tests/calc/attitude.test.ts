import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { climbLostInTurn, convert, dragInTurn, loadFactor, pitchAttitude } from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const bank = between(-45, 45);
const RADIAN = Math.PI / 180;

describe("pitchAttitude", () => {
  test("is that of the table in level flight, and goes with the path at an unchanged angle of attack", () => {
    fc.assert(
      fc.property(between(-5, 12), between(-15, 15), (level, path) => {
        expect(pitchAttitude(level, 0)).toBeCloseTo(level, 9);
        expect(pitchAttitude(level, path, 0, 0)).toBeCloseTo(level + path, 9);
      }),
    );
  });

  test("asks for as much nose up turning left as right", () => {
    fc.assert(
      fc.property(between(0, 8), between(-5, 5), bank, (level, path, φ) => {
        expect(pitchAttitude(level, path, φ)).toBeCloseTo(pitchAttitude(level, path, -φ), 12);
      }),
    );
  });

  test("keeps the path and turns without sideslip, whatever way the nose points", () => {
    const given = fc.tuple(between(-4, 10), between(-20, 20), bank, between(0, 10));
    fc.assert(
      fc.property(given, ([level, path, φ, fromZeroLift]) => {
        const θ = pitchAttitude(level, path, φ, fromZeroLift) * RADIAN;
        const load = Math.cos(path * RADIAN) / Math.cos(φ * RADIAN);
        const α = (level + fromZeroLift * (load - 1)) * RADIAN;
        // Velocity lies in the plane of the nose and the belly; how much of it points up.
        const up = Math.cos(α) * Math.sin(θ) - Math.sin(α) * Math.cos(φ * RADIAN) * Math.cos(θ);
        expect(up).toBeCloseTo(Math.sin(path * RADIAN), 12);
      }),
    );
  });

  // At 30° the load is 1.155: 5° from zero lift become 5.77°, and of an attitude of 3.77° cos 30° shows.
  test("takes 5° for the angle from zero lift unless told otherwise", () => {
    const α = 3 + 5 * (loadFactor(30) - 1);
    expect(pitchAttitude(3, 0, 30)).toBeCloseTo(Math.atan(Math.tan(α * RADIAN) * Math.cos(30 * RADIAN)) / RADIAN, 9);
  });
});

describe("dragInTurn", () => {
  test("grows by the induced share times the load squared less one", () => {
    fc.assert(
      fc.property(bank, between(0, 1), (φ, share) => {
        expect(dragInTurn(φ, share)).toBeCloseTo(1 - share + share * loadFactor(φ) ** 2, 9);
      }),
    );
    expect(dragInTurn(45)).toBeCloseTo(1.5, 12);
  });
});

describe("climbLostInTurn", () => {
  test.each([
    [15, "27"],
    [30, "127"],
  ])("at 75 kt and %d°, drag a tenth of the weight and half of it induced, is %s ft/min", (φ, lost) => {
    expect(climbLostInTurn(75, φ).toFixed(0)).toBe(lost);
  });

  test("is the speed times the growth of drag over weight", () => {
    fc.assert(
      fc.property(between(50, 200), bank, between(5, 20), between(0, 1), (tas, φ, liftOverDrag, share) => {
        const feetPerMinute = convert(tas, "kt", "ft/min");
        const growth = (dragInTurn(φ, share) - 1) / liftOverDrag;
        expect(climbLostInTurn(tas, φ, liftOverDrag, share)).toBeCloseTo(feetPerMinute * growth, 6);
      }),
    );
  });
});
