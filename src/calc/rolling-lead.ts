import { COURSE_CHANGE } from "./leads.ts";
import { type Limits, within } from "./limits.ts";
import type { Degrees, DegreesPerSecond, Knots, NauticalMiles, Seconds } from "./quantity.ts";
import { REACTION, ROLL_RATE } from "./ranges.ts";
import { metresPerSecond, nauticalMiles, radians } from "./si.ts";
import { type Standing, turnPhases, walk } from "./turn-path.ts";

export const ROLLING_BANK: Limits = { quantity: "bank", unit: "deg", from: -85, to: 85 };

/** Steps a phase: under two degrees each, which leaves an error far below a foot. */
const STEPS = 100;

/**
 * Distance before the corner of two courses at which a turn must be called for, so that it ends wings level on the
 * new course: the path integrated through reaction, roll-in, steady turn and roll-out in still air.
 *
 * @param tas 20 to 700 kt
 * @param bank 1 to 85° either way; its sign is ignored
 * @param courseChange under 180° either way; its sign is ignored
 * @param rollRate over 0, at most 360°/s, in and out
 * @param reaction 0 to 60 s
 * @throws {OutOfRange} outside those limits
 * @source the path of `turnPath`, carried back along the new course to the old one
 */
export function turnLeadDistanceRolling(
  tas: Knots,
  bank: Degrees,
  courseChange: Degrees,
  rollRate: DegreesPerSecond,
  reaction: Seconds = 0,
): NauticalMiles {
  within(ROLLING_BANK, bank);
  const headingChange = Math.abs(within(COURSE_CHANGE, courseChange));
  within(ROLL_RATE, rollRate);
  within(REACTION, reaction);
  const phases = turnPhases({ tas, bank: Math.abs(bank), headingChange, rollInRate: rollRate, rollOutRate: rollRate });
  const V = metresPerSecond(tas);
  let end: Standing = { time: 0, turned: 0, north: 0, east: 0 };
  for (const phase of phases) end = walk(phase, V, end, STEPS).at(-1)!;
  const beyondCorner = end.east === 0 ? 0 : end.east / Math.tan(radians(headingChange));
  return nauticalMiles(V * reaction + end.north - beyondCorner);
}
