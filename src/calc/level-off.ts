import { STEP } from "./bounds.ts";
import { type Instant, trajectory } from "./integrate.ts";
import { levelOffLead } from "./leads.ts";
import { type Limits, within } from "./limits.ts";
import type { Feet, FeetPerMinute, LoadFactor, Plain, Seconds } from "./quantity.ts";
import { REACTION, VERTICAL_SPEED } from "./ranges.ts";
import { feet, G } from "./si.ts";

export const EXTRA_LOAD: Limits = { quantity: "extra load", unit: "g", from: 0, to: 5, openFrom: true };
export const LEAD: Limits = { quantity: "lead", unit: "ft", from: 0, to: 20_000 };
export const FRACTION: Limits = { quantity: "fraction", unit: "plain", from: 0, to: 1, openFrom: true };

/** A moment of a level-off. */
export interface LevelOffPoint {
  readonly time: Seconds;
  /** From the altitude wanted, above it positive. */
  readonly altitude: Feet;
  readonly verticalSpeed: FeetPerMinute;
}

/** A level-off flown with a steady extra load. */
export interface LevelOff {
  /** Before the level-off, −30,000 to 30,000 ft/min. */
  readonly verticalSpeed: FeetPerMinute;
  /** Over 0, at most 5 g; taken off in a climb, added in a descent. */
  readonly extraLoad: LoadFactor;
  /** How far before the altitude the pilot sees that it is time, 0 to 20,000 ft; unless given, just enough. */
  readonly lead?: Feet;
  /** From seeing to pulling, 0 to 60 s; 0 unless given. */
  readonly reaction?: Seconds;
  /** Longest step of the integration; 0.1 s unless given. */
  readonly step?: Seconds;
}

/**
 * Altitude against time as an aeroplane levels off. Model: after the reaction time the extra load is there at once
 * and stays until the vertical speed is gone.
 *
 * @returns from the cue to level flight
 * @throws {OutOfRange} outside the limits of LevelOff
 * @source h″ = −Δn g in a climb, +Δn g in a descent
 */
export function levelOffPath(given: LevelOff): LevelOffPoint[] {
  const { verticalSpeed, extraLoad, reaction = 0, step = 0.1 } = given;
  within(VERTICAL_SPEED, verticalSpeed);
  within(EXTRA_LOAD, extraLoad);
  within(REACTION, reaction);
  within(STEP, step);
  const lead = within(LEAD, given.lead ?? levelOffLead(verticalSpeed, extraLoad, reaction));
  return path(verticalSpeed, lead, reaction, feet(extraLoad * G), step);
}

/**
 * Altitude against time in a level-off by the rule: begun at a fraction of the vertical speed before the altitude, and
 * so always as long, 12 s at a tenth.
 *
 * @param verticalSpeed −30,000 to 30,000 ft/min
 * @param fraction of a minute's climb or descent, over 0, at most 1
 * @param step longest step of the integration, over 0, at most 10 s
 * @returns from the cue to level flight
 * @throws {OutOfRange} outside those limits
 * @source rule of thumb, flown with the steady deceleration that makes it come out
 */
export function levelOffPathByRule(
  verticalSpeed: FeetPerMinute,
  fraction: Plain = 0.1,
  step: Seconds = 0.1,
): LevelOffPoint[] {
  within(VERTICAL_SPEED, verticalSpeed);
  within(FRACTION, fraction);
  within(STEP, step);
  const deceleration = Math.abs(verticalSpeed) / 60 / levelOffTime(fraction);
  return path(verticalSpeed, Math.abs(verticalSpeed) * fraction, 0, deceleration, step);
}

/**
 * How long a level-off begun at a fraction of the vertical speed takes at a steady deceleration, whatever that speed.
 *
 * @param fraction over 0, at most 1
 * @throws {OutOfRange} outside those limits
 * @source a mean of half the vertical speed over a fraction of a minute's climb: 2 · 60 s · fraction
 */
export function levelOffTime(fraction: Plain = 0.1): Seconds {
  return 120 * within(FRACTION, fraction);
}

/**
 * The extra load that a level-off begun at a fraction of the vertical speed asks for: it grows with that speed.
 *
 * @param verticalSpeed −30,000 to 30,000 ft/min; its sign is ignored
 * @param fraction over 0, at most 1
 * @returns g, never negative
 * @throws {OutOfRange} outside those limits
 * @source vertical speed over the time of levelOffTime, over g
 */
export function levelOffLoad(verticalSpeed: FeetPerMinute, fraction: Plain = 0.1): LoadFactor {
  within(VERTICAL_SPEED, verticalSpeed);
  return Math.abs(verticalSpeed) / 60 / levelOffTime(fraction) / feet(G);
}

/**
 * How far from the altitude wanted a level-off ends that was begun with some lead.
 *
 * @param verticalSpeed −30,000 to 30,000 ft/min
 * @param extraLoad over 0, at most 5 g
 * @param lead 0 to 20,000 ft before the altitude
 * @param reaction 0 to 60 s
 * @returns feet, above the altitude positive
 * @throws {OutOfRange} outside those limits
 * @source the end of levelOffPath: what levelOffLead asks for, less the lead
 */
export function levelOffMiss(
  verticalSpeed: FeetPerMinute,
  extraLoad: LoadFactor,
  lead: Feet,
  reaction: Seconds = 0,
): Feet {
  within(EXTRA_LOAD, extraLoad);
  within(LEAD, lead);
  return Math.sign(verticalSpeed) * (levelOffLead(verticalSpeed, extraLoad, reaction) - lead) + 0;
}

/** Straight on for the reaction time, then slowing down steadily; feet and seconds. */
function path(verticalSpeed: number, lead: number, reaction: number, deceleration: number, step: number) {
  const way = Math.sign(verticalSpeed);
  const speed = Math.abs(verticalSpeed) / 60;
  const start: Instant = { time: 0, state: [-lead, speed] };
  const straight = trajectory((_, [, v = 0]) => [v, 0], { from: start, duration: reaction, step });
  const from = straight.at(-1) ?? start;
  const duration = speed === 0 ? 0 : speed / deceleration;
  const slowing = trajectory((_, [, v = 0]) => [v, -deceleration], { from, duration, step });
  return [...straight, ...slowing.slice(1)].map(({ time, state: [altitude = 0, v = 0] }) => ({
    time,
    altitude: way * altitude + 0,
    verticalSpeed: way * v * 60 + 0,
  }));
}
