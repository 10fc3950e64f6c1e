import { INDUCED_SHARE } from "./attitude.ts";
import { STEP } from "./bounds.ts";
import { type Instant, trajectory } from "./integrate.ts";
import { type Limits, within } from "./limits.ts";
import {
  DOUBLING_TIME,
  GLIDE_RATIO,
  growingBank,
  loadAt,
  pointMass,
  SPIRAL_BANK,
  TRIM_SPEED,
  type Trim,
  timeToSteepest,
} from "./point-mass.ts";
import type { Degrees, DegreesPerSecond, Feet, FeetPerMinute, Knots, LoadFactor, Plain, Seconds } from "./quantity.ts";
import { degrees, feet, knots, metresPerSecond } from "./si.ts";

export const SPIRAL_TIME: Limits = { quantity: "time", unit: "s", from: 0, to: 300 };

/** A spiral that nobody stops. */
export interface Spiral extends Trim {
  /** At the start, in level flight at the trimmed speed, 0 to 75°. */
  readonly bank: Degrees;
  /** In which the bank doubles, 1 to 1 000 000 s; 20 unless given. */
  readonly doublingTime?: Seconds;
  /** To follow it, 0 to 300 s. */
  readonly time: Seconds;
  /** Longest step of the integration; 0.1 s unless given. */
  readonly step?: Seconds;
}

/** A moment of a spiral. */
export interface SpiralPoint {
  readonly time: Seconds;
  readonly bank: Degrees;
  readonly tas: Knots;
  /** Climb positive. */
  readonly pathAngle: Degrees;
  /** Since the start, right positive, beyond 360 where it goes round again. */
  readonly turned: Degrees;
  /** Since the start, negative below. */
  readonly altitude: Feet;
  readonly verticalSpeed: FeetPerMinute;
  readonly turnRate: DegreesPerSecond;
  readonly load: LoadFactor;
}

/**
 * How a spiral dive tightens hands off. Model, illustrative: a point mass trimmed for level flight; angle of attack
 * and thrust stay; the bank doubles in a fixed time and grows no more at 75°; air density as at the start. No
 * aeroplane's own spiral: measure nothing against it.
 *
 * @returns from the start to the time given
 * @throws {OutOfRange} outside the limits of Spiral
 * @source balance of forces along and across the path, and φ₀ · 2^(t/T)
 */
export function spiralPath(given: Spiral): SpiralPoint[] {
  const spiral = checked(given);
  const { bank, trimSpeed, doublingTime, time, step } = spiral;
  const growing = growingBank(bank, doublingTime);
  const steepestAt = timeToSteepest(bank, doublingTime);
  const rates = pointMass(spiral, { bank: growing, pull: 1, thrust: 1 });
  const start: Instant = { time: 0, state: [metresPerSecond(trimSpeed), 0, 0, 0] };
  const before = trajectory(rates, { from: start, duration: Math.min(time, steepestAt), step });
  const from = before.at(-1) ?? start;
  const after = trajectory(rates, { from, duration: Math.max(0, time - steepestAt), step });
  return [...before, ...after.slice(1)].map((instant) => {
    const turning = rates(instant.time, instant.state)[2] ?? 0;
    return point(instant, growing(instant.time), turning, trimSpeed);
  });
}

/**
 * Where a spiral dive has come to. Model, as spiralPath.
 *
 * @param trimSpeed 20 to 400 kt
 * @param bank at the start, 0 to 75°
 * @param time 0 to 300 s
 * @param doublingTime 1 to 1 000 000 s
 * @param liftOverDrag trimmed, 3 to 60
 * @throws {OutOfRange} outside those limits
 * @source as spiralPath
 */
export function spiralDive(
  trimSpeed: Knots,
  bank: Degrees,
  time: Seconds,
  doublingTime: Seconds = 20,
  liftOverDrag: Plain = 10,
): SpiralPoint {
  return spiralPath({ trimSpeed, bank, time, doublingTime, liftOverDrag }).at(-1)!;
}

function checked(spiral: Spiral): Required<Spiral> {
  const { bank, trimSpeed, doublingTime = 20, time, liftOverDrag = 10, inducedShare = 0.5, step = 0.1 } = spiral;
  within(TRIM_SPEED, trimSpeed);
  within(SPIRAL_BANK, bank);
  within(SPIRAL_TIME, time);
  within(DOUBLING_TIME, doublingTime);
  within(GLIDE_RATIO, liftOverDrag);
  within(INDUCED_SHARE, inducedShare);
  within(STEP, step);
  return { bank, trimSpeed, doublingTime, time, liftOverDrag, inducedShare, step };
}

function point({ time, state }: Instant, bank: Degrees, turning: number, trimSpeed: Knots): SpiralPoint {
  const [V = 0, γ = 0, ψ = 0, height = 0] = state;
  return {
    time,
    bank,
    tas: knots(V),
    pathAngle: degrees(γ),
    turned: degrees(ψ),
    altitude: feet(height),
    verticalSpeed: feet(V * Math.sin(γ)) * 60,
    turnRate: degrees(turning),
    load: loadAt(V, trimSpeed, 1),
  };
}
