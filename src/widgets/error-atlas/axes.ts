import { printed, unitSign } from "../../cells/printed.ts";
import { quantityOf } from "../../cells/quantities.ts";
import { widthOf } from "../drawing/labels.ts";
import type { Axis } from "../drawing/panel.ts";
import { signed } from "../figure-words.ts";
import { differenceWord } from "./answer.ts";
import { needsOf } from "./model.ts";
import { placeWords } from "./places.ts";
import type { AtlasRule, Range } from "./rule.ts";

/** Distances between ticks: one, two or five of a power of ten. */
const STEPS = [-2, -1, 0, 1, 2, 3, 4].flatMap((power) => [1, 2, 5].map((times) => tidy(times * 10 ** power)));

/** The most ticks an axis has, ends included, is one more. */
const PARTS = 9;

/** Round ends that hold two values, within bounds: so round that they seldom change while a number does. */
export function axisOver(low: number, high: number, [least, most]: Range = [-Infinity, Infinity]): Range {
  const step = STEPS.find((size) => (high - low) / size <= PARTS / 2) ?? STEPS.at(-1)!;
  const from = Math.max(least, tidy(Math.floor(low / step + 1e-9) * step));
  const to = Math.min(most, tidy(Math.ceil(high / step - 1e-9) * step));
  return from < to ? [from, to] : [from, from + step];
}

/** The quantity along the axis. */
export function acrossAxis(rule: AtlasRule, ends: Range): Axis {
  const { label, unit, circle } = quantityOf(needsOf(rule).across)!;
  const text =
    circle || unit === "deg" ? (at: number) => placeWords(rule, at) : unit === "hPa" ? String : numbered(ends);
  return { ...between(ends, circle ? [30, 45, 90] : undefined), text, name: named(label, unit) };
}

/** What rule and exact come to. */
export function valueAxis({ result: { name, unit, circle } }: AtlasRule, ends: Range): Axis {
  const text =
    unit === "deg"
      ? (at: number) => printed(at, { unit, digits: circle ? 0 : digitsOf(ends), circle: circle ?? false })
      : numbered(ends);
  return { ...between(ends), text, name: named(name, unit) };
}

/** Rule less exact. */
export function errorAxis(rule: AtlasRule, ends: Range): Axis {
  const { unit } = rule.result;
  const name = differenceWord(rule) === "error" ? "Error of the rule" : "Rule less model";
  const text = (at: number): string => signed(at, unit === "deg" ? unit : "plain", digitsOf(ends));
  return { ...between(ends), text, name: named(name, unit) };
}

/** Room for the numbers left of an axis, px. */
export function roomFor({ from, to, steps, text }: Axis): number {
  const ticks = [from, to, from + steps[0]!, to - steps[0]!];
  return Math.ceil(12 + Math.max(...ticks.map((at) => widthOf(text(at), 13))));
}

/** Places along the axis for a table: round ones. */
export function tablePlaces([from, to]: Range): number[] {
  const step = STEPS.find((size) => (to - from) / size <= 14)!;
  const [first, last] = [Math.ceil(from / step - 1e-9), Math.floor(to / step + 1e-9)];
  return Array.from({ length: last - first + 1 }, (_, i) => tidy((first + i) * step));
}

function between([from, to]: Range, steps?: readonly number[]): Pick<Axis, "from" | "to" | "steps"> {
  return { from, to, steps: steps ?? STEPS.filter((size) => size >= (to - from) / PARTS) };
}

const named = (name: string, unit: string): string =>
  unit === "deg" || unit === "plain" ? name : `${name}, ${unitSign(unit)}`;

const numbered =
  (ends: Range) =>
  (at: number): string =>
    printed(at, { unit: "plain", digits: digitsOf(ends) });

/** Digits after the point that the ticks between two ends need. */
function digitsOf([from, to]: Range): number {
  const step = STEPS.find((size) => size >= (to - from) / PARTS) ?? 1;
  return step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
}

function tidy(value: number): number {
  return Math.round(value * 1e9) / 1e9 + 0;
}
