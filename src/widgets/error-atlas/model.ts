import { OutOfRange, shortestTurn } from "../../calc/index.ts";
import { atlasRules } from "../../cells/atlas-rules.ts";
import { evenly } from "../drawing/frames.ts";
import type { AtlasRule, Range, RuleLine, Values } from "./rule.ts";

/** Where an error stands to its tolerance; 'none' where rule or exact has no value. */
export type Standing = "within" | "over" | "under" | "none";

/** A stretch of the axis on which the error stands in one way to its tolerance. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly is: Standing;
}

/** Rule and exact along the axis, in columns; where either has no value there is no row. */
export interface Curve {
  readonly x: readonly number[];
  readonly exact: readonly number[];
  readonly rule: readonly number[];
  readonly error: readonly number[];
}

export interface Point {
  readonly x: number;
  readonly error: number;
}

/** One line of a rule over a range, judged by a tolerance. */
export interface Judged {
  readonly stretches: readonly Stretch[];
  /** The largest error either way, where there is one. */
  readonly greatest: Point | undefined;
}

/** Both sides and the rule's error at one point: rule minus exact, the short way round for a direction. */
export interface Compared {
  readonly exact: number;
  readonly rule: number;
  readonly error: number;
}

/** The quantity along a rule's axis, and its tolerance. */
export const needsOf = ({ key }: AtlasRule): { readonly across: string; readonly tolerance: string } => {
  const { needs } = atlasRules[key];
  return { across: needs[0], tolerance: needs.at(-1)! };
};

/** Rule against exact at these values; nothing where either has none. */
export function compared(rule: AtlasRule, line: RuleLine, values: Values): Compared | undefined {
  const exact = answer(rule.exact, values);
  const byRule = answer(line.value, values);
  if (exact === undefined || byRule === undefined) return undefined;
  return { exact, rule: byRule, error: rule.result.circle ? shortestTurn(exact, byRule) : byRule - exact };
}

/** The value of a formula, where it answers. */
export function answer(formula: (values: Values) => number | null, values: Values): number | undefined {
  try {
    const value = formula(values);
    return value !== null && Number.isFinite(value) ? value : undefined;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

const PARTS = 96;

/** Rule and exact from one end to the other, closely enough to be drawn; `at` are places that must be among them. */
export function curveOf(
  rule: AtlasRule,
  line: RuleLine,
  values: Values,
  [from, to]: Range,
  at: readonly number[],
): Curve {
  const { across } = needsOf(rule);
  const places = [...evenly(from, to, PARTS), ...at.filter((x) => x > from && x < to)].sort((a, b) => a - b);
  const [x, exact, byRule, errors]: number[][] = [[], [], [], []];
  for (const place of places) {
    const point = compared(rule, line, { ...values, [across]: place });
    if (!point || place === x!.at(-1)) continue;
    x!.push(place);
    exact!.push(point.exact);
    byRule!.push(point.rule);
    errors!.push(point.error);
  }
  return { x: x!, exact: exact!, rule: byRule!, error: errors! };
}

/** Where a rule's error stays within its tolerance over a range, and its largest. */
export function judged(rule: AtlasRule, line: RuleLine, values: Values, range: Range, tolerance: number): Judged {
  const { across } = needsOf(rule);
  const errorAt = remembered((x: number) => compared(rule, line, { ...values, [across]: x })?.error);
  const places = withExtremes(evenly(range[0], range[1], PARTS), errorAt);
  const stretches = stretchesOf(places, (x) => standing(errorAt(x), tolerance));
  const ends = stretches.flatMap(({ from, to }) => [from, to]);
  return {
    stretches,
    greatest: greatestOf([...places, ...ends], errorAt),
  };
}

/** The same function, which computes nothing twice. */
function remembered<Result>(compute: (x: number) => Result): (x: number) => Result {
  const known = new Map<number, Result>();
  return (x) => {
    if (!known.has(x)) known.set(x, compute(x));
    return known.get(x)!;
  };
}

/** An error that equals its tolerance is within it, whatever the last bit says. */
function standing(error: number | undefined, tolerance: number): Standing {
  if (error === undefined) return "none";
  if (Math.abs(error) <= tolerance * (1 + 1e-9)) return "within";
  return error > 0 ? "over" : "under";
}

function greatestOf(places: readonly number[], errorAt: (x: number) => number | undefined): Point | undefined {
  let greatest: Point | undefined;
  for (const x of places) {
    const error = errorAt(x);
    if (error !== undefined && (!greatest || Math.abs(error) > Math.abs(greatest.error))) greatest = { x, error };
  }
  return greatest;
}

/** The places, and between them every turning point of the error: what stands out between two places isn't missed. */
function withExtremes(places: readonly number[], errorAt: (x: number) => number | undefined): number[] {
  const errors = places.map(errorAt);
  const found: number[] = [];
  for (let i = 1; i < places.length - 1; i++) {
    const [before, here, after] = [errors[i - 1], errors[i], errors[i + 1]];
    if (before === undefined || here === undefined || after === undefined) continue;
    const sign = here > before && here >= after ? 1 : here < before && here <= after ? -1 : 0;
    if (sign)
      found.push(highest(places[i - 1]!, places[i + 1]!, (x) => sign * (errorAt(x) ?? Number.NEGATIVE_INFINITY)));
  }
  return [...places, ...found].sort((a, b) => a - b);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function with one hill between two places is highest, by golden sections. */
function highest(from: number, to: number, height: (x: number) => number): number {
  let [a, b] = [from, to];
  for (let i = 0; i < 30; i++) {
    const [left, right] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
    if (height(left) >= height(right)) b = right;
    else a = left;
  }
  return (a + b) / 2;
}

/** Stretches of one standing each; where it changes between two places the spot is found by halving. */
function stretchesOf(places: readonly number[], standingAt: (x: number) => Standing): Stretch[] {
  const stretches: Stretch[] = [];
  let start = places[0]!;
  let is = standingAt(start);
  for (let i = 1; i < places.length; i++) {
    const last = standingAt(places[i]!);
    for (let x = places[i - 1]!; is !== last && x < places[i]!; x = start) {
      const [end, next] = changeBetween(x, places[i]!, is, standingAt);
      stretches.push({ from: start, to: end, is });
      start = next;
      is = standingAt(next);
    }
  }
  return [...stretches, { from: start, to: places.at(-1)!, is }];
}

/** Two neighbouring numbers between which a standing ends. */
function changeBetween(from: number, to: number, is: Standing, standingAt: (x: number) => Standing): Range {
  let [a, b] = [from, to];
  while (true) {
    const middle = (a + b) / 2;
    if (middle <= a || middle >= b || b - a < 1e-9 * Math.max(1, Math.abs(b))) return [a, b];
    if (standingAt(middle) === is) a = middle;
    else b = middle;
  }
}
