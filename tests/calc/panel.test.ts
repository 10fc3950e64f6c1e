import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gyroDrift, shownVerticalSpeed, turnCoordinator, turnNeedle, turnRate } from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

describe("shownVerticalSpeed", () => {
  test("starts from what it was, ends at what it is, and closes the gap by one e-th in a time constant", () => {
    expect(shownVerticalSpeed(500, -300, 0, 4)).toBe(-300);
    expect(shownVerticalSpeed(500, -300, 4, 4)).toBeCloseTo(500 - 800 / Math.E, 9);
    expect(shownVerticalSpeed(500, -300, 100_000, 4)).toBe(500);
  });

  test("shows a steady vertical speed as it is", () => {
    fc.assert(
      fc.property(between(-2000, 2000), between(0, 30), between(1, 10), (steady, time, τ) => {
        expect(shownVerticalSpeed(steady, steady, time, τ)).toBe(steady + 0);
      }),
    );
  });
});

describe("turnNeedle", () => {
  test("shows 2.98 of 3.08°/s at 15° of bank, to half a hundredth", () => {
    expect(Math.abs(turnNeedle(3.08, 15) - 2.98)).toBeLessThan(0.005);
    expect(turnNeedle(-3.08, -15)).toBe(-turnNeedle(3.08, 15));
  });

  // ω = g tan φ / V, so that ω cos φ = g sin φ / V: a needle as far off goes with a sine.
  test("goes with the sine of the bank in a balanced turn", () => {
    fc.assert(
      fc.property(between(60, 200), between(-60, 60), (tas, φ) => {
        const needle = turnNeedle(turnRate(tas, φ), φ);
        expect(needle).toBeCloseTo(Math.sin((φ * Math.PI) / 180) * turnNeedle(turnRate(tas, 45), 45) * Math.SQRT2, 9);
      }),
    );
  });
});

describe("turnCoordinator", () => {
  test("shows what the turn needle shows, without roll", () => {
    expect(turnCoordinator(3, 15, 0)).toBe(turnNeedle(3, 15));
  });

  test("adds a roll by the tangent of its gimbal's tilt, 30° unless told otherwise", () => {
    expect(turnCoordinator(0, 0, Math.sqrt(3))).toBeCloseTo(1, 12);
    expect(turnCoordinator(0, 0, -5, 45)).toBeCloseTo(-5, 12);
    expect(turnCoordinator(3, 0, 5, 0)).toBe(3);
  });

  // Rates along an axis tilted up by τ from the nose's: ω cos φ cos τ + p sin τ, marked in units of cos τ.
  test("reads the rates along its tilted axis", () => {
    fc.assert(
      fc.property(between(-6, 6), between(-45, 45), between(-20, 20), between(0, 50), (rate, φ, p, τ) => {
        const [bank, tilt] = [(φ * Math.PI) / 180, (τ * Math.PI) / 180];
        const felt = rate * Math.cos(bank) * Math.cos(tilt) + p * Math.sin(tilt);
        expect(turnCoordinator(rate, φ, p, τ) * Math.cos(tilt)).toBeCloseTo(felt, 9);
      }),
    );
  });
});

describe("gyroDrift", () => {
  // 1.002738 turns in a mean solar day of 24 h.
  test("is the Earth's turning at the poles, falling in the north, rising in the south", () => {
    expect(gyroDrift(90)).toBeCloseTo(-15 * 1.002738, 4);
    expect(gyroDrift(-90)).toBeCloseTo(15 * 1.002738, 4);
    expect(gyroDrift(90, 1436.068)).toBeCloseTo(-360, 3);
  });

  test("is nothing on the equator and half as much at 30°", () => {
    expect(gyroDrift(0)).toBe(0);
    expect(gyroDrift(30)).toBeCloseTo(gyroDrift(90) / 2, 12);
    expect(gyroDrift(30, 15)).toBeCloseTo(gyroDrift(30) / 4, 12);
  });
});
