import { type Limits, within } from "./limits.ts";
import type { Feet } from "./quantity.ts";

const ERROR = { unit: "ft", from: -20_000, to: 20_000 } as const;
export const TEMPERATURE_ERROR: Limits = { ...ERROR, quantity: "temperature error" };
export const LAG_ERROR: Limits = { ...ERROR, quantity: "lag" };
export const INSTRUMENT_TOLERANCE: Limits = { ...ERROR, quantity: "tolerance of the instrument" };
export const SETTING_TOLERANCE: Limits = { ...ERROR, quantity: "tolerance of the setting" };
export const FLYING_TOLERANCE: Limits = { ...ERROR, quantity: "tolerance of the flying" };
const KNOWN: Limits = { ...ERROR, quantity: "known error" };
const TOLERANCE: Limits = { ...ERROR, quantity: "tolerance" };

/** What an altimeter may be wrong by; feet, indicated minus true. */
export interface ErrorBudget {
  /** Sum of the errors whose sign is known: it can be corrected. */
  readonly known: Feet;
  /** Magnitude if every tolerance is used up on the side of the known error. */
  readonly worstCase: Feet;
  /** Magnitude with the tolerances taken as independent, on the side of the known error. */
  readonly rootSumSquare: Feet;
}

/**
 * Errors of an altimeter put together. Known errors add with their signs. Tolerances, errors of either sign, add by
 * their magnitudes in the worst case; independent ones add by their squares, which is as unlikely to be exceeded as
 * each of them is.
 *
 * @param known errors whose sign is known, −20,000 to 20,000 ft each: temperature, lag
 * @param tolerances −20,000 to 20,000 ft each; their signs are ignored
 * @throws {OutOfRange} outside those limits
 * @source propagation of independent errors
 */
export function errorBudget(known: readonly Feet[], tolerances: readonly Feet[]): ErrorBudget {
  const sum = known.reduce((total: number, error) => total + within(KNOWN, error), 0);
  const sizes = tolerances.map((tolerance) => Math.abs(within(TOLERANCE, tolerance)));
  return {
    known: sum + 0,
    worstCase: Math.abs(sum) + sizes.reduce((total, size) => total + size, 0),
    rootSumSquare: Math.abs(sum) + Math.hypot(...sizes),
  };
}

/**
 * The error budget of an altimeter in flight.
 *
 * @param temperature, lag errors of known sign, indicated minus true, −20,000 to 20,000 ft
 * @param instrument, setting, flying tolerances, −20,000 to 20,000 ft; their signs are ignored
 * @throws {OutOfRange} outside those limits
 * @source as errorBudget
 */
export function altimeterErrorBudget(
  temperature: Feet,
  lag: Feet,
  instrument: Feet,
  setting: Feet,
  flying: Feet,
): ErrorBudget {
  const known = [within(TEMPERATURE_ERROR, temperature), within(LAG_ERROR, lag)];
  within(INSTRUMENT_TOLERANCE, instrument);
  within(SETTING_TOLERANCE, setting);
  within(FLYING_TOLERANCE, flying);
  return errorBudget(known, [instrument, setting, flying]);
}
