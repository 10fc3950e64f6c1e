import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  fitExtraLoad,
  fitLag,
  fitRollRate,
  levelOffLead,
  OutOfRange,
  shownVerticalSpeed,
} from "../../src/calc/index.ts";
import { studentNinetyFive } from "../../src/calc/student.ts";
import { between } from "./evenly.ts";

const several = { minLength: 2, maxLength: 8 };

describe("fitRollRate", () => {
  test("finds the roll rate behind readings without scatter, and is certain of it", () => {
    fc.assert(
      fc.property(between(2, 40), fc.array(between(5, 60), several), (rate, banks) => {
        const fit = fitRollRate(banks.map((bank) => ({ bank, time: bank / rate })));
        for (const value of [fit.value, fit.low, fit.high]) expect(value / rate).toBeCloseTo(1, 6);
        expect(fit.standardError).toBeCloseTo(0, 6);
      }),
    );
  });

  // By hand: Σφ² = 1000, Σφt = 210, slope 0.21 s/° → 4.762°/s. Residuals of 10, 30: −0.1 × 3 and +0.1, squares
  // 0.09 + 0.01, over one degree of freedom 0.1; standard error of the slope √(0.1 / 1000) = 0.01, 12.706 times that
  // is 0.12706: from 1 / 0.33706 to 1 / 0.08294.
  test("meets a fit of two readings worked by hand", () => {
    const fit = fitRollRate([
      { bank: 10, time: 1.8 },
      { bank: 30, time: 6.4 },
    ]);
    expect(fit.value).toBeCloseTo(1 / 0.21, 9);
    expect(fit.standardError).toBeCloseTo(0.01 / 0.21 ** 2, 9);
    expect(fit.low).toBeCloseTo(1 / 0.337062, 6);
    expect(fit.high).toBeCloseTo(1 / 0.082938, 6);
  });

  test("sets no upper bound where the scatter is as large as the times", () => {
    const fit = fitRollRate([
      { bank: 10, time: 9 },
      { bank: 30, time: 1 },
    ]);
    expect(fit.high).toBe(Infinity);
    expect(fit.low).toBeGreaterThan(0);
  });

  test("holds the true rate in its interval nineteen times of twenty", () => {
    const random = noise(7);
    const trials = 1000;
    let held = 0;
    for (let i = 0; i < trials; i++) {
      const { low, high } = fitRollRate([15, 20, 30, 30].map((bank) => ({ bank, time: bank / 10 + 0.1 * random() })));
      if (low <= 10 && 10 <= high) held++;
    }
    // The count's standard deviation is √(1000 × 0.95 × 0.05) = 6.9.
    expect(Math.abs(held - 0.95 * trials)).toBeLessThan(3 * 6.9);
  });
});

describe("fitExtraLoad", () => {
  test("finds the extra load behind level-offs without scatter, climbs and descents alike", () => {
    fc.assert(
      fc.property(between(0.02, 0.3), fc.array(between(200, 2000), several), (load, speeds) => {
        const level = speeds.map((w, i) => ({
          verticalSpeed: i % 2 === 0 ? w : -w,
          height: levelOffLead(w, load),
        }));
        expect(fitExtraLoad(level).value / load).toBeCloseTo(1, 9);
      }),
    );
  });

  test("refuses a vertical speed of less than 1 ft/min, of either sign", () => {
    for (const wrong of [0, 0.9, -0.9]) {
      const readings = [500, wrong].map((verticalSpeed) => ({ verticalSpeed, height: 50 }));
      expect(() => fitExtraLoad(readings)).toThrow(OutOfRange);
    }
    const least = [500, 1].map((verticalSpeed) => ({ verticalSpeed, height: 50 }));
    expect(fitExtraLoad(least).value).toBeGreaterThan(0);
  });
});

describe("fitLag", () => {
  test("finds the time constant behind readings without scatter", () => {
    fc.assert(
      fc.property(between(0.5, 15), between(200, 2000), (τ, steady) => {
        const readings = [1, 3, 6, 10].map((time) => ({ time, shown: shownVerticalSpeed(steady, 0, time, τ) }));
        const fit = fitLag(steady, readings);
        for (const value of [fit.value, fit.low, fit.high]) expect(value / τ).toBeCloseTo(1, 5);
      }),
    );
  });

  test("has no neighbour that fits the readings better", () => {
    fc.assert(
      fc.property(fc.array(fc.record({ time: between(1, 15), shown: between(50, 480) }), several), (readings) => {
        const misfit = (τ: number) =>
          readings.reduce((sum, { time, shown }) => sum + (shown - 500 * (1 - Math.exp(-time / τ))) ** 2, 0);
        const { value } = fitLag(500, readings);
        for (const near of [0.5, 0.9, 0.999, 1.001, 1.1, 2]) {
          expect(misfit(value)).toBeLessThanOrEqual(misfit(Math.min(1000, value * near)) * (1 + 1e-9));
        }
      }),
    );
  });

  // One reading calls for 0.3 s, the other for 140 s: the squares have a valley at each, a hill between.
  test("finds the deeper of two valleys", () => {
    const readings = (early: number, late: number) => [
      { time: 1, shown: early },
      { time: 15, shown: late },
    ];
    expect(fitLag(500, readings(490, 100)).value).toBeLessThan(1);
    expect(fitLag(500, readings(400, 10)).value).toBeGreaterThan(50);
  });

  test("holds the true time constant in its interval nineteen times of twenty, never from below zero", () => {
    const random = noise(11);
    const trials = 1000;
    let held = 0;
    for (let i = 0; i < trials; i++) {
      const readings = [1, 2, 4, 6, 9].map((time) => ({
        time,
        shown: shownVerticalSpeed(1000, 0, time, 4) + 20 * random(),
      }));
      const { low, high } = fitLag(1000, readings);
      expect(low).toBeGreaterThanOrEqual(0);
      if (low <= 4 && 4 <= high) held++;
    }
    expect(Math.abs(held - 0.95 * trials)).toBeLessThan(3 * 6.9);
  });

  test("gives a lower bound of zero where the scatter would allow less", () => {
    const { low } = fitLag(500, [
      { time: 2, shown: 480 },
      { time: 10, shown: 100 },
    ]);
    expect(low).toBe(0);
  });
});

test.each([
  ["fitRollRate", (count: number) => fitRollRate(Array(count).fill({ bank: 20, time: 2 }))],
  ["fitExtraLoad", (count: number) => fitExtraLoad(Array(count).fill({ verticalSpeed: 500, height: 20 }))],
  ["fitLag", (count: number) => fitLag(500, Array(count).fill({ time: 3, shown: 300 }))],
] as const)("%s refuses a single reading and more than a thousand", (_, fitted) => {
  expect(() => fitted(1)).toThrow(OutOfRange);
  expect(() => fitted(1001)).toThrow(OutOfRange);
  expect(fitted(2).value).toBeGreaterThan(0);
});

describe("studentNinetyFive", () => {
  // Student's t, two-sided 95 %, as any book of tables prints it.
  test.each([
    [1, 12.7062],
    [2, 4.3027],
    [3, 3.1824],
    [4, 2.7764],
    [5, 2.5706],
    [6, 2.4469],
    [7, 2.3646],
    [8, 2.306],
    [9, 2.2622],
    [10, 2.2281],
    [15, 2.1314],
    [20, 2.086],
    [30, 2.0423],
    [60, 2.0003],
    [120, 1.9799],
  ])("at %d degrees of freedom meets the printed %d", (degreesOfFreedom, printed) => {
    expect(Math.abs(studentNinetyFive(degreesOfFreedom) - printed)).toBeLessThanOrEqual(0.00005);
  });

  test("errs by no more than 0.0002 where the table ends", () => {
    expect(Math.abs(studentNinetyFive(11) - 2.201)).toBeLessThanOrEqual(0.0002);
    expect(Math.abs(studentNinetyFive(12) - 2.1788)).toBeLessThanOrEqual(0.0002);
  });

  test("falls to the normal distribution's", () => {
    expect(studentNinetyFive(1e9)).toBeCloseTo(1.959964, 6);
  });
});

/** Numbers with mean 0 and standard deviation 1, nearly normal: twelve uniform ones, from a small generator. */
function noise(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, x) => sum + x, -6);
}
