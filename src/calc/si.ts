/** Standard acceleration of free fall, m/s². @source ICAO Doc 7488; CGPM 1901 */
export const G = 9.80665;
/** International nautical mile, m. */
export const METRES_IN_MILE = 1852;
/** International foot, m. */
export const METRES_IN_FOOT = 0.3048;
/** Statute mile, m. */
export const METRES_IN_STATUTE_MILE = 1609.344;
/** Pascals in an inch of mercury, ICAO conversion. */
export const PASCALS_IN_INCH = 3386.39;
/** Kelvin at 0 °C. */
export const ZERO_CELSIUS = 273.15;

const METRES_PER_SECOND_IN_KNOT = METRES_IN_MILE / 3600;

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (radians: number): number => (radians * 180) / Math.PI;

export const sin = (angle: number): number => Math.sin(radians(angle));
export const cos = (angle: number): number => Math.cos(radians(angle));
export const tan = (angle: number): number => Math.tan(radians(angle));

export const metresPerSecond = (knots: number): number => knots * METRES_PER_SECOND_IN_KNOT;
export const knots = (metresPerSecond: number): number => metresPerSecond / METRES_PER_SECOND_IN_KNOT;
export const metres = (feet: number): number => feet * METRES_IN_FOOT;
export const feet = (metres: number): number => metres / METRES_IN_FOOT;
export const nauticalMiles = (metres: number): number => metres / METRES_IN_MILE;

/** An angle brought onto the circle: 0 ≤ x < 360. */
export function onCircle(angle: number): number {
  const rest = angle % 360;
  const positive = rest < 0 ? rest + 360 : rest;
  return positive >= 360 ? 0 : positive + 0;
}
