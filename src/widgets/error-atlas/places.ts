import { printed } from "../../cells/printed.ts";
import { quantityOf } from "../../cells/quantities.ts";
import { needsOf, type Standing, type Stretch } from "./model.ts";
import type { AtlasRule } from "./rule.ts";

/** A stretch with its ends as they are printed. */
export interface Place {
  readonly from: number;
  readonly to: number;
  readonly is: Standing;
  /** Whether it begins, or ends, where the range does. */
  readonly first: boolean;
  readonly last: boolean;
}

/**
 * Stretches with round ends. An end is rounded towards the inside of what is within tolerance, so that what is said of
 * it holds at the number printed; where a stretch is too short for that, all are printed finer, and one shorter than
 * the finest print is not worth a word.
 */
export function placesOf(rule: AtlasRule, stretches: readonly Stretch[]): Place[] {
  const span = stretches.at(-1)!.to - stretches[0]!.from;
  const { digits } = quantityOf(needsOf(rule).across)!;
  let grain = Math.max(10 ** -digits, 10 ** Math.floor(Math.log10(span / 100)));
  for (; ; grain /= 10) {
    const places = stretches.map((_, i) => placeAt(stretches, i, grain));
    const sayable = places.filter(({ from, to }) => from <= to);
    if (grain <= FINEST || sayable.length === places.length) return isRound(rule) ? joinedAtNorth(sayable) : sayable;
  }
}

/** The finest print of `placeWords`. */
const FINEST = 0.001 * (1 + 1e-9);

function placeAt(stretches: readonly Stretch[], i: number, grain: number): Place {
  const { from, to, is } = stretches[i]!;
  const [first, last] = [i === 0, i === stretches.length - 1];
  return {
    from: first ? from : edge(stretches[i - 1]!, stretches[i]!, grain),
    to: last ? to : edge(stretches[i]!, stretches[i + 1]!, grain),
    is,
    first,
    last,
  };
}

/** Where a value ends, a place that misses a round number by the last bits of the search is that number. */
const BIT = 1e-6;

/** The printed number between two stretches. */
function edge(before: Stretch, after: Stretch, grain: number): number {
  const down = before.to / grain + (before.is === "within" ? 0 : BIT);
  const number = (after.is === "within" ? Math.ceil(after.from / grain) : Math.floor(down)) * grain;
  return Math.round(number * 1e9) / 1e9 + 0;
}

const isRound = (rule: AtlasRule): boolean => quantityOf(needsOf(rule).across)!.circle === true;

/** On a circle the last stretch goes on in the first. */
function joinedAtNorth(places: readonly Place[]): Place[] {
  const [first, last] = [places[0]!, places.at(-1)!];
  if (places.length < 2 || first.is !== last.is) return [...places];
  return [...places.slice(1, -1), { ...last, to: first.to }];
}

/** 'from 62 to 158 kt and from 170 to 184 kt' */
export const spans = (rule: AtlasRule, places: readonly Place[]): string =>
  listed(places.map(({ from, to }) => spanWords(rule, from, to)));

/** 'below 62 kt and above 158 kt' */
export const sides = (rule: AtlasRule, places: readonly Place[]): string =>
  listed(
    places.map(({ from, to, first, last }) => {
      if (isRound(rule) || first === last) return spanWords(rule, from, to);
      return first ? `below ${placeWords(rule, to)}` : `above ${placeWords(rule, from)}`;
    }),
  );

/** 'from 62 to 158 kt' */
export function spanWords(rule: AtlasRule, from: number, to: number): string {
  const { unit } = quantityOf(needsOf(rule).across)!;
  const low = placeWords(rule, from);
  return `from ${unit === "deg" ? low : low.replace(/\s\D+$/, "")} to ${placeWords(rule, to)}`;
}

/** '158 kt': a place along the axis, with no more digits than it has, three at most. */
export function placeWords(rule: AtlasRule, x: number): string {
  const { unit, circle = false } = quantityOf(needsOf(rule).across)!;
  const digits = [0, 1, 2].find((count) => Math.abs(Number(x.toFixed(count)) - x) < 1e-9) ?? 3;
  const words = printed(x, { unit, digits, circle });
  return unit === "hPa" ? words.replace(",", "") : words;
}

/** A place that was computed, as fine as is worth saying. */
export function roughly(rule: AtlasRule, x: number, [from, to]: readonly [number, number]): string {
  const { digits } = quantityOf(needsOf(rule).across)!;
  const grain = x === from || x === to ? 0 : Math.max(10 ** -digits, 10 ** Math.floor(Math.log10((to - from) / 100)));
  return placeWords(rule, grain ? Math.round(Math.round(x / grain) * grain * 1e9) / 1e9 : x);
}

function listed(words: readonly string[]): string {
  return words.length < 3 ? words.join(" and ") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
