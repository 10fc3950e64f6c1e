import { oneOf } from "./choice.ts";
import { type Limits, within } from "./limits.ts";
import type { Degrees, Feet, Minutes, NauticalMiles } from "./quantity.ts";
import { cos, degrees, feet, METRES_IN_MILE, metres, nauticalMiles, tan } from "./si.ts";

export const OFFSET: Limits = { quantity: "distance off course", unit: "NM", from: -1000, to: 1000 };
export const ALONG: Limits = { quantity: "distance along the course", unit: "NM", from: 0, to: 1000, openFrom: true };
export const DISTANCE: Limits = { quantity: "distance", unit: "NM", from: 0, to: 1000 };
export const FROM_STATION: Limits = {
  quantity: "distance from the station",
  unit: "NM",
  from: 0,
  to: 1000,
  openFrom: true,
};
export const SLANT_RANGE: Limits = { quantity: "slant range", unit: "NM", from: 0, to: 1000 };
export const ABOVE_STATION: Limits = { quantity: "height above the station", unit: "ft", from: 0, to: 100_000 };
export const ELAPSED: Limits = { quantity: "elapsed time", unit: "min", from: 0, to: 600 };
export const BEARING_CHANGE: Limits = {
  quantity: "bearing change",
  unit: "deg",
  from: 0,
  to: 90,
  openFrom: true,
  openTo: true,
};
export const RADIUS: Limits = { quantity: "radius of turn", unit: "NM", from: 0, to: 100 };
export const INTERCEPT_ANGLE: Limits = { quantity: "angle of intercept", unit: "deg", from: 0, to: 180 };
export const ARC: Limits = { quantity: "radius of the arc", unit: "NM", from: 0, to: 1000, openFrom: true };
export const PATH_ANGLE: Limits = { quantity: "path angle", unit: "deg", from: 0, to: 45 };
export const REFERENCE_HEIGHT: Limits = { quantity: "reference height", unit: "ft", from: -2000, to: 30_000 };
export const HALF_ANGLE: Limits = {
  quantity: "half angle of the course",
  unit: "deg",
  from: 0,
  to: 90,
  openTo: true,
};

/** The side of an arc from which it is joined. */
export type Side = "outside" | "inside";
export const SIDES: readonly Side[] = ["outside", "inside"];

/**
 * Angle by which a track has left the course.
 *
 * @param offset from the course, −1000 to 1000 NM, right positive
 * @param distance flown along the course, over 0, at most 1000 NM
 * @returns degrees, with the sign of the offset
 * @throws {OutOfRange} outside those limits
 * @source atan(offset / distance)
 */
export function trackError(offset: NauticalMiles, distance: NauticalMiles): Degrees {
  within(OFFSET, offset);
  within(ALONG, distance);
  return degrees(Math.atan(offset / distance)) + 0;
}

/**
 * Track error by the rule of one in sixty: a mile off in sixty flown is a degree.
 *
 * @param offset from the course, −1000 to 1000 NM, right positive
 * @param distance flown along the course, over 0, at most 1000 NM
 * @throws {OutOfRange} outside those limits
 * @source a radian is nearly 60°
 */
export function trackErrorByOneInSixty(offset: NauticalMiles, distance: NauticalMiles): Degrees {
  within(OFFSET, offset);
  within(ALONG, distance);
  return (60 * offset) / distance + 0;
}

/**
 * Distance to a station in a straight line.
 *
 * @param distance over the ground, 0 to 1000 NM
 * @param height above the station, 0 to 100 000 ft
 * @throws {OutOfRange} outside those limits
 * @source Pythagoras; the Earth taken as flat
 */
export function slantRange(distance: NauticalMiles, height: Feet): NauticalMiles {
  within(DISTANCE, distance);
  within(ABOVE_STATION, height);
  return Math.hypot(distance, nauticalMiles(metres(height)));
}

/**
 * Distance over the ground from the slant range.
 *
 * @param slantRange 0 to 1000 NM
 * @param height above the station, 0 to 100 000 ft
 * @returns nautical miles; null where the slant range is shorter than the height
 * @throws {OutOfRange} outside those limits
 * @source Pythagoras; the Earth taken as flat
 */
export function groundDistance(slantRange: NauticalMiles, height: Feet): NauticalMiles | null {
  within(SLANT_RANGE, slantRange);
  within(ABOVE_STATION, height);
  const up = nauticalMiles(metres(height));
  return slantRange < up ? null : Math.sqrt((slantRange - up) * (slantRange + up));
}

/**
 * Flying time to a station from the point where it was abeam, in still air and at one speed, from the change of its
 * bearing on a steady heading since then.
 *
 * @param elapsed since abeam, 0 to 600 min
 * @param bearingChange since abeam, over 0, under 90°
 * @returns minutes: seconds in would give seconds out
 * @throws {OutOfRange} outside those limits
 * @source the leg flown is the distance abeam times the tangent of the bearing change
 */
export function minutesToStation(elapsed: Minutes, bearingChange: Degrees): Minutes {
  within(ELAPSED, elapsed);
  within(BEARING_CHANGE, bearingChange);
  return elapsed / tan(bearingChange) + 0;
}

/**
 * Time to a station by the rule: sixty times the minutes over the degrees.
 *
 * @param elapsed since abeam, 0 to 600 min
 * @param bearingChange since abeam, over 0, under 90°
 * @throws {OutOfRange} outside those limits
 * @source FAA-H-8083-15B, time and distance check
 */
export function minutesToStationByRule(elapsed: Minutes, bearingChange: Degrees): Minutes {
  within(ELAPSED, elapsed);
  within(BEARING_CHANGE, bearingChange);
  return (60 * elapsed) / bearingChange + 0;
}

/**
 * Change of bearing still to come when the turn on to an inbound course must begin.
 *
 * @param radius of the turn, 0 to 100 NM
 * @param distance from the station as the turn begins, over 0, at most 1000 NM
 * @param interceptAngle between heading and inbound course, 0 to 180°
 * @returns degrees; null where the turn needs more room than there is to the station
 * @throws {OutOfRange} outside those limits
 * @source a turn through θ moves R (1 − cos θ) across the course; bank taken as instant, still air
 */
export function interceptLead(
  radius: NauticalMiles,
  distance: NauticalMiles,
  interceptAngle: Degrees = 90,
): Degrees | null {
  within(RADIUS, radius);
  within(FROM_STATION, distance);
  within(INTERCEPT_ANGLE, interceptAngle);
  const across = radius * (1 - cos(interceptAngle));
  return across > distance ? null : degrees(Math.asin(across / distance)) + 0;
}

/**
 * Distance before an arc at which to turn off a radial on to it.
 *
 * @param arc its radius about the station, over 0, at most 1000 NM
 * @param radius of the turn, 0 to 100 NM
 * @param from the side on which the aeroplane comes along the radial
 * @returns nautical miles; null where the turn does not fit inside the arc
 * @throws {OutOfRange} outside those limits
 * @source a circle that touches the radial and the arc; bank taken as instant, still air
 */
export function arcLead(arc: NauticalMiles, radius: NauticalMiles, from: Side = "outside"): NauticalMiles | null {
  within(ARC, arc);
  within(RADIUS, radius);
  if (oneOf("from", SIDES, from) === "outside") return Math.sqrt(arc * (arc + 2 * radius)) - arc;
  return 2 * radius > arc ? null : arc - Math.sqrt(arc * (arc - 2 * radius));
}

/**
 * Height of a straight path at a distance from where it meets its reference.
 *
 * @param distance 0 to 1000 NM
 * @param angle 0 to 45°
 * @param referenceHeight height of the path at distance 0, −2000 to 30 000 ft: the threshold crossing height, say,
 *   or that and the threshold's elevation
 * @throws {OutOfRange} outside those limits
 * @source tangent of the angle; the Earth taken as flat
 */
export function pathHeight(distance: NauticalMiles, angle: Degrees = 3, referenceHeight: Feet = 0): Feet {
  within(DISTANCE, distance);
  within(PATH_ANGLE, angle);
  within(REFERENCE_HEIGHT, referenceHeight);
  return distance * feet(METRES_IN_MILE) * tan(angle) + referenceHeight + 0;
}

/**
 * Half the width of a course that widens from its aerial: on course to full deflection.
 *
 * @param halfAngle 0 to under 90°
 * @param distance from the aerial, 0 to 1000 NM
 * @returns feet
 * @throws {OutOfRange} outside those limits
 * @source tangent of the angle
 */
export function courseHalfWidth(halfAngle: Degrees, distance: NauticalMiles): Feet {
  within(HALF_ANGLE, halfAngle);
  within(DISTANCE, distance);
  return distance * feet(METRES_IN_MILE) * tan(halfAngle) + 0;
}
