import { COURSE, SOME_TURN_RATE, TURN_RATE, TURNS, type Turns, WIND_FROM, WIND_SPEED } from "./bounds.ts";
import { oneOf } from "./choice.ts";
import { type Limits, within } from "./limits.ts";
import { abeamDuringTurn, closingLeg, type Pattern } from "./pattern.ts";
import type { Degrees, DegreesPerSecond, Knots, Plain, Seconds } from "./quantity.ts";
import { HEADING, TRUE_AIRSPEED } from "./ranges.ts";
import { degrees, onCircle, radians } from "./si.ts";
import { windComponents, windTriangle } from "./wind.ts";

export const INBOUND_COURSE: Limits = { ...COURSE, quantity: "inbound course" };
export const INBOUND_TIME: Limits = { quantity: "inbound time", unit: "s", from: 0, to: 3600, openFrom: true };
export const DRIFT_MULTIPLE: Limits = { quantity: "drift multiple", unit: "plain", from: 0, to: 10 };

/** The three ways to join a holding pattern. */
export type Entry = "direct" | "parallel" | "offset";

/** A holding pattern and its wind; one north for all directions. */
export interface Hold {
  /** Course of the inbound leg, degrees, within ±100 000. */
  readonly inbound: Degrees;
  /** Over 0, at most 700 kt. */
  readonly tas: Knots;
  readonly windFrom: Degrees;
  /** 0 to 300 kt. */
  readonly windSpeed: Knots;
  /** Wanted on the inbound leg from wings level to the fix, over 0, at most 3600 s. */
  readonly inboundTime: Seconds;
  readonly turns: Turns;
  /** Of both turns, up to 60°/s and not 0; its sign is ignored. */
  readonly rate: DegreesPerSecond;
}

/** A boundary between sectors counts as met within this many degrees. */
const ON_BOUNDARY = 1e-9;

/**
 * Entry into a holding pattern by the heading on reaching the fix. Sectors of a right-hand pattern, from the inbound
 * course to the right: direct from 290° through 0 to 110°, offset on to 180°, parallel on to 290°. A left-hand pattern
 * mirrors them. On a boundary direct goes before offset, offset before parallel.
 *
 * @param inbound, heading degrees, within ±100 000
 * @throws {OutOfRange} outside those limits
 * @source ICAO Doc 8168, FAA AIM: sectors of 180°, 70° and 110°
 */
export function holdEntry(inbound: Degrees, heading: Degrees, turns: Turns): Entry {
  within(INBOUND_COURSE, inbound);
  within(HEADING, heading);
  oneOf("turns", TURNS, turns);
  const fromInbound = onCircle(turns === "right" ? heading - inbound : inbound - heading);
  if (fromInbound <= 110 + ON_BOUNDARY || fromInbound >= 290 - ON_BOUNDARY) return "direct";
  return fromInbound <= 180 + ON_BOUNDARY ? "offset" : "parallel";
}

/**
 * Outbound heading and time that bring the aeroplane out of its second turn on the inbound course, with the wanted
 * inbound time still to fly. Both turns are made at one rate without roll-in: together they close a circle in the air.
 *
 * In a headwind so strong that the turns alone drift as far as the inbound leg, the pattern closes only with a leg
 * that points upwind, less than 90° from the inbound course: no pattern that anyone would fly.
 *
 * @returns heading 0 ≤ x < 360; time from wings level outbound; timeFromAbeam from passing abeam the fix, during the
 *   turn or after it, to the same moment; null where the wind is as strong as the true airspeed or the inbound course
 *   cannot be held
 * @throws {OutOfRange} outside the limits of Hold
 * @source the displacements of a closed pattern sum to nothing
 */
export function holdOutbound(hold: Hold): { heading: Degrees; time: Seconds; timeFromAbeam: Seconds } | null {
  const pattern = rightHanded(hold);
  if (pattern === null) return null;
  const leg = closingLeg(pattern);
  const side = hold.turns === "right" ? 1 : -1;
  const heading = onCircle(hold.inbound + side * degrees(leg.heading));
  return { heading, time: leg.time, timeFromAbeam: leg.time + abeamDuringTurn(pattern, leg) };
}

/**
 * Outbound heading and time by the rule: a multiple of the inbound drift correction, to the other side; and a second
 * less for each knot of inbound headwind, more for a tailwind.
 *
 * @param hold driftMultiple: 0 to 10, three where nothing else is taught
 * @returns heading 0 ≤ x < 360; time from over or abeam the fix, whichever is later, never negative; null where the
 *   inbound course cannot be held
 * @throws {OutOfRange} outside the limits of Hold
 * @source FAA AIM (three times the correction); the timing is custom
 */
export function holdOutboundByRule(
  hold: Hold & { readonly driftMultiple?: Plain },
): { heading: Degrees; time: Seconds } | null {
  const { inbound, tas, windFrom, windSpeed, inboundTime, driftMultiple = 3 } = hold;
  check(hold);
  within(DRIFT_MULTIPLE, driftMultiple);
  const triangle = windTriangle(inbound, tas, windFrom, windSpeed);
  if (triangle === null) return null;
  const { headwind } = windComponents(inbound, windFrom, windSpeed);
  return {
    heading: onCircle(inbound + 180 - driftMultiple * triangle.correction),
    time: Math.max(0, inboundTime - headwind),
  };
}

function check({ inbound, tas, windFrom, windSpeed, inboundTime, turns, rate }: Hold): void {
  within(INBOUND_COURSE, inbound);
  within(TRUE_AIRSPEED, tas);
  within(WIND_FROM, windFrom);
  within(WIND_SPEED, windSpeed);
  within(INBOUND_TIME, inboundTime);
  oneOf("turns", TURNS, turns);
  within(TURN_RATE, rate);
  within(SOME_TURN_RATE, Math.abs(rate));
}

/** The same pattern flown to the right of an inbound course of 0; null where no such pattern can be flown. */
function rightHanded(hold: Hold): Pattern | null {
  check(hold);
  const { inbound, tas, windFrom, windSpeed, inboundTime, turns, rate } = hold;
  const triangle = windTriangle(inbound, tas, windFrom, windSpeed);
  if (triangle === null || windSpeed >= tas) return null;
  const { headwind, crosswind } = windComponents(inbound, windFrom, windSpeed);
  const side = turns === "right" ? 1 : -1;
  return {
    speed: tas,
    rate: radians(Math.abs(rate)),
    windAlong: -headwind,
    windAcross: -side * crosswind,
    correction: side * radians(triangle.correction),
    inboundDistance: triangle.groundSpeed * inboundTime,
  };
}
