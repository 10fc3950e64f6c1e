import { type Limits, within } from "./limits.ts";
import type { Degrees, FeetPerMinute, Knots, Plain } from "./quantity.ts";
import { TRUE_AIRSPEED } from "./ranges.ts";
import { cos, degrees, feet, METRES_IN_MILE, radians, sin, tan } from "./si.ts";

export const LEVEL_PITCH: Limits = { quantity: "pitch in level flight", unit: "deg", from: -20, to: 20 };
export const PATH: Limits = { quantity: "path angle", unit: "deg", from: -45, to: 45 };
/** At 60° the wing carries twice the weight; what lies beyond is not instrument flying. */
export const MODERATE_BANK: Limits = { quantity: "bank", unit: "deg", from: -60, to: 60 };
export const FROM_ZERO_LIFT: Limits = { quantity: "angle from zero lift", unit: "deg", from: 0, to: 20 };
export const LIFT_OVER_DRAG: Limits = { quantity: "lift over drag", unit: "plain", from: 1, to: 80 };
export const INDUCED_SHARE: Limits = { quantity: "induced share of drag", unit: "plain", from: 0, to: 1 };

/**
 * Pitch attitude for a path and a bank, from the pitch that holds level flight at the same speed and configuration.
 * The angle of attack grows with the load, and only its part in the vertical plane shows as pitch.
 *
 * @param levelPitch wings level, −20 to 20°
 * @param path −45 to 45°, climb positive
 * @param bank 60° at most, either way; its sign is ignored
 * @param angleFromZeroLift angle of attack in level flight counted from the angle of no lift, 0 to 20°
 * @throws {OutOfRange} outside those limits
 * @source model: lift is proportional to the angle from zero lift, load = cos γ / cos φ; without sideslip
 *   sin γ = cos α sin θ − sin α cos φ cos θ
 */
export function pitchAttitude(
  levelPitch: Degrees,
  path: Degrees,
  bank: Degrees = 0,
  angleFromZeroLift: Degrees = 5,
): Degrees {
  within(LEVEL_PITCH, levelPitch);
  within(PATH, path);
  within(MODERATE_BANK, bank);
  within(FROM_ZERO_LIFT, angleFromZeroLift);
  const load = cos(path) / cos(bank);
  const angleOfAttack = radians(levelPitch + angleFromZeroLift * (load - 1));
  const along = Math.cos(angleOfAttack);
  const up = Math.sin(angleOfAttack) * cos(bank);
  return degrees(Math.atan2(up, along) + Math.asin(sin(path) / Math.hypot(along, up))) + 0;
}

/**
 * Drag in a level turn over the drag with the wings level at the same speed.
 *
 * @param bank 60° at most, either way; its sign is ignored
 * @param inducedShare of the drag with the wings level, 0 to 1
 * @throws {OutOfRange} outside those limits
 * @source model: induced drag grows with the square of the load, the rest stays: 1 + share · tan² φ
 */
export function dragInTurn(bank: Degrees, inducedShare: Plain = 0.5): Plain {
  within(MODERATE_BANK, bank);
  within(INDUCED_SHARE, inducedShare);
  return 1 + inducedShare * tan(bank) ** 2;
}

/**
 * Rate of climb that a turn costs at the same speed and power.
 *
 * @param tas over 0, at most 700 kt
 * @param bank 60° at most, either way; its sign is ignored
 * @param liftOverDrag wings level, 1 to 80
 * @param inducedShare of the drag with the wings level, 0 to 1
 * @returns ft/min, never negative
 * @throws {OutOfRange} outside those limits
 * @source model: the power that the added drag takes would have lifted the weight, V ΔD / W
 */
export function climbLostInTurn(
  tas: Knots,
  bank: Degrees,
  liftOverDrag: Plain = 10,
  inducedShare: Plain = 0.5,
): FeetPerMinute {
  within(TRUE_AIRSPEED, tas);
  within(LIFT_OVER_DRAG, liftOverDrag);
  const feetPerMinute = (tas * feet(METRES_IN_MILE)) / 60;
  return (feetPerMinute * (dragInTurn(bank, inducedShare) - 1)) / liftOverDrag;
}
