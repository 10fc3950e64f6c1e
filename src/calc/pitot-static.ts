import { impactRatio, machOfImpact, speedOfSound } from "./airspeed.ts";
import { isaPressure, SEA_LEVEL_PRESSURE } from "./atmosphere.ts";
import { oneOf } from "./choice.ts";
import { type Limits, within } from "./limits.ts";
import type { Feet, Hectopascals, Knots } from "./quantity.ts";
import { PRESSURE_ALTITUDE } from "./ranges.ts";
import { knots, metresPerSecond } from "./si.ts";

export const AIRSPEED: Limits = { quantity: "calibrated airspeed", unit: "kt", from: 0, to: 660 };
export const BLOCKED_AT: Limits = { ...PRESSURE_ALTITUDE, quantity: "pressure altitude of the blockage" };
const READING: Limits = { ...AIRSPEED, quantity: "reading of the airspeed indicator" };

/** The drain hole of a pitot head whose mouth is blocked. */
export type Drain = "open" | "blocked";
export const DRAINS: readonly Drain[] = ["open", "blocked"];

/**
 * What the airspeed indicator reads after its pitot head has blocked. With the drain open the pressure in the line
 * falls to that outside and the reading to zero; with the drain blocked the line keeps the total pressure that it had,
 * and the instrument reads like an altimeter.
 *
 * @param airspeed calibrated, as the head blocked, 0 to 660 kt
 * @param blockedAt pressure altitude there, −16,000 to 65,000 ft
 * @param pressureAltitude now, −16,000 to 65,000 ft
 * @returns knots; zero where the pressure outside is the higher
 * @throws {OutOfRange} outside those limits, and where the reading would be over 660 kt
 * @source impact pressure of compressible flow, pressures of the standard atmosphere; temperature of the trapped air
 *   unchanged
 */
export function airspeedWithBlockedPitot(
  airspeed: Knots,
  blockedAt: Feet,
  pressureAltitude: Feet,
  drain: Drain = "blocked",
): Knots {
  within(AIRSPEED, airspeed);
  within(BLOCKED_AT, blockedAt);
  within(PRESSURE_ALTITUDE, pressureAltitude);
  if (oneOf("drain", DRAINS, drain) === "open") return 0;
  return reading(isaPressure(blockedAt) + impactPressure(airspeed) - isaPressure(pressureAltitude));
}

/**
 * What the airspeed indicator reads while its static line keeps the pressure at which it blocked. The altimeter then
 * stays at that altitude, and the vertical speed indicator at zero.
 *
 * @param airspeed calibrated, flown now, 0 to 660 kt
 * @param blockedAt pressure altitude there, −16,000 to 65,000 ft
 * @param pressureAltitude now, −16,000 to 65,000 ft
 * @returns knots: too many below where the line blocked, too few above; zero where the static line has the higher
 *   pressure
 * @throws {OutOfRange} outside those limits, and where the reading would be over 660 kt
 * @source impact pressure of compressible flow, pressures of the standard atmosphere
 */
export function airspeedWithBlockedStatic(airspeed: Knots, blockedAt: Feet, pressureAltitude: Feet): Knots {
  within(AIRSPEED, airspeed);
  within(BLOCKED_AT, blockedAt);
  within(PRESSURE_ALTITUDE, pressureAltitude);
  return reading(isaPressure(pressureAltitude) + impactPressure(airspeed) - isaPressure(blockedAt));
}

/** Total pressure less static pressure at a calibrated airspeed. */
function impactPressure(airspeed: Knots): Hectopascals {
  return SEA_LEVEL_PRESSURE * impactRatio(metresPerSecond(airspeed) / speedOfSound(15));
}

/** The calibrated airspeed that an impact pressure stands for; zero for none and for less. */
function reading(impact: Hectopascals): Knots {
  if (impact <= 0) return 0;
  return within(READING, knots(machOfImpact(impact / SEA_LEVEL_PRESSURE) * speedOfSound(15)));
}
