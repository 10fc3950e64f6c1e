import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { altimeterErrorBudget, errorBudget, OutOfRange } from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const errors = fc.array(between(-500, 500), { minLength: 1, maxLength: 6 });

describe("errorBudget", () => {
  test("adds known errors with their signs, tolerances by size or by squares", () => {
    expect(errorBudget([100, -30], [3, -4])).toEqual({ known: 70, worstCase: 77, rootSumSquare: 75 });
    expect(errorBudget([-100, 30], [3, -4])).toEqual({ known: -70, worstCase: 77, rootSumSquare: 75 });
    expect(errorBudget([], [])).toEqual({ known: 0, worstCase: 0, rootSumSquare: 0 });
  });

  test("is no worse by squares than at worst, and no better than its largest tolerance", () => {
    fc.assert(
      fc.property(errors, errors, (known, tolerances) => {
        const budget = errorBudget(known, tolerances);
        const largest = Math.max(...tolerances.map(Math.abs));
        expect(budget.rootSumSquare).toBeLessThanOrEqual(budget.worstCase + 1e-9);
        expect(budget.rootSumSquare).toBeGreaterThanOrEqual(Math.abs(budget.known) + largest - 1e-9);
      }),
    );
  });

  test("reaches its worst case where every tolerance is used up on one side", () => {
    fc.assert(
      fc.property(between(0, 500), errors, (known, tolerances) => {
        const used = errorBudget([known, ...tolerances.map(Math.abs)], []);
        expect(errorBudget([known], tolerances).worstCase).toBeCloseTo(used.known, 9);
      }),
    );
  });

  test("refuses an error beyond 20,000 ft of either kind", () => {
    for (const wrong of [20_001, -20_001, Number.NaN]) {
      expect(() => errorBudget([wrong], [])).toThrow(OutOfRange);
      expect(() => errorBudget([], [wrong])).toThrow(OutOfRange);
    }
    expect(errorBudget([20_000], [-20_000]).worstCase).toBe(40_000);
  });
});

describe("altimeterErrorBudget", () => {
  test("knows temperature and lag, and tolerates instrument, setting and flying", () => {
    fc.assert(
      fc.property(
        between(-500, 500),
        between(-50, 50),
        between(0, 80),
        between(0, 30),
        between(0, 200),
        (...errors) => {
          expect(altimeterErrorBudget(...errors)).toEqual(errorBudget(errors.slice(0, 2), errors.slice(2)));
        },
      ),
    );
  });
});
