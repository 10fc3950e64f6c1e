import { TURN_RATE, TURNS, type Turns } from "./bounds.ts";
import { oneOf } from "./choice.ts";
import { type Limits, within } from "./limits.ts";
import type { Degrees, DegreesPerSecond, KnotsPerSecond, Seconds } from "./quantity.ts";
import { BANK, HEADING, HEADING_CHANGE } from "./ranges.ts";
import { cos, degrees, G, metresPerSecond, onCircle, sin, tan } from "./si.ts";

export const MAGNETIC_LATITUDE: Limits = { quantity: "magnetic latitude", unit: "deg", from: -90, to: 90 };
export const DIP: Limits = { quantity: "dip", unit: "deg", from: -90, to: 90, openFrom: true, openTo: true };
export const ACCELERATION: Limits = { quantity: "acceleration", unit: "kt/s", from: -20, to: 20 };
export const LATITUDE: Limits = { quantity: "latitude", unit: "deg", from: -90, to: 90 };
export const ROLL_OUT_LEAD: Limits = { quantity: "roll-out lead", unit: "deg", from: 0, to: 90 };
export const DEVIATION: Limits = { quantity: "deviation", unit: "deg", from: -180, to: 180 };
export const VARIATION: Limits = { quantity: "variation", unit: "deg", from: -180, to: 180 };
export const TARGET: Limits = { ...HEADING, quantity: "target heading" };
export const COMPASS_HEADING: Limits = { ...HEADING, quantity: "compass heading" };
export const TRUE_HEADING: Limits = { ...HEADING, quantity: "true heading" };

/**
 * Dip of the Earth's field where it is that of a dipole.
 *
 * @param magneticLatitude −90 to 90°, south negative
 * @returns degrees, positive where the north end of a needle dips down
 * @throws {OutOfRange} outside those limits
 * @source field of a dipole: tan I = 2 tan λ
 */
export function magneticDip(magneticLatitude: Degrees): Degrees {
  within(MAGNETIC_LATITUDE, magneticLatitude);
  return degrees(Math.atan2(2 * sin(magneticLatitude), cos(magneticLatitude))) + 0;
}

/**
 * What a card that has settled square to the aeroplane's own vertical reads in a balanced turn. Model: a static card;
 * a real one swirls, overshoots and lags.
 *
 * Banked φ, the field has the part cos H along the nose and tan I sin φ − sin H cos φ along the right wing (in units
 * of its horizontal strength); the card reads the angle between the two.
 *
 * @param heading magnetic, degrees, within ±100 000
 * @param dip under 90° either way, positive where the north end dips down
 * @param bank right positive, |bank| < 90° − |dip|: beyond, the card no longer goes round with the heading
 * @returns the reading, 0 ≤ x < 360
 * @throws {OutOfRange} outside those limits
 * @source resolution of the field along the tilted card's axes
 */
export function compassInTurn(heading: Degrees, dip: Degrees, bank: Degrees): Degrees {
  within(HEADING, heading);
  within(DIP, dip);
  within(bankBelow(90 - Math.abs(dip)), within(BANK, bank));
  const acrossCard = sin(heading) * cos(bank) - tan(dip) * sin(bank);
  return onCircle(degrees(Math.atan2(acrossCard, cos(heading))));
}

/**
 * What a static card reads, wings level, while speed changes. Model, as compassInTurn: its bob hangs back, so that the
 * card tilts by θ = atan(a/g).
 *
 * @param heading magnetic, degrees, within ±100 000
 * @param dip under 90° either way, positive where the north end dips down
 * @param acceleration kt/s, −20 to 20; slowing is negative
 * @returns the reading, 0 ≤ x < 360
 * @throws {OutOfRange} outside those limits
 * @source resolution of the field along the tilted card's axes
 */
export function compassAccelerating(heading: Degrees, dip: Degrees, acceleration: KnotsPerSecond): Degrees {
  within(HEADING, heading);
  within(DIP, dip);
  within(ACCELERATION, acceleration);
  const tilt = Math.atan(metresPerSecond(acceleration) / G);
  const alongCard = cos(heading) * Math.cos(tilt) + tan(dip) * Math.sin(tilt);
  return onCircle(degrees(Math.atan2(sin(heading), alongCard)));
}

/**
 * What a static card reads when the roll-out on to a heading must begin. Model, as compassInTurn.
 *
 * @param target magnetic heading wanted, degrees, within ±100 000
 * @param turn the way the aeroplane is turning
 * @param dip under 90° either way, positive where the north end dips down
 * @param bank a magnitude: its sign is ignored, the turn gives the side; under 90° − |dip|
 * @param lead of the roll-out, 0 to 90°
 * @returns the reading, 0 ≤ x < 360
 * @throws {OutOfRange} outside those limits
 * @source compassInTurn on the heading that is the lead short of the target
 */
export function rollOutReading(target: Degrees, turn: Turns, dip: Degrees, bank: Degrees, lead: Degrees): Degrees {
  within(TARGET, target);
  oneOf("turn", TURNS, turn);
  within(BANK, bank);
  within(ROLL_OUT_LEAD, lead);
  const side = turn === "right" ? 1 : -1;
  return compassInTurn(target - side * lead, dip, side * Math.abs(bank));
}

/**
 * The compass reading at which to start rolling out on to a heading, by the rule: allow the latitude on north and
 * south, nothing on east and west, in proportion between; and the roll-out lead.
 *
 * @param target magnetic heading wanted, degrees, within ±100 000
 * @param turn the way the aeroplane is turning
 * @param latitude −90 to 90°, south negative
 * @param lead of the roll-out, 0 to 90°
 * @returns the reading, 0 ≤ x < 360
 * @throws {OutOfRange} outside those limits
 * @source FAA-H-8083-15B, compass turns; taught for 15 to 18° of bank
 */
export function rollOutHeadingByRule(target: Degrees, turn: Turns, latitude: Degrees, lead: Degrees): Degrees {
  within(TARGET, target);
  oneOf("turn", TURNS, turn);
  within(LATITUDE, latitude);
  within(ROLL_OUT_LEAD, lead);
  const stillToGo = latitude * cos(target) + lead;
  return onCircle(turn === "right" ? target - stillToGo : target + stillToGo);
}

/**
 * True heading from the compass.
 *
 * @param compass the reading, degrees, within ±100 000
 * @param deviation, variation −180 to 180°, east positive
 * @returns 0 ≤ x < 360
 * @throws {OutOfRange} outside those limits
 * @source definition: magnetic = compass + deviation, true = magnetic + variation
 */
export function trueHeading(compass: Degrees, deviation: Degrees, variation: Degrees): Degrees {
  within(COMPASS_HEADING, compass);
  within(DEVIATION, deviation);
  within(VARIATION, variation);
  return onCircle(compass + deviation + variation);
}

/**
 * Compass heading to steer for a true heading.
 *
 * @param trueHeading degrees, within ±100 000
 * @param deviation, variation −180 to 180°, east positive
 * @returns 0 ≤ x < 360
 * @throws {OutOfRange} outside those limits
 * @source definition, as trueHeading
 */
export function compassHeading(trueHeading: Degrees, deviation: Degrees, variation: Degrees): Degrees {
  within(TRUE_HEADING, trueHeading);
  within(DEVIATION, deviation);
  within(VARIATION, variation);
  return onCircle(trueHeading - deviation - variation);
}

/**
 * Time for a turn by the clock.
 *
 * @param headingChange degrees, within ±100 000; its sign is ignored
 * @param rate −60 to 60°/s; its sign is ignored
 * @returns seconds; Infinity at no rate, 0 for no turn
 * @throws {OutOfRange} outside those limits
 * @source kinematics at a constant rate, from roll-in to the start of an equal roll-out
 */
export function timedTurn(headingChange: Degrees, rate: DegreesPerSecond = 3): Seconds {
  within(HEADING_CHANGE, headingChange);
  within(TURN_RATE, rate);
  return headingChange === 0 ? 0 : Math.abs(headingChange / rate);
}

function bankBelow(limit: number): Limits {
  return { ...BANK, from: -limit, to: limit };
}
