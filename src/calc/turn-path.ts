import { type Limits, within } from "./limits.ts";
import type { Degrees, DegreesPerSecond, Knots, NauticalMiles, Seconds } from "./quantity.ts";
import { REACTION, ROLL_RATE } from "./ranges.ts";
import { rungeKuttaStep } from "./runge-kutta.ts";
import { cos, degrees, G, metresPerSecond, nauticalMiles, onCircle, radians, tan } from "./si.ts";

export const TURN_SPEED: Limits = { quantity: "true airspeed", unit: "kt", from: 20, to: 700 };
/** Under 1° a turn is no manoeuvre, and its path would be hours long. */
const STEEPNESS: Limits = { quantity: "bank", unit: "deg", from: 1, to: 85 };
const CHANGE: Limits = { quantity: "heading change", unit: "deg", from: -1080, to: 1080 };
const STEP: Limits = { quantity: "step", unit: "s", from: 0.01, to: 10 };

/** A turn to fly: into the bank at one roll rate, out of it at another, after a reaction time of straight flight. */
export interface Turn {
  readonly tas: Knots;
  /** A magnitude; the heading change gives the side. */
  readonly bank: Degrees;
  readonly headingChange: Degrees;
  readonly rollInRate: DegreesPerSecond;
  readonly rollOutRate: DegreesPerSecond;
  readonly reaction?: Seconds;
  /** The longest time between two points. */
  readonly step?: Seconds;
}

/** A point of the path: position from where the clock started, which was on heading 000. */
export interface PathPoint {
  readonly time: Seconds;
  /** Right positive. */
  readonly bank: Degrees;
  /** On the circle. */
  readonly heading: Degrees;
  /** Heading change so far, right positive, beyond 360 where the turn goes on. */
  readonly turned: Degrees;
  readonly north: NauticalMiles;
  readonly east: NauticalMiles;
}

/** A stretch of a turn: bank changes at a steady rate, bank as a magnitude. */
export interface Phase {
  readonly duration: Seconds;
  readonly bankAtStart: Degrees;
  readonly rollRate: DegreesPerSecond;
}

/**
 * Path of a level, coordinated turn at constant true airspeed in still air, with roll-in and roll-out. Each phase is
 * cut into equal steps and integrated by the fourth-order Runge–Kutta method. Where the heading change is too small
 * to reach the bank, the turn goes only as far as it must.
 *
 * @param turn tas 20 to 700 kt; bank 1 to 85°; heading change within ±1080°; roll rates over 0, at most 360°/s;
 * reaction 0 to 60 s, 0 unless given; step 0.01 to 10 s, 0.25 unless given
 * @returns points from the start to the wings level again, both included
 * @throws {OutOfRange} outside those limits
 * @source ψ' = g tan φ / V, north' = V cos ψ, east' = V sin ψ
 */
export function turnPath({ step = 0.25, reaction = 0, ...turn }: Turn): PathPoint[] {
  const side = turn.headingChange < 0 ? -1 : 1;
  const phases = [{ duration: within(REACTION, reaction), bankAtStart: 0, rollRate: 0 }, ...turnPhases(turn)];
  within(STEP, step);
  let state = { time: 0, turned: 0, north: 0, east: 0 };
  const points = [point(state, 0, side)];
  for (const phase of phases) {
    const steps = Math.ceil(phase.duration / step);
    for (const next of walk(phase, metresPerSecond(turn.tas), state, steps)) {
      points.push(point(next, next.bank, side));
      state = next;
    }
  }
  return points;
}

/**
 * Roll-in, steady turn and roll-out that together give a heading change; phases without duration are left out.
 *
 * @throws {OutOfRange} outside the limits of `turnPath`
 * @source rolling from level to φ at p turns by g / (V p) · ln sec φ
 */
export function turnPhases({ tas, bank, headingChange, rollInRate, rollOutRate }: Turn): Phase[] {
  const V = metresPerSecond(within(TURN_SPEED, tas));
  within(STEEPNESS, bank);
  const change = radians(Math.abs(within(CHANGE, headingChange)));
  const rollIn = within({ ...ROLL_RATE, quantity: "roll-in rate" }, rollInRate);
  const rollOut = within({ ...ROLL_RATE, quantity: "roll-out rate" }, rollOutRate);
  const perLogSecant = (G / V) * (1 / radians(rollIn) + 1 / radians(rollOut));
  const rolling = -perLogSecant * Math.log(cos(bank));
  const peak = rolling > change ? bankOfLogSecant(change / perLogSecant) : bank;
  const steady = Math.max(0, change - rolling) / ((G / V) * tan(bank));
  return [
    { duration: peak / rollIn, bankAtStart: 0, rollRate: rollIn },
    { duration: steady, bankAtStart: peak, rollRate: 0 },
    { duration: peak / rollOut, bankAtStart: peak, rollRate: -rollOut },
  ].filter(({ duration }) => duration > 0);
}

/** Where a path stands, SI inside: s, radians turned to the side, m along and across. */
export interface Standing {
  readonly time: number;
  readonly turned: number;
  readonly north: number;
  readonly east: number;
}

/** The standings after each of the equal steps of a phase, the turn taken as a right one. */
export function walk(phase: Phase, V: number, from: Standing, steps: number): (Standing & { bank: Degrees })[] {
  const bankAt = (time: number) => phase.bankAtStart + phase.rollRate * time;
  const slope = (time: number, [ψ = 0]: readonly number[]) => [
    (G / V) * tan(bankAt(time)),
    V * Math.cos(ψ),
    V * Math.sin(ψ),
  ];
  const step = phase.duration / steps;
  let state = [from.turned, from.north, from.east];
  return Array.from({ length: steps }, (_, i) => {
    state = rungeKuttaStep(slope, i * step, state, step);
    const [turned = 0, north = 0, east = 0] = state;
    return { time: from.time + (i + 1) * step, turned, north, east, bank: bankAt((i + 1) * step) };
  });
}

/** Bank whose logarithm of the secant is x; stays exact for the smallest turns. */
function bankOfLogSecant(x: number): Degrees {
  return degrees(2 * Math.asin(Math.sqrt(-Math.expm1(-x) / 2)));
}

function point({ time, turned, north, east }: Standing, bank: Degrees, side: 1 | -1): PathPoint {
  const change = side * degrees(turned) + 0;
  return {
    time,
    bank: side * bank + 0,
    heading: onCircle(change),
    turned: change,
    north: nauticalMiles(north),
    east: side * nauticalMiles(east) + 0,
  };
}
