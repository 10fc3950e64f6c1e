import { TIME, TURN_RATE } from "./bounds.ts";
import { type Limits, within } from "./limits.ts";
import type { DegreesPerSecond, Seconds } from "./quantity.ts";

export const CANAL_TIME_CONSTANT: Limits = {
  quantity: "time constant of the canal",
  unit: "s",
  from: 0,
  to: 100,
  openFrom: true,
};
export const THRESHOLD: Limits = { quantity: "threshold", unit: "deg/s", from: 0, to: 60, openFrom: true };
export const ROLL_IN: Limits = { ...TIME, quantity: "roll-in time" };
export const HELD: Limits = { ...TIME, quantity: "time held" };
export const ROLL_OUT: Limits = { ...TIME, quantity: "roll-out time" };

/** A turn as its angular velocity goes: up in a straight line, held, and down again. */
export interface FeltTurn {
  /** While held, −60 to 60°/s. */
  readonly rate: DegreesPerSecond;
  /** How long it takes to reach the rate, how long it stays, how long it takes to stop: each 0 to 100 000 s. */
  readonly rollIn: Seconds;
  readonly hold: Seconds;
  readonly rollOut: Seconds;
  /** Since the roll-in began, 0 to 100 000 s. */
  readonly time: Seconds;
  /** Over 0, at most 100 s; 10 unless given. */
  readonly timeConstant?: Seconds;
}

/**
 * Turn rate that is felt in a turn begun at once and kept up. Model: first-order high-pass of the canals; published
 * time constants run from 4 s (cupula alone) to 20 s (perception).
 *
 * @param rate −60 to 60°/s
 * @param time since the turn began, 0 to 100 000 s
 * @param timeConstant over 0, at most 100 s
 * @returns °/s, with the sign of the rate
 * @throws {OutOfRange} outside those limits
 * @source van Egmond, Groen & Jongkees 1949, cupula returning by its elasticity: rate · e^(−t/τ)
 */
export function feltRate(rate: DegreesPerSecond, time: Seconds, timeConstant: Seconds = 10): DegreesPerSecond {
  within(TURN_RATE, rate);
  within(TIME, time);
  within(CANAL_TIME_CONSTANT, timeConstant);
  return rate * Math.exp(-time / timeConstant) + 0;
}

/**
 * Turn rate that is felt during a turn with roll-in and roll-out, and after it, where it is opposite. Model, as
 * feltRate: each change of the rate is felt at once and fades.
 *
 * @returns °/s
 * @throws {OutOfRange} outside the limits of FeltTurn
 * @source q(t) = ∫ ω′(s) e^(−(t − s)/τ) ds
 */
export function feltRateInTurn(turn: FeltTurn): DegreesPerSecond {
  const { rate, rollIn, hold, rollOut, time, timeConstant = 10 } = turn;
  within(TURN_RATE, rate);
  within(ROLL_IN, rollIn);
  within(HELD, hold);
  within(ROLL_OUT, rollOut);
  within(TIME, time);
  within(CANAL_TIME_CONSTANT, timeConstant);
  const onset = feltRamp(time, rollIn, timeConstant);
  const stop = feltRamp(time - rollIn - hold, rollOut, timeConstant);
  return rate * (onset - stop) + 0;
}

/**
 * Time after which a turn begun at once and kept up is no longer felt. Model, as feltRate.
 *
 * @param rate −60 to 60°/s; its sign is ignored
 * @param threshold over 0, at most 60°/s; published ones run from 0.4 to 3°/s
 * @param timeConstant over 0, at most 100 s
 * @returns seconds; 0 where the turn is never felt
 * @throws {OutOfRange} outside those limits
 * @source feltRate solved for the time: τ ln(rate / threshold)
 */
export function timeUntilUnfelt(
  rate: DegreesPerSecond,
  threshold: DegreesPerSecond,
  timeConstant: Seconds = 10,
): Seconds {
  within(TURN_RATE, rate);
  within(THRESHOLD, threshold);
  within(CANAL_TIME_CONSTANT, timeConstant);
  const times = Math.abs(rate) / threshold;
  return times <= 1 ? 0 : timeConstant * Math.log(times);
}

/** What is felt of a rise from 0 to 1 that takes `duration` and began `since` ago. */
function feltRamp(since: Seconds, duration: Seconds, timeConstant: Seconds): number {
  if (since < 0) return 0;
  if (duration === 0) return Math.exp(-since / timeConstant);
  const rising = Math.min(since, duration);
  const fading = since - rising;
  return (timeConstant / duration) * -Math.expm1(-rising / timeConstant) * Math.exp(-fading / timeConstant);
}
