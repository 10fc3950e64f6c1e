import { expect, test } from "vitest";
import { integrate, rungeKuttaStep } from "../../src/calc/runge-kutta.ts";

test("rungeKuttaStep is exact for a cubic of time", () => {
  const cubic = (t: number) => t ** 3 - 2 * t ** 2 + t;
  const [x] = rungeKuttaStep((t) => [3 * t ** 2 - 4 * t + 1], 2, [cubic(2)], 1.5);
  expect(x).toBeCloseTo(cubic(3.5), 12);
});

test("integrate follows time, not only the state", () => {
  const [x] = integrate((t) => [2 * t], [1], 3, 5);
  expect(x).toBeCloseTo(1 + 9, 12);
});

test("integrate errs sixteen times less in twice the steps", () => {
  const error = (steps: number) => {
    const [x = 0, v = 0] = integrate((_, [x = 0, v = 0]) => [v, -x], [1, 0], 6, steps);
    return Math.hypot(x - Math.cos(6), v + Math.sin(6));
  };
  for (const steps of [40, 80]) {
    expect(error(steps) / error(2 * steps)).toBeGreaterThan(14);
    expect(error(steps) / error(2 * steps)).toBeLessThan(18);
  }
});

test("integrate gives back the state itself for no steps", () => {
  expect(integrate(() => [1], [7], 0, 0)).toEqual([7]);
});
