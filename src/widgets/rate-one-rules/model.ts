import { bankByFifteenPercentRule, bankByTenthPlusSevenRule, bankForRate } from "../../calc/turns.ts";
import type { Facts } from "../../cells/known.ts";
import { type AircraftLimits, limitsOf } from "../aircraft-limits.ts";
import { evenly, reaching } from "../drawing/frames.ts";

/** Both rules at one speed: banks and errors in degrees, an error being rule minus exact. */
export interface Ruled {
  readonly tas: number;
  readonly exact: number;
  readonly tenth: number;
  readonly fifteen: number;
  readonly tenthError: number;
  readonly fifteenError: number;
}

export interface RulesModel {
  readonly now: Ruled;
  readonly kept: Ruled | undefined;
  /** Ends of the axes: true airspeed, bank, error. */
  readonly axes: { readonly tas: Ends; readonly bank: Ends; readonly error: Ends };
  readonly limits: AircraftLimits;
}

export type Ends = readonly [from: number, to: number];

/** An error within this either way is called close, degrees. */
export const CLOSE = 1;

/** Speeds of the data table, kt. */
export const tableSpeeds: readonly number[] = [40, 60, 80, 90, 100, 120, 140, 160, 180, 200, 220, 240];

/**
 * The bank for rate one at a speed, exact and by two rules.
 *
 * @throws {OutOfRange} where the formulas do
 */
export function rulesModel(tas: number, keptTas: number | undefined, aircraft: Facts): RulesModel {
  const now = ruledAt(tas);
  const kept = keptTas === undefined ? undefined : ruledAt(keptTas);
  const speeds = keptTas === undefined ? [tas] : [tas, keptTas];
  const from = Math.min(...speeds) < 40 ? 0 : 40;
  const to = reaching(Math.max(...speeds), [240, 320, 400]);
  const ends = [ruledAt(from || 1), ruledAt(to)];
  const errors = ends.flatMap(({ tenthError, fifteenError }) => [tenthError, fifteenError]);
  return {
    now,
    kept,
    axes: {
      tas: [from, to],
      bank: [0, reaching(ends[1]!.fifteen, [40, 50, 60])],
      error: [Math.min(-3, Math.floor(Math.min(...errors))), Math.max(5, Math.ceil(Math.max(...errors)))],
    },
    limits: limitsOf(aircraft),
  };
}

/** @throws {OutOfRange} where the formulas do */
export function ruledAt(tas: number): Ruled {
  const [exact, tenth, fifteen] = [bankForRate(tas), bankByTenthPlusSevenRule(tas), bankByFifteenPercentRule(tas)];
  return { tas, exact, tenth, fifteen, tenthError: tenth - exact, fifteenError: fifteen - exact };
}

const PARTS = 100;

/** Both rules along the speed axis: the last series is kept, since the axis seldom changes. */
export function rulesSeries([from, to]: Ends): readonly Ruled[] {
  if (along.from !== from || along.to !== to) along = { from, to, series: evenly(from || 1, to, PARTS).map(ruledAt) };
  return along.series;
}

let along: { from: number; to: number; series: readonly Ruled[] } = { from: 0, to: 0, series: [] };
