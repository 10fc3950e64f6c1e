import { describe, expect, test } from "vitest";
import { trajectory } from "../../src/calc/integrate.ts";
import { rungeKuttaStep } from "../../src/calc/runge-kutta.ts";

/** A weight on a spring: x″ = −x, which swings as a cosine. */
const spring = (_: number, [x = 0, v = 0]: readonly number[]) => [v, -x];
const rest = { time: 0, state: [1, 0] };

describe("trajectory", () => {
  test("gives the first state, and one at the end of each equal step no longer than asked for", () => {
    const instants = trajectory(spring, { from: { time: 5, state: [1, 0] }, duration: 1, step: 0.3 });
    expect(instants.map(({ time }) => time)).toEqual([5, 5.25, 5.5, 5.75, 6]);
    expect(instants[0]).toEqual({ time: 5, state: [1, 0] });
    expect(instants[2]!.state[0]).toBeCloseTo(Math.cos(0.5), 4);
  });

  test("takes a derivative at the time of the state", () => {
    const ramp = trajectory((time) => [time], { from: { time: 2, state: [0] }, duration: 2, step: 0.5 });
    expect(ramp.at(-1)!.state[0]).toBeCloseTo((4 ** 2 - 2 ** 2) / 2, 12);
  });

  test("errs sixteen times less with half the step", () => {
    const error = (step: number) =>
      Math.abs(trajectory(spring, { from: rest, duration: 4, step }).at(-1)!.state[0]! - Math.cos(4));
    expect(error(0.1) / error(0.05)).toBeGreaterThan(14);
    expect(error(0.1) / error(0.05)).toBeLessThan(18);
  });

  test("gives the first state alone for no duration", () => {
    expect(trajectory(spring, { from: rest, duration: 0, step: 0.1 })).toEqual([rest]);
  });

  test("ends at the moment when what it waits for becomes positive", () => {
    const instants = trajectory(spring, { from: rest, duration: 10, step: 0.01, until: ([x = 0]) => -x });
    const last = instants.at(-1)!;
    expect(last.time).toBeCloseTo(Math.PI / 2, 8);
    expect(last.state[0]).toBeCloseTo(0, 12);
    expect(last.state[1]).toBeCloseTo(-1, 8);
    expect(instants).toHaveLength(159);
  });

  test("goes to its end where what it waits for never becomes positive", () => {
    const { time } = trajectory(spring, { from: rest, duration: 2, step: 0.1, until: () => 0 }).at(-1)!;
    expect(time).toBe(2);
  });
});

describe("rungeKuttaStep", () => {
  // Exact for a polynomial of the third degree in time.
  test("integrates 4 t³ from 1 to 3 without error", () => {
    expect(rungeKuttaStep((t) => [4 * t ** 3], 1, [0], 2)[0]).toBeCloseTo(3 ** 4 - 1, 12);
  });
});
