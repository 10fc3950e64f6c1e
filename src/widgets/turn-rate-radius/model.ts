import { OutOfRange } from "../../calc/limits.ts";
import { bankForRadius, bankForRate, stallSpeedInTurn, turnRadius, turnRate } from "../../calc/turns.ts";
import type { Facts } from "../../cells/known.ts";
import { type AircraftLimits, limitsOf } from "../aircraft-limits.ts";
import { evenly, reaching } from "../drawing/frames.ts";

/** Rate one, degrees a second. */
export const RATE_ONE = 3;

/** True airspeed, kt, and bank, degrees. */
export interface Turn {
  readonly tas: number;
  readonly bank: number;
}

/** A turn with what follows from it: degrees a second, nautical miles, degrees. */
export interface Turned extends Turn {
  readonly rate: number;
  readonly radius: number;
  readonly bankForRateOne: number;
}

export interface TurnModel {
  readonly now: Turned;
  readonly kept: Turned | undefined;
  /** Where each axis ends. */
  readonly axes: { readonly bank: number; readonly rate: number; readonly radius: number };
  readonly limits: AircraftLimits;
  /** The bank from which the present turn can't be flown by the aircraft, and why; 0 where none can. */
  readonly beyond: Beyond | undefined;
}

export interface Beyond {
  readonly from: number;
  readonly why: "stalled" | "stalls" | "too fast";
}

/** Banks of the data table, degrees. */
export const tableBanks: readonly number[] = [5, 10, 15, 20, 25, 30, 35, 40, 45];

/**
 * The turn, the turn kept beside it and what bounds them. Stalling and never-exceed speeds are indicated; the
 * true airspeed is compared with them as it stands.
 *
 * @throws {OutOfRange} where the turns' formulas do
 */
export function turnModel(now: Turn, kept: Turn | undefined, aircraft: Facts): TurnModel {
  const limits = limitsOf(aircraft);
  const turned = turnedBy(now);
  const other = kept && turnedBy(kept);
  const turns = other ? [turned, other] : [turned];
  const bank = reaching(Math.max(...turns.map((turn) => turn.bank)), [45, 60, 75, 85]);
  return {
    now: turned,
    kept: other,
    axes: {
      bank,
      rate: reaching(Math.max(...turns.flatMap((turn) => [turnRate(turn.tas, Math.min(bank, 45)), turn.rate])), RATES),
      radius: reaching(Math.min(RADII.at(-1)!, Math.max(...turns.map(({ radius }) => radius))), RADII),
    },
    limits,
    beyond: beyondOf(now.tas, limits),
  };
}

const RATES = [10, 15, 20, 30, 40, 60, 100];
/** A radius beyond the last is not drawn; its number stands in the readings. */
const RADII = [2.5, 5, 10, 25, 50, 100];

function turnedBy({ tas, bank }: Turn): Turned {
  if (bank < 0) throw new OutOfRange({ quantity: "bank", unit: "deg", from: 0, to: 85 }, bank);
  return {
    tas,
    bank,
    rate: turnRate(tas, bank),
    radius: turnRadius(tas, bank),
    bankForRateOne: bankForRate(tas, RATE_ONE),
  };
}

function beyondOf(tas: number, { stall, neverExceed }: AircraftLimits): Beyond | undefined {
  if (neverExceed !== undefined && tas > neverExceed) return { from: 0, why: "too fast" };
  if (stall === undefined) return undefined;
  if (tas <= stall) return { from: 0, why: "stalled" };
  return { from: stallingBank(tas, stall), why: "stalls" };
}

/** The bank at which the stalling speed in a level turn, stall × √(1 / cos φ), has come up to the speed flown. */
export function stallingBank(speed: number, stall: number): number {
  return (Math.acos((stall / speed) ** 2) * 180) / Math.PI;
}

/** True where the aircraft would be under its stalling speed in this turn. */
export const isStalled = ({ tas, bank }: Turn, { stall }: AircraftLimits): boolean =>
  stall !== undefined && tas < stallSpeedInTurn(stall, bank);

/** A line as two columns. */
export interface Series {
  readonly bank: readonly number[];
  readonly value: readonly number[];
}

const PARTS = 48;

/** Rate against bank from wings level to where it leaves the axes. */
export function rateSeries(tas: number, { bank, rate }: TurnModel["axes"]): Series {
  const banks = evenly(0, Math.min(bank, bankForRate(tas, rate)), PARTS);
  return { bank: banks, value: banks.map((at) => turnRate(tas, at)) };
}

/** Radius against bank from where it enters the axes: closer steps at the steep end. */
export function radiusSeries(tas: number, { bank, radius }: TurnModel["axes"]): Series {
  const from = bankForRadius(tas, radius);
  if (from >= bank) return { bank: [], value: [] };
  const banks = evenly(0, 1, PARTS).map((part) => from + (bank - from) * part ** 2);
  return { bank: banks, value: banks.map((at) => turnRadius(tas, at)) };
}
