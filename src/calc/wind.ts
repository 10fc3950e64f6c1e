import { COURSE, SOME_TURN_RATE, TURN_RATE, WIND_FROM, WIND_SPEED } from "./bounds.ts";
import { within } from "./limits.ts";
import type { Degrees, DegreesPerSecond, Knots, NauticalMiles, Seconds } from "./quantity.ts";
import { HEADING, HEADING_CHANGE, TRUE_AIRSPEED } from "./ranges.ts";
import { cos, degrees, onCircle, radians, sin } from "./si.ts";

/**
 * Heading and ground speed that make good a course.
 *
 * @param course, windFrom degrees, within ±100 000; one north for both
 * @param tas over 0, at most 700 kt
 * @param windSpeed 0 to 300 kt
 * @returns correction = heading − course, right positive; null where no heading makes good the course:
 *   the crosswind exceeds the true airspeed, or the headwind leaves no ground speed
 * @throws {OutOfRange} outside those limits
 * @source the triangle of velocities: V sin(correction) = W sin(windFrom − course)
 */
export function windTriangle(
  course: Degrees,
  tas: Knots,
  windFrom: Degrees,
  windSpeed: Knots,
): { heading: Degrees; groundSpeed: Knots; correction: Degrees } | null {
  within(TRUE_AIRSPEED, tas);
  const { headwind, crosswind } = windComponents(course, windFrom, windSpeed);
  if (Math.abs(crosswind) > tas) return null;
  const correction = degrees(Math.asin(crosswind / tas));
  const groundSpeed = Math.sqrt(tas ** 2 - crosswind ** 2) - headwind;
  if (groundSpeed <= 0) return null;
  return { heading: onCircle(course + correction), groundSpeed, correction };
}

/**
 * Track and ground speed that come of a heading.
 *
 * @param heading, windFrom degrees, within ±100 000; one north for both
 * @param tas over 0, at most 700 kt
 * @param windSpeed 0 to 300 kt
 * @throws {OutOfRange} outside those limits
 * @source the sum of the velocity through the air and that of the air
 */
export function trackMadeGood(
  heading: Degrees,
  tas: Knots,
  windFrom: Degrees,
  windSpeed: Knots,
): { track: Degrees; groundSpeed: Knots } {
  within(HEADING, heading);
  within(TRUE_AIRSPEED, tas);
  within(WIND_FROM, windFrom);
  within(WIND_SPEED, windSpeed);
  const north = tas * cos(heading) - windSpeed * cos(windFrom);
  const east = tas * sin(heading) - windSpeed * sin(windFrom);
  return { track: onCircle(degrees(Math.atan2(east, north))), groundSpeed: Math.hypot(north, east) };
}

/**
 * The wind along and across a course.
 *
 * @param course, windFrom degrees, within ±100 000; one north for both
 * @param windSpeed 0 to 300 kt
 * @returns headwind positive on the nose, negative from behind; crosswind positive from the right
 * @throws {OutOfRange} outside those limits
 * @source resolution of a vector
 */
export function windComponents(
  course: Degrees,
  windFrom: Degrees,
  windSpeed: Knots,
): { headwind: Knots; crosswind: Knots } {
  within(COURSE, course);
  within(WIND_FROM, windFrom);
  within(WIND_SPEED, windSpeed);
  const angle = windFrom - course;
  return { headwind: windSpeed * cos(angle) + 0, crosswind: windSpeed * sin(angle) + 0 };
}

/**
 * The largest correction that a wind can ask for: with the wind square to the course.
 *
 * @param tas over 0, at most 700 kt
 * @param windSpeed 0 to 300 kt
 * @returns degrees, never negative; null in a wind stronger than the true airspeed
 * @throws {OutOfRange} outside those limits
 * @source the triangle of velocities: asin(W / V)
 */
export function maximumDrift(tas: Knots, windSpeed: Knots): Degrees | null {
  within(TRUE_AIRSPEED, tas);
  within(WIND_SPEED, windSpeed);
  return windSpeed > tas ? null : degrees(Math.asin(windSpeed / tas)) + 0;
}

/**
 * Greatest drift by the rule of thumb: sixty times the wind over the true airspeed.
 *
 * @param tas over 0, at most 700 kt
 * @param windSpeed 0 to 300 kt
 * @returns degrees, never negative
 * @throws {OutOfRange} outside those limits
 * @source one in sixty: a radian is nearly 60°
 */
export function maximumDriftByRule(tas: Knots, windSpeed: Knots): Degrees {
  within(TRUE_AIRSPEED, tas);
  within(WIND_SPEED, windSpeed);
  return (60 * windSpeed) / tas + 0;
}

/**
 * Where a turn at a constant rate leaves the aeroplane over the ground, from where it began.
 *
 * @param heading at the start, degrees, within ±100 000
 * @param headingChange degrees, within ±100 000; right positive
 * @param tas over 0, at most 700 kt
 * @param rate of turn, up to 60°/s and not 0; its sign is ignored
 * @param windFrom degrees, within ±100 000
 * @param windSpeed 0 to 300 kt
 * @returns nautical miles north and east, and seconds
 * @throws {OutOfRange} outside those limits
 * @source an arc of radius V/ω in the air, carried W·t by the wind; roll-in and roll-out take no time
 */
export function turnInWind(
  heading: Degrees,
  headingChange: Degrees,
  tas: Knots,
  rate: DegreesPerSecond,
  windFrom: Degrees,
  windSpeed: Knots,
): { north: NauticalMiles; east: NauticalMiles; time: Seconds } {
  within(HEADING, heading);
  within(HEADING_CHANGE, headingChange);
  within(TRUE_AIRSPEED, tas);
  within(TURN_RATE, rate);
  within(SOME_TURN_RATE, Math.abs(rate));
  within(WIND_FROM, windFrom);
  within(WIND_SPEED, windSpeed);
  const time = Math.abs(headingChange / rate);
  const radius = (Math.sign(headingChange) * tas) / (3600 * radians(Math.abs(rate)));
  const carried = (windSpeed * time) / 3600;
  const last = heading + headingChange;
  return {
    north: radius * (sin(last) - sin(heading)) - carried * cos(windFrom) + 0,
    east: radius * (cos(heading) - cos(last)) - carried * sin(windFrom) + 0,
    time,
  };
}
