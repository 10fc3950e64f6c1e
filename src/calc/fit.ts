import { type Limits, within } from "./limits.ts";
import type { Degrees, Feet, FeetPerMinute, Seconds } from "./quantity.ts";
import { feet, G } from "./si.ts";
import { studentNinetyFive } from "./student.ts";

export const READINGS: Limits = { quantity: "number of readings", unit: "plain", from: 2, to: 1000 };
export const NOTED_BANK: Limits = { quantity: "bank", unit: "deg", from: 0, to: 90, openFrom: true, openTo: true };
export const NOTED_TIME: Limits = { quantity: "time", unit: "s", from: 0, to: 600, openFrom: true };
export const NOTED_VERTICAL_SPEED: Limits = { quantity: "vertical speed", unit: "ft/min", from: -20_000, to: 20_000 };
export const SOME_VERTICAL_SPEED: Limits = { ...NOTED_VERTICAL_SPEED, from: 1 };
export const NOTED_HEIGHT: Limits = { quantity: "height", unit: "ft", from: 0, to: 20_000, openFrom: true };
export const NOTED_SHOWN: Limits = { quantity: "vertical speed shown", unit: "ft/min", from: -40_000, to: 40_000 };

/** A constant of an aeroplane as its readings have it, with the uncertainty that their scatter leaves. */
export interface Fit {
  readonly value: number;
  readonly standardError: number;
  /** 95 % interval: were the scatter chance alone, nineteen of twenty such intervals would hold the constant. */
  readonly low: number;
  /** Infinity where the readings set no upper bound. */
  readonly high: number;
}

/**
 * Roll rate from roll-outs that were timed: the bank each began with and the time it took.
 *
 * @param readings two at least; bank over 0, under 90°; time over 0, at most 600 s
 * @returns °/s
 * @throws {OutOfRange} outside those limits
 * @source least squares of the time, where the watch scatters, on the bank: t = φ / p
 */
export function fitRollRate(readings: readonly { readonly bank: Degrees; readonly time: Seconds }[]): Fit {
  return reciprocal(
    proportion(readings.map(({ bank, time }) => [within(NOTED_BANK, bank), within(NOTED_TIME, time)] as const)),
  );
}

/**
 * Extra load a pilot uses from level-offs that were noted: the vertical speed before each and the height it took.
 *
 * @param readings two at least; vertical speed 1 to 20,000 ft/min, its sign is ignored; height from the beginning of
 *   the pull, over 0, at most 20,000 ft
 * @returns g
 * @throws {OutOfRange} outside those limits
 * @source least squares of the height on VS² / 2g: h = VS² / (2 Δn g)
 */
export function fitExtraLoad(
  readings: readonly { readonly verticalSpeed: FeetPerMinute; readonly height: Feet }[],
): Fit {
  return reciprocal(
    proportion(
      readings.map(({ verticalSpeed, height }) => {
        const perSecond = within(SOME_VERTICAL_SPEED, Math.abs(within(NOTED_VERTICAL_SPEED, verticalSpeed))) / 60;
        return [perSecond ** 2 / (2 * feet(G)), within(NOTED_HEIGHT, height)] as const;
      }),
    ),
  );
}

/** The shortest and the longest time constant that is looked for, s. */
const SHORTEST = 0.01;
const LONGEST = 1000;

/**
 * Time constant of a vertical speed indicator from what it showed after a change from level flight to a steady
 * vertical speed.
 *
 * @param verticalSpeed the steady one, 1 to 20,000 ft/min; for a descent turn all signs round
 * @param readings two at least; time since the change, over 0, at most 600 s; vertical speed shown, within
 *   ±40,000 ft/min
 * @returns seconds, 0.01 to 1000
 * @throws {OutOfRange} outside those limits
 * @source least squares of the reading on VS (1 − e^(−t/τ))
 */
export function fitLag(
  verticalSpeed: FeetPerMinute,
  readings: readonly { readonly time: Seconds; readonly shown: FeetPerMinute }[],
): Fit {
  const steady = within(SOME_VERTICAL_SPEED, verticalSpeed);
  within(READINGS, readings.length);
  for (const { time, shown } of readings) {
    within(NOTED_TIME, time);
    within(NOTED_SHOWN, shown);
  }
  const misfit = (τ: number) => total(readings, ({ time, shown }) => (shown + steady * Math.expm1(-time / τ)) ** 2);
  const τ = Math.exp(lowest((logarithm) => misfit(Math.exp(logarithm)), Math.log(SHORTEST), Math.log(LONGEST)));
  const slopes = total(readings, ({ time }) => ((steady * time) / τ ** 2) ** 2 * Math.exp((-2 * time) / τ));
  const freedom = readings.length - 1;
  const fit = interval(τ, Math.sqrt(misfit(τ) / freedom / slopes), freedom);
  return { ...fit, low: Math.max(0, fit.low) };
}

/** Least squares of y = slope · x. */
function proportion(points: readonly (readonly [x: number, y: number])[]): Fit {
  within(READINGS, points.length);
  const squares = total(points, ([x]) => x ** 2);
  const slope = total(points, ([x, y]) => x * y) / squares;
  const freedom = points.length - 1;
  const scatter = total(points, ([x, y]) => (y - slope * x) ** 2) / freedom;
  return interval(slope, Math.sqrt(scatter / squares), freedom);
}

/** The fit of one over the constant that was fitted; its interval is that of the constant, turned over. */
function reciprocal({ value, standardError, low, high }: Fit): Fit {
  return {
    value: 1 / value,
    standardError: standardError / value ** 2,
    low: 1 / high,
    high: low > 0 ? 1 / low : Infinity,
  };
}

function interval(value: number, standardError: number, freedom: number): Fit {
  const half = studentNinetyFive(freedom) * standardError;
  return { value, standardError, low: value - half, high: value + half };
}

function total<Item>(items: readonly Item[], term: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + term(item), 0);
}

/** Where a function is lowest: the best of a hundred places, then the golden section about it. */
function lowest(f: (x: number) => number, from: number, to: number): number {
  const spacing = (to - from) / 100;
  const places = Array.from({ length: 101 }, (_, i) => from + i * spacing);
  const best = places.reduce((least, x) => (f(x) < f(least) ? x : least));
  let [low, high] = [Math.max(from, best - spacing), Math.min(to, best + spacing)];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 60; i++) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (f(left) < f(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}
