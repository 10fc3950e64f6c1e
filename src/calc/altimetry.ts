import { isaAltitude } from "./atmosphere.ts";
import { type Limits, within } from "./limits.ts";
import type { Celsius, Feet, FeetPerMinute, Hectopascals, Plain, Seconds } from "./quantity.ts";
import { QNH, VERTICAL_SPEED } from "./ranges.ts";

export const SETTING: Limits = { ...QNH, quantity: "pressure set" };
export const ACTUAL: Limits = { ...QNH, quantity: "actual pressure" };
export const FEET_PER_HECTOPASCAL: Limits = {
  quantity: "feet per hectopascal",
  unit: "plain",
  from: 0,
  to: 100,
  openFrom: true,
};
export const ABOVE_SOURCE: Limits = { quantity: "height above the setting source", unit: "ft", from: 0, to: 40_000 };
export const AERODROME_TEMPERATURE: Limits = {
  quantity: "aerodrome temperature",
  unit: "degC",
  from: -100,
  to: 80,
};
export const AERODROME_ELEVATION: Limits = { quantity: "aerodrome elevation", unit: "ft", from: -2000, to: 16_000 };
export const LAG_TIME_CONSTANT: Limits = { quantity: "time constant", unit: "s", from: 0, to: 600, openFrom: true };
export const LAG_TIME: Limits = { quantity: "time", unit: "s", from: 0, to: Infinity };

/** Lapse of temperature in the standard atmosphere, °C per foot, as PANS-OPS rounds it. */
export const LAPSE_PER_FOOT = 0.00198;
/** 0 °C in kelvin, as PANS-OPS rounds it. */
const FREEZING = 273;
/** Standard temperature at sea level, °C. */
const SEA_LEVEL = 15;

/**
 * What an altimeter shows too much because a wrong pressure is set.
 *
 * @param set on the sub-scale, 800 to 1100 hPa
 * @param actual the QNH, 800 to 1100 hPa
 * @returns feet, indicated minus true: positive over-reads
 * @throws {OutOfRange} outside those limits
 * @source standard atmosphere: each setting moves the pointer by its own pressure altitude
 */
export function settingError(set: Hectopascals, actual: Hectopascals): Feet {
  within(SETTING, set);
  within(ACTUAL, actual);
  return isaAltitude(actual) - isaAltitude(set);
}

/**
 * Setting error by the rule of so many feet for a hectopascal.
 *
 * @param set on the sub-scale, 800 to 1100 hPa
 * @param actual the QNH, 800 to 1100 hPa
 * @param feetPerHectopascal over 0, at most 100; 30 is taught, 27 is right at sea level
 * @returns feet, indicated minus true
 * @throws {OutOfRange} outside those limits
 * @source rule of thumb
 */
export function settingErrorByRule(set: Hectopascals, actual: Hectopascals, feetPerHectopascal: Plain = 30): Feet {
  within(SETTING, set);
  within(ACTUAL, actual);
  within(FEET_PER_HECTOPASCAL, feetPerHectopascal);
  return (set - actual) * feetPerHectopascal + 0;
}

/**
 * Feet to add to a published height because the air is colder than standard. In warm air it is negative: shown as
 * information, never subtracted.
 *
 * By hydrostatics (dp = −p g dh / (R T)) the layer of pressure that is H thick at standard temperature is thicker or
 * thinner as its mean temperature is higher or lower. With the standard lapse L from the sea-level temperature t₀,
 * the mean of the column from the source at elevation S up to S + H stands at S + H/2; PANS-OPS takes (H + S)/2 for
 * it: correction = H (15 − t₀) / (273 + t₀ − L (H + S)/2), and t₀ = aerodrome temperature + L × aerodrome elevation.
 *
 * @param height above the altimeter setting source, 0 to 40 000 ft
 * @param aerodromeTemperature −100 to 80 °C
 * @param aerodromeElevation of the source, −2000 to 16 000 ft
 * @throws {OutOfRange} outside those limits
 * @source ICAO Doc 8168 (PANS-OPS), temperature correction, with its rounded 273 and 0.00198 °C/ft
 */
export function coldTemperatureError(height: Feet, aerodromeTemperature: Celsius, aerodromeElevation: Feet = 0): Feet {
  within(ABOVE_SOURCE, height);
  within(AERODROME_TEMPERATURE, aerodromeTemperature);
  within(AERODROME_ELEVATION, aerodromeElevation);
  const atSeaLevel = aerodromeTemperature + LAPSE_PER_FOOT * aerodromeElevation;
  const mean = FREEZING + atSeaLevel - (LAPSE_PER_FOOT * (height + aerodromeElevation)) / 2;
  return (height * (SEA_LEVEL - atSeaLevel)) / mean + 0;
}

/**
 * Cold temperature error by the rule: 4 % of the height for each 10 °C below standard at the aerodrome.
 *
 * @param height above the altimeter setting source, 0 to 40 000 ft
 * @param aerodromeTemperature −100 to 80 °C
 * @param aerodromeElevation of the source, −2000 to 16 000 ft
 * @returns feet to add; negative in warm air
 * @throws {OutOfRange} outside those limits
 * @source rule of thumb: 10 °C is about 4 % of 250 K
 */
export function coldTemperatureErrorByRule(
  height: Feet,
  aerodromeTemperature: Celsius,
  aerodromeElevation: Feet = 0,
): Feet {
  within(ABOVE_SOURCE, height);
  within(AERODROME_TEMPERATURE, aerodromeTemperature);
  within(AERODROME_ELEVATION, aerodromeElevation);
  const belowStandard = SEA_LEVEL - LAPSE_PER_FOOT * aerodromeElevation - aerodromeTemperature;
  return (height * 0.04 * belowStandard) / 10 + 0;
}

/**
 * Lag of an altimeter at a steady vertical speed, begun at once.
 *
 * @param verticalSpeed −30 000 to 30 000 ft/min
 * @param timeConstant over 0, at most 600 s
 * @param time since the climb or descent began, 0 to Infinity s
 * @returns feet, indicated minus true: negative climbing
 * @throws {OutOfRange} outside those limits
 * @source first-order lag: −VS τ (1 − e^(−t/τ))
 */
export function lagError(verticalSpeed: FeetPerMinute, timeConstant: Seconds, time: Seconds = Infinity): Feet {
  within(VERTICAL_SPEED, verticalSpeed);
  within(LAG_TIME_CONSTANT, timeConstant);
  within(LAG_TIME, time);
  return (verticalSpeed / 60) * timeConstant * Math.expm1(-time / timeConstant) + 0;
}
