import { type Limits, within } from "./limits.ts";
import type { Degrees, Feet, FeetPerMile, FeetPerMinute, Knots, NauticalMiles, Seconds } from "./quantity.ts";
import { GROUND_SPEED, HEIGHT, TRUE_AIRSPEED, VERTICAL_SPEED } from "./ranges.ts";
import { degrees, feet, METRES_IN_MILE, sin, tan } from "./si.ts";

export const PATH: Limits = { quantity: "path angle", unit: "deg", from: -90, to: 90, openFrom: true, openTo: true };
const SOME_PATH: Limits = { ...PATH, from: 0 };
export const MOVING: Limits = { ...GROUND_SPEED, openFrom: true };
export const PITCH_CHANGE: Limits = { quantity: "change of pitch", unit: "deg", from: -90, to: 90 };
export const PITCH_ERROR: Limits = { quantity: "pitch error", unit: "deg", from: -90, to: 90 };
export const TOLERANCE: Limits = { quantity: "tolerance", unit: "ft", from: 0, to: 10000 };
export const TIME: Limits = { quantity: "time", unit: "s", from: 0, to: 3600 };
export const VERTICAL_SPEED_ERROR: Limits = { ...VERTICAL_SPEED, quantity: "vertical speed error" };

const FEET_IN_MILE = feet(METRES_IN_MILE);

/**
 * Gradient of a path over the ground.
 *
 * @param angle under 90° either way; its sign is ignored
 * @throws {OutOfRange} outside those limits
 * @source tan γ, 1 NM = 6076.1 ft
 */
export function feetPerMile(angle: Degrees): FeetPerMile {
  return FEET_IN_MILE * Math.abs(tan(within(PATH, angle)));
}

/**
 * Vertical speed that keeps a path over the ground.
 *
 * @param groundSpeed 0 to 1000 kt
 * @param angle under 90° either way; its sign is ignored
 * @throws {OutOfRange} outside those limits
 * @source VS = GS tan γ
 */
export function verticalSpeedForAngle(groundSpeed: Knots, angle: Degrees): FeetPerMinute {
  return (within(GROUND_SPEED, groundSpeed) / 60) * feetPerMile(angle) + 0;
}

/**
 * Angle of the path that a vertical speed makes over the ground.
 *
 * @param groundSpeed over 0, at most 1000 kt
 * @param verticalSpeed within ±30,000 ft/min; its sign is ignored
 * @throws {OutOfRange} outside those limits
 * @source the inverse of `verticalSpeedForAngle`
 */
export function angleForVerticalSpeed(groundSpeed: Knots, verticalSpeed: FeetPerMinute): Degrees {
  const along = (within(MOVING, groundSpeed) * FEET_IN_MILE) / 60;
  return degrees(Math.atan(Math.abs(within(VERTICAL_SPEED, verticalSpeed)) / along));
}

/**
 * Rule of thumb for the vertical speed of a 3° path: five times the ground speed in knots.
 *
 * @param groundSpeed 0 to 1000 kt
 * @throws {OutOfRange} outside those limits
 */
export function verticalSpeedByRule(groundSpeed: Knots): FeetPerMinute {
  return 5 * within(GROUND_SPEED, groundSpeed) + 0;
}

/**
 * Distance over the ground that a path needs to lose a height.
 *
 * @param height 0 to 65,000 ft
 * @param angle under 90° either way and not 0; its sign is ignored
 * @throws {OutOfRange} outside those limits
 * @source d = h / tan γ
 */
export function descentDistance(height: Feet, angle: Degrees = 3): NauticalMiles {
  within(PATH, angle);
  return within(HEIGHT, height) / feetPerMile(within({ ...SOME_PATH, openFrom: true }, Math.abs(angle))) + 0;
}

/**
 * Rule of thumb for the distance of a 3° descent: three nautical miles for each thousand feet.
 *
 * @param height 0 to 65,000 ft
 * @throws {OutOfRange} outside those limits
 */
export function descentDistanceByRule(height: Feet): NauticalMiles {
  return (3 * within(HEIGHT, height)) / 1000 + 0;
}

/**
 * Vertical speed that a change of pitch from level flight brings, before the airspeed changes: the path follows the
 * pitch at an unchanged angle of attack. Up is positive.
 *
 * @param tas over 0, at most 700 kt
 * @param pitchChange within ±90°
 * @throws {OutOfRange} outside those limits
 * @source VS = V sin Δθ
 */
export function verticalSpeedFromPitch(tas: Knots, pitchChange: Degrees): FeetPerMinute {
  return ((within(TRUE_AIRSPEED, tas) * FEET_IN_MILE) / 60) * sin(within(PITCH_CHANGE, pitchChange)) + 0;
}

/**
 * Height gained by a vertical speed that should have been zero; it has the sign of the vertical speed.
 *
 * @param verticalSpeedError within ±30,000 ft/min
 * @param time 0 to 3600 s
 * @throws {OutOfRange} outside those limits
 */
export function heightError(verticalSpeedError: FeetPerMinute, time: Seconds): Feet {
  return (within(VERTICAL_SPEED_ERROR, verticalSpeedError) * within(TIME, time)) / 60 + 0;
}

/**
 * Time in which a pitch error left alone uses up a height tolerance; Infinity where there is no error. An outer bound
 * for looking again, never a target; the airspeed holds for about 10 s only.
 *
 * @param tas over 0, at most 700 kt
 * @param pitchError within ±90°; its sign is ignored
 * @param tolerance 0 to 10,000 ft
 * @throws {OutOfRange} outside those limits
 * @source tolerance over V sin Δθ
 */
export function lookInterval(tas: Knots, pitchError: Degrees, tolerance: Feet): Seconds {
  within(PITCH_ERROR, pitchError);
  const perSecond = Math.abs(verticalSpeedFromPitch(tas, pitchError)) / 60;
  within(TOLERANCE, tolerance);
  return perSecond === 0 ? Infinity : tolerance / perSecond + 0;
}
