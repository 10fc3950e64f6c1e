import { type Limits, within } from "./limits.ts";
import type {
  Degrees,
  DegreesPerSecond,
  Feet,
  FeetPerMinute,
  Knots,
  LoadFactor,
  NauticalMiles,
  Seconds,
} from "./quantity.ts";
import { BANK, REACTION, ROLL_RATE, VERTICAL_SPEED } from "./ranges.ts";
import { cos, degrees, feet, G, metres, metresPerSecond, radians, tan } from "./si.ts";
import { turnRate } from "./turns.ts";

export const FRACTION: Limits = { quantity: "fraction", unit: "plain", from: 0, to: 1 };
export const LEAD_RADIUS: Limits = { quantity: "radius", unit: "NM", from: 0, to: 1000 };
export const EXTRA_LOAD: Limits = { quantity: "extra load", unit: "g", from: -5, to: 5 };
const SOME_EXTRA_LOAD: Limits = { ...EXTRA_LOAD, from: 0, openFrom: true };
/** A reversal has no corner to lead. */
export const COURSE_CHANGE: Limits = {
  quantity: "course change",
  unit: "deg",
  from: -180,
  to: 180,
  openFrom: true,
  openTo: true,
};

/**
 * Heading still to go when the roll-out must begin: what the turn goes on by while the bank comes off at a steady
 * roll rate, and what it turns at full bank during the reaction.
 *
 * @param tas over 0, at most 700 kt
 * @param bank under 90° either way; its sign is ignored
 * @param rollRate over 0, at most 360°/s
 * @param reaction 0 to 60 s
 * @throws {OutOfRange} outside those limits
 * @source ∫ g tan φ / V dt with dφ = −p dt: g / (V p) · ln sec φ
 */
export function rollOutLead(tas: Knots, bank: Degrees, rollRate: DegreesPerSecond, reaction: Seconds = 0): Degrees {
  const rate = Math.abs(turnRate(tas, bank));
  const p = radians(within(ROLL_RATE, rollRate));
  within(REACTION, reaction);
  return degrees((-G / (metresPerSecond(tas) * p)) * Math.log(cos(bank))) + rate * reaction;
}

/**
 * Rule of thumb for the roll-out: a fraction of the bank.
 *
 * @param bank under 90° either way; its sign is ignored
 * @param fraction 0 to 1; schools teach a half or a third
 * @throws {OutOfRange} outside those limits
 */
export function rollOutLeadByRule(bank: Degrees, fraction = 0.5): Degrees {
  return Math.abs(within(BANK, bank)) * within(FRACTION, fraction) + 0;
}

/**
 * Distance before the corner of two courses at which a circle joins them, the bank taken as instant.
 *
 * @param radius 0 to 1000 NM
 * @param courseChange under 180° either way; its sign is ignored
 * @throws {OutOfRange} outside those limits
 * @source tangents to a circle: R tan(Δψ / 2)
 */
export function turnLeadDistance(radius: NauticalMiles, courseChange: Degrees): NauticalMiles {
  within(LEAD_RADIUS, radius);
  within(COURSE_CHANGE, courseChange);
  return radius * tan(Math.abs(courseChange) / 2) + 0;
}

/**
 * Height before the level at which the level-off must begin: a steady extra load takes the vertical speed off, after
 * a reaction at the vertical speed. The same for a climb and a descent.
 *
 * @param verticalSpeed within ±30,000 ft/min; its sign is ignored
 * @param extraLoad within ±5 g and not 0; its sign is ignored
 * @param reaction 0 to 60 s
 * @throws {OutOfRange} outside those limits
 * @source vertical motion at constant acceleration: VS² / (2 Δn g)
 */
export function levelOffLead(verticalSpeed: FeetPerMinute, extraLoad: LoadFactor, reaction: Seconds = 0): Feet {
  const w = metres(Math.abs(within(VERTICAL_SPEED, verticalSpeed))) / 60;
  const Δn = within(SOME_EXTRA_LOAD, Math.abs(within(EXTRA_LOAD, extraLoad)));
  return feet(w ** 2 / (2 * Δn * G) + w * within(REACTION, reaction));
}

/**
 * Rule of thumb for the level-off: a fraction of the vertical speed in ft/min, as feet. A tenth is a level-off that
 * takes 12 s at any vertical speed.
 *
 * @param verticalSpeed within ±30,000 ft/min; its sign is ignored
 * @param fraction 0 to 1
 * @throws {OutOfRange} outside those limits
 */
export function levelOffLeadByRule(verticalSpeed: FeetPerMinute, fraction = 0.1): Feet {
  return Math.abs(within(VERTICAL_SPEED, verticalSpeed)) * within(FRACTION, fraction) + 0;
}
