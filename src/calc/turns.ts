import { type Limits, within } from "./limits.ts";
import type { Degrees, DegreesPerSecond, Knots, LoadFactor, NauticalMiles, Seconds } from "./quantity.ts";
import { BANK, HEADING_CHANGE, TRUE_AIRSPEED } from "./ranges.ts";
import { cos, degrees, G, METRES_IN_MILE, metresPerSecond, nauticalMiles, radians, tan } from "./si.ts";

export const RATE: Limits = { quantity: "rate of turn", unit: "deg/s", from: -3600, to: 3600 };
export const RADIUS: Limits = { quantity: "radius", unit: "NM", from: 0, to: 1000, openFrom: true };
export const STALL_SPEED: Limits = { quantity: "stall speed", unit: "kt", from: 0, to: 300, openFrom: true };
/** Fifteen per cent of more would be a bank of 90° or over. */
export const FIFTEEN_PERCENT_SPEED: Limits = { ...TRUE_AIRSPEED, to: 600, openTo: true };

/**
 * Rate of a level, coordinated turn in still air; it has the sign of the bank.
 *
 * @param tas over 0, at most 700 kt
 * @param bank under 90° either way
 * @throws {OutOfRange} outside those limits
 * @source lift balances weight and turns the path: ω = g tan φ / V
 */
export function turnRate(tas: Knots, bank: Degrees): DegreesPerSecond {
  within(TRUE_AIRSPEED, tas);
  within(BANK, bank);
  return degrees((G * tan(bank)) / metresPerSecond(tas)) + 0;
}

/**
 * Radius of a level, coordinated turn in still air; Infinity with the wings level.
 *
 * @param tas over 0, at most 700 kt
 * @param bank under 90° either way
 * @throws {OutOfRange} outside those limits
 * @source R = V² / (g tan φ)
 */
export function turnRadius(tas: Knots, bank: Degrees): NauticalMiles {
  within(TRUE_AIRSPEED, tas);
  within(BANK, bank);
  return nauticalMiles(metresPerSecond(tas) ** 2 / (G * Math.abs(tan(bank))));
}

/**
 * Bank for a rate of turn; it has the sign of the rate.
 *
 * @param tas over 0, at most 700 kt
 * @param rate within ±3600°/s
 * @throws {OutOfRange} outside those limits
 * @source the inverse of `turnRate`
 */
export function bankForRate(tas: Knots, rate: DegreesPerSecond = 3): Degrees {
  within(TRUE_AIRSPEED, tas);
  within(RATE, rate);
  return degrees(Math.atan((metresPerSecond(tas) * radians(rate)) / G)) + 0;
}

/**
 * Bank for a radius of turn.
 *
 * @param tas over 0, at most 700 kt
 * @param radius over 0, at most 1000 NM
 * @throws {OutOfRange} outside those limits
 * @source the inverse of `turnRadius`
 */
export function bankForRadius(tas: Knots, radius: NauticalMiles): Degrees {
  within(TRUE_AIRSPEED, tas);
  within(RADIUS, radius);
  return degrees(Math.atan(metresPerSecond(tas) ** 2 / (G * radius * METRES_IN_MILE)));
}

/**
 * Rule of thumb for the bank of a rate-one turn: a tenth of the true airspeed in knots, and seven.
 *
 * @param tas over 0, at most 700 kt
 * @throws {OutOfRange} outside those limits
 */
export function bankByTenthPlusSevenRule(tas: Knots): Degrees {
  return within(TRUE_AIRSPEED, tas) / 10 + 7;
}

/**
 * Rule of thumb for the bank of a rate-one turn: 15 % of the true airspeed in knots.
 *
 * @param tas over 0 and under 600 kt
 * @throws {OutOfRange} outside those limits
 */
export function bankByFifteenPercentRule(tas: Knots): Degrees {
  return within(FIFTEEN_PERCENT_SPEED, tas) * 0.15;
}

/**
 * Time of a heading change at constant bank; Infinity with the wings level. Rolling in and out is left out.
 *
 * @param tas over 0, at most 700 kt
 * @param bank under 90° either way
 * @param headingChange within ±100,000°; its sign is ignored
 * @throws {OutOfRange} outside those limits
 * @source t = Δψ / ω
 */
export function turnTime(tas: Knots, bank: Degrees, headingChange: Degrees): Seconds {
  within(HEADING_CHANGE, headingChange);
  const rate = Math.abs(turnRate(tas, bank));
  return rate === 0 ? Infinity : Math.abs(headingChange) / rate;
}

/**
 * Lift over weight in a level, coordinated turn.
 *
 * @param bank under 90° either way
 * @throws {OutOfRange} outside those limits
 * @source n = 1 / cos φ
 */
export function loadFactor(bank: Degrees): LoadFactor {
  return 1 / cos(within(BANK, bank));
}

/**
 * Stall speed in a level, coordinated turn: it grows with the root of the load factor.
 *
 * @param stallSpeed wings level, over 0, at most 300 kt
 * @param bank under 90° either way
 * @throws {OutOfRange} outside those limits
 * @source lift at the stalling angle of attack is proportional to V²
 */
export function stallSpeedInTurn(stallSpeed: Knots, bank: Degrees): Knots {
  return within(STALL_SPEED, stallSpeed) * Math.sqrt(loadFactor(bank));
}
