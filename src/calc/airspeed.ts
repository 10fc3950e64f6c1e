import { GAS_CONSTANT, isaPressure, SEA_LEVEL_PRESSURE } from "./atmosphere.ts";
import { type Limits, within } from "./limits.ts";
import type { Celsius, Feet, Knots, Plain } from "./quantity.ts";
import { PRESSURE_ALTITUDE, TEMPERATURE } from "./ranges.ts";
import { knots, metresPerSecond, ZERO_CELSIUS } from "./si.ts";

export const CALIBRATED: Limits = { quantity: "calibrated airspeed", unit: "kt", from: 0, to: 660 };
export const AIRSPEED: Limits = { quantity: "true airspeed", unit: "kt", from: 0, to: 700 };
const SUBSONIC: Limits = { quantity: "Mach number", unit: "plain", from: 0, to: 1 };
export const RULE_ALTITUDE: Limits = { quantity: "altitude", unit: "ft", from: -2000, to: 50000 };

/** Ratio of the specific heats of air. */
const RATIO_OF_HEATS = 1.4;
const SEA_LEVEL_SOUND = speedOfSound(15);

/**
 * True airspeed from calibrated airspeed: the impact pressure that the airspeed indicator measures, at the static
 * pressure and temperature outside.
 *
 * @param cas 0 to 660 kt
 * @param pressureAltitude −16,000 to 65,000 ft
 * @param temperature −100 to 80 °C, of the undisturbed air
 * @throws {OutOfRange} outside those limits, and where the Mach number would be over 1
 * @source isentropic flow of a perfect gas with γ = 1.4
 */
export function trueAirspeed(cas: Knots, pressureAltitude: Feet, temperature: Celsius): Knots {
  return knots(machFromCalibrated(cas, pressureAltitude) * speedOfSound(temperature));
}

/**
 * Calibrated airspeed from true airspeed.
 *
 * @param tas 0 to 700 kt
 * @param pressureAltitude −16,000 to 65,000 ft
 * @param temperature −100 to 80 °C, of the undisturbed air
 * @throws {OutOfRange} outside those limits, where the Mach number is over 1, and where the result is over 660 kt
 * @source the inverse of `trueAirspeed`
 */
export function calibratedAirspeed(tas: Knots, pressureAltitude: Feet, temperature: Celsius): Knots {
  const M = within(SUBSONIC, machNumber(tas, temperature));
  within(PRESSURE_ALTITUDE, pressureAltitude);
  const impact = isaPressure(pressureAltitude) * impactRatio(M);
  return within(CALIBRATED, knots(machOfImpact(impact / SEA_LEVEL_PRESSURE) * SEA_LEVEL_SOUND));
}

/**
 * Mach number from true airspeed.
 *
 * @param tas 0 to 700 kt
 * @param temperature −100 to 80 °C, of the undisturbed air
 * @throws {OutOfRange} outside those limits
 * @source speed of sound a = √(γ R T)
 */
export function machNumber(tas: Knots, temperature: Celsius): Plain {
  return metresPerSecond(within(AIRSPEED, tas)) / speedOfSound(temperature) + 0;
}

/**
 * Equivalent airspeed: the speed at sea level that has the same dynamic pressure. It does not depend on temperature.
 *
 * @param cas 0 to 660 kt
 * @param pressureAltitude −16,000 to 65,000 ft
 * @throws {OutOfRange} outside those limits, and where the Mach number would be over 1
 * @source dynamic pressure q = γ p M² / 2
 */
export function equivalentAirspeed(cas: Knots, pressureAltitude: Feet): Knots {
  const M = machFromCalibrated(cas, pressureAltitude);
  return knots(SEA_LEVEL_SOUND * M * Math.sqrt(isaPressure(pressureAltitude) / SEA_LEVEL_PRESSURE));
}

/**
 * Rule of thumb: calibrated airspeed and 2 % of it for each thousand feet.
 *
 * @param cas 0 to 660 kt
 * @param altitude −2,000 to 50,000 ft
 * @throws {OutOfRange} outside those limits
 */
export function trueAirspeedByRule(cas: Knots, altitude: Feet): Knots {
  within(CALIBRATED, cas);
  within(RULE_ALTITUDE, altitude);
  return cas * (1 + (0.02 * altitude) / 1000) + 0;
}

/**
 * Speed of sound in m/s.
 *
 * @param temperature −100 to 80 °C
 * @throws {OutOfRange} outside those limits
 */
export function speedOfSound(temperature: Celsius): number {
  return Math.sqrt(RATIO_OF_HEATS * GAS_CONSTANT * (within(TEMPERATURE, temperature) + ZERO_CELSIUS));
}

/** Impact pressure over static pressure at a Mach number. */
export function impactRatio(mach: number): number {
  return Math.expm1(3.5 * Math.log1p(0.2 * mach ** 2));
}

/** Mach number at which impact pressure has a ratio to static pressure. */
export function machOfImpact(ratio: number): number {
  return Math.sqrt(5 * Math.expm1(Math.log1p(ratio) / 3.5));
}

function machFromCalibrated(cas: Knots, pressureAltitude: Feet): number {
  within(CALIBRATED, cas);
  within(PRESSURE_ALTITUDE, pressureAltitude);
  const impact = SEA_LEVEL_PRESSURE * impactRatio(metresPerSecond(cas) / SEA_LEVEL_SOUND);
  return within(SUBSONIC, machOfImpact(impact / isaPressure(pressureAltitude)));
}
