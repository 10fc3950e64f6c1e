import { INDUCED_SHARE } from "./attitude.ts";
import { STEP } from "./bounds.ts";
import { oneOf } from "./choice.ts";
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
import type { Degrees, DegreesPerSecond, Feet, Knots, LoadFactor, Plain, Seconds } from "./quantity.ts";
import { degrees, feet, knots, metresPerSecond, radians } from "./si.ts";

export const DIVE_SPEED: Limits = { quantity: "true airspeed", unit: "kt", from: 20, to: 400 };
export const DIVE_PATH: Limits = { quantity: "path angle", unit: "deg", from: -60, to: 0 };
export const DELAY: Limits = { quantity: "delay", unit: "s", from: 0, to: 30 };
export const BETWEEN: Limits = { quantity: "time between actions", unit: "s", from: 0, to: 10 };
export const PULL: Limits = { quantity: "pull", unit: "plain", from: 1, to: 3 };

export const ROLL_OUT_RATE: Limits = { quantity: "roll rate", unit: "deg/s", from: 1, to: 360 };

/** The three actions of a recovery, in the order in which they begin. */
export type RecoveryOrder =
  | "power-bank-pitch"
  | "power-pitch-bank"
  | "bank-power-pitch"
  | "bank-pitch-power"
  | "pitch-power-bank"
  | "pitch-bank-power";
export const RECOVERY_ORDERS: readonly RecoveryOrder[] = [
  "power-bank-pitch",
  "power-pitch-bank",
  "bank-power-pitch",
  "bank-pitch-power",
  "pitch-power-bank",
  "pitch-bank-power",
];

/** A recovery from a spiral dive. */
export interface Recovery extends Trim {
  /** As it is recognised: true airspeed, 20 to 400 kt; bank, 0 to 75°; path angle, −60 to 0°. */
  readonly tas: Knots;
  readonly bank: Degrees;
  readonly pathAngle: Degrees;
  readonly order: RecoveryOrder;
  /** From recognising to the first action, 0 to 30 s; 1 unless given. */
  readonly delay?: Seconds;
  /** From the beginning of one action to that of the next, 0 to 10 s; 1 unless given. */
  readonly between?: Seconds;
  /** 1 to 360°/s; 20 unless given. */
  readonly rollRate?: DegreesPerSecond;
  /** Angle of attack from zero lift over the trimmed one, once the pilot pulls, 1 to 3; 1.3 unless given. */
  readonly pull?: Plain;
  /** In which the bank doubles until it is taken off, 1 to 1 000 000 s; 20 unless given. */
  readonly doublingTime?: Seconds;
  /** Longest step of the integration; 0.05 s unless given. */
  readonly step?: Seconds;
}

/** A moment of a recovery. */
export interface RecoveryPoint {
  readonly time: Seconds;
  readonly bank: Degrees;
  readonly tas: Knots;
  readonly pathAngle: Degrees;
  /** Since the spiral was recognised, negative below. */
  readonly altitude: Feet;
  readonly load: LoadFactor;
}

/** A recovery that has not reached level flight after so many seconds is followed no further. */
const LONGEST = 120;

/**
 * A recovery from a spiral dive. Model 'trimmed point mass', illustrative: air density constant; until the pilot pulls
 * the angle of attack stays as trimmed, so that the load follows the square of the speed; 'power' takes all thrust
 * off, 'bank' rolls to wings level at a steady rate, 'pitch' multiplies the angle of attack; each begins at once and
 * does not wait for the one before to end. The wing is taken not to stall: that needs a pull below (trim speed over
 * stalling speed)². The flight manual's order governs; the model ranks nothing.
 *
 * @returns from recognising the spiral to the lowest point, or for 120 s where it settles into a glide; a moment at
 *   which an action begins stands twice, before and after it
 * @throws {OutOfRange} outside the limits of Recovery
 * @source balance of forces along and across the path
 */
export function recoveryPath(given: Recovery): RecoveryPoint[] {
  const recovery = checked(given);
  const { bank, stretches } = plan(recovery);
  const { V, γ } = { V: metresPerSecond(recovery.tas), γ: radians(recovery.pathAngle) };
  let last: Instant = { time: 0, state: [V, γ, 0, 0] };
  const points: RecoveryPoint[] = [];
  for (const { end, pull, thrust } of stretches) {
    const rates = pointMass(recovery, { bank, pull, thrust });
    const instants = trajectory(rates, {
      from: last,
      duration: end - last.time,
      step: recovery.step,
      until: pathAngle,
    });
    for (const instant of instants) {
      points.push(point(instant, bank(instant.time), loadAt(instant.state[0]!, recovery.trimSpeed, pull)));
    }
    last = instants.at(-1) ?? last;
    if (pathAngle(last.state) > 0) break;
  }
  return points;
}

/**
 * What a recovery from a spiral dive costs. Model, as recoveryPath.
 *
 * @returns altitude lost from recognising the spiral to the lowest point, in feet; the highest speed and load on the
 *   way; the time it took
 * @throws {OutOfRange} outside the limits of Recovery
 * @source as recoveryPath
 */
export function recoveryCost(recovery: Recovery): {
  altitudeLost: Feet;
  highestSpeed: Knots;
  highestLoad: LoadFactor;
  time: Seconds;
} {
  const points = recoveryPath(recovery);
  return {
    altitudeLost: -Math.min(...points.map(({ altitude }) => altitude)) + 0,
    highestSpeed: Math.max(...points.map(({ tas }) => tas)),
    highestLoad: Math.max(...points.map(({ load }) => load)),
    time: points.at(-1)!.time,
  };
}

const pathAngle = ([, γ = 0]: readonly number[]) => γ;

function checked(given: Recovery): Required<Recovery> {
  const { delay = 1, between = 1, rollRate = 20, pull = 1.3, doublingTime = 20, step = 0.05 } = given;
  const { liftOverDrag = 10, inducedShare = 0.5 } = given;
  within(DIVE_SPEED, given.tas);
  within(SPIRAL_BANK, given.bank);
  within(DIVE_PATH, given.pathAngle);
  within(TRIM_SPEED, given.trimSpeed);
  oneOf("order", RECOVERY_ORDERS, given.order);
  within(DELAY, delay);
  within(BETWEEN, between);
  within(ROLL_OUT_RATE, rollRate);
  within(PULL, pull);
  within(DOUBLING_TIME, doublingTime);
  within(GLIDE_RATIO, liftOverDrag);
  within(INDUCED_SHARE, inducedShare);
  within(STEP, step);
  return { ...given, delay, between, rollRate, pull, doublingTime, step, liftOverDrag, inducedShare };
}

/** Bank against time, and the stretches over which bank is smooth, pull and thrust constant. */
function plan({ bank: atStart, order, delay, between, rollRate, doublingTime, pull }: Required<Recovery>) {
  const begins = (action: string) => delay + between * order.split("-").indexOf(action);
  const growing = growingBank(atStart, doublingTime);
  const rolls = begins("bank");
  const level = rolls + growing(rolls) / rollRate;
  const bank = (time: number) =>
    time < rolls ? growing(time) : Math.max(0, growing(rolls) - rollRate * (time - rolls));
  const steepest = Math.min(rolls, timeToSteepest(atStart, doublingTime));
  const ends = [begins("power"), begins("pitch"), rolls, level, steepest, LONGEST];
  const stretches = ends
    .filter((end) => end > 0 && end <= LONGEST)
    .sort((a, b) => a - b)
    .map((end) => ({
      end,
      pull: end > begins("pitch") ? pull : 1,
      thrust: end > begins("power") ? 0 : 1,
    }));
  return { bank, stretches };
}

function point({ time, state }: Instant, bank: Degrees, load: LoadFactor): RecoveryPoint {
  const [V = 0, γ = 0, , height = 0] = state;
  return { time, bank, tas: knots(V), pathAngle: degrees(γ) + 0, altitude: feet(height) + 0, load };
}
