import { type Derivative, rungeKuttaStep } from "./runge-kutta.ts";

/** A state and when it is reached. */
export interface Instant {
  readonly time: number;
  readonly state: readonly number[];
}

/** A stretch of time over which the derivative is smooth. */
export interface Stretch {
  readonly from: Instant;
  readonly duration: number;
  /** The longest step; the stretch is cut into equal ones. */
  readonly step: number;
  /** Where given, the stretch ends as soon as this is positive, at the moment when it becomes so. */
  readonly until?: (state: readonly number[]) => number;
}

/**
 * The states that a system passes through in a stretch of time, the first one included, by the fourth-order
 * Runge–Kutta method with fixed steps. The error falls with the fourth power of the step.
 */
export function trajectory(derivative: Derivative, { from, duration, step, until }: Stretch): Instant[] {
  const steps = Math.ceil(duration / step);
  const length = duration / steps;
  const instants = [from];
  let last = from;
  for (let i = 1; i <= steps; i++) {
    const { time, state } = last;
    const after = (part: number): Instant => ({
      time: part === length ? from.time + i * length : time + part,
      state: rungeKuttaStep(derivative, time, state, part),
    });
    last = after(length);
    const ends = until !== undefined && until(last.state) > 0;
    instants.push(ends ? after(firstPositive((part) => until(after(part).state), length)) : last);
    if (ends) break;
  }
  return instants;
}

/** The place between 0 and another, positive one, at which a function becomes positive. */
function firstPositive(f: (x: number) => number, positive: number): number {
  let [low, high] = [0, positive];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) high = middle;
    else low = middle;
  }
  return high;
}
