/** Rates of change of a state at a time. */
export type Derivative = (time: number, state: readonly number[]) => readonly number[];

/** State after one step of the classical fourth-order Runge–Kutta method. */
export function rungeKuttaStep(derivative: Derivative, time: number, state: readonly number[], step: number): number[] {
  const along = (slope: readonly number[], part: number) => state.map((x, i) => x + part * slope[i]!);
  const a = derivative(time, state);
  const b = derivative(time + step / 2, along(a, step / 2));
  const c = derivative(time + step / 2, along(b, step / 2));
  const d = derivative(time + step, along(c, step));
  return state.map((x, i) => x + (step / 6) * (a[i]! + 2 * b[i]! + 2 * c[i]! + d[i]!));
}

/**
 * State at the end of a duration, in equal steps.
 *
 * @param steps how many; the error falls with their fourth power where the derivative is smooth
 */
export function integrate(derivative: Derivative, from: readonly number[], duration: number, steps: number): number[] {
  const step = duration / steps;
  let state = [...from];
  for (let i = 0; i < steps; i++) state = rungeKuttaStep(derivative, i * step, state, step);
  return state;
}
