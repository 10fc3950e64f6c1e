import { durationIn } from "./duration.ts";
import { type Numeral, numeralAt } from "./numeral.ts";
import { converted, kindInWords, kindOf, speltUnit, wantedInWords } from "./spelling.ts";

/** How the answer is measured. */
export interface Wanted {
  /** A unit of `convert`, or 'plain'. */
  readonly unit: string;
  /** True for headings. */
  readonly circle: boolean;
}

/** One way to read a reply. */
export interface Reading {
  /** In the answer's unit. */
  readonly value: number;
  /** The number as typed, with its sign, and the unit it was typed in. */
  readonly typed: Numeral & { readonly unit: string };
  /** A value of the answer's unit in the unit that was typed. */
  readonly inTyped: (value: number) => number;
}

/** Every way to read a reply, two where a comma may mean either; or why it can't be read, in a sentence. */
export type ReadReply = { readonly readings: readonly Reading[] } | { readonly unreadable: string };

const LONGEST = 100;
const LARGEST = 1e12;

/** What a student typed for a number: with or without a unit, in any unit of the kind that is wanted. */
export function readReply(reply: string, wanted: Wanted): ReadReply {
  if (reply.length > LONGEST) return { unreadable: "That is too long for a number." };
  const text = tidy(reply);
  if (text === "") return { unreadable: `Nothing was written: ${wantedInWords(wanted.unit)}.` };
  const duration = durationIn(text, wanted.unit);
  if (duration === "other kind") return otherKind("s", wanted);
  return duration ? finished([duration], { unit: "s", size: 1 }, 1, wanted) : readNumber(text, wanted);
}

/** The same text in plain signs, small letters and single spaces. */
function tidy(reply: string): string {
  return reply
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]+/g, " ")
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/g, "-")
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/[\u00ba\u02da]/g, "°")
    .replace(/[\u2044\u2215]/g, "/")
    .trim()
    .toLowerCase();
}

const SIDES = "left|right|l|r|east|west|e|w|north|south|n|s";
const LEADING = new RegExp(`^(?:(minus|plus|${SIDES})(?![a-z]) ?)?([+-])? ?`);
const TRAILING = new RegExp(`^(.*?) ?(${SIDES})$`);

function readNumber(text: string, wanted: Wanted): ReadReply {
  const [lead, before, sign] = LEADING.exec(text)!;
  const numerals = numeralAt(text.slice(lead.length));
  if (!numerals || numerals.readings.length === 0)
    return { unreadable: `That is not a number that can be read: ${wantedInWords(wanted.unit)}.` };
  const { unit, side } = ending(numerals.rest.trim(), wanted);
  if (before && side) return { unreadable: "That gives two directions: write one." };
  const direction = side ?? before;
  if (direction && sign === "-") return { unreadable: "That gives a direction and a minus sign: write one of them." };
  const turned = direction ? signOf(direction, wanted) : 1;
  if (turned === undefined) return { unreadable: `A direction has no meaning here: ${wantedInWords(wanted.unit)}.` };
  const spelt = unit === "" ? { unit: wanted.unit, size: 1 } : speltUnit(unit, wanted.unit);
  if (!spelt) return { unreadable: `What follows the number is no unit known here: ${wantedInWords(wanted.unit)}.` };
  if (kindOf(spelt.unit) !== kindOf(wanted.unit)) return otherKind(spelt.unit, wanted);
  return finished(numerals.readings, spelt, sign === "-" ? -1 : turned, wanted);
}

/** What follows the number: a unit, a direction, both or neither; after a heading, T or M says which north. */
function ending(rest: string, { unit: wanted, circle }: Wanted): { unit: string; side?: string } {
  if (circle && /^(?:true|magnetic|mag|t|m)$/.test(rest)) return { unit: "" };
  const [, unit = "", side] = TRAILING.exec(rest) ?? [];
  // 's' alone is south where an angle is wanted, and seconds elsewhere.
  if (side && unit === "" && (side.length > 1 || signOf(side, { unit: wanted, circle }))) return { unit, side };
  if (speltUnit(rest, wanted)) return { unit: rest };
  if (side && speltUnit(unit, wanted)) return { unit, side };
  return { unit: circle ? rest.replace(/ ?(?:true|magnetic|mag|t|m)$/, "") : rest };
}

/** Left, west and south are negative; undefined where the quantity has no such direction. */
function signOf(direction: string, { unit, circle }: Wanted): 1 | -1 | undefined {
  if (direction === "plus" || direction === "minus") return direction === "plus" ? 1 : -1;
  const kind = kindOf(unit);
  if (circle || (kind !== "angle" && kind !== "rate")) return undefined;
  if (/^[ns]/.test(direction) && kind !== "angle") return undefined;
  return /^[lws]/.test(direction) ? -1 : 1;
}

function otherKind(unit: string, wanted: Wanted): ReadReply {
  const sentence = `${wantedInWords(wanted.unit)}; you gave ${kindInWords(unit)}.`;
  return { unreadable: sentence.charAt(0).toUpperCase() + sentence.slice(1) };
}

type Typed = { readonly unit: string; readonly size: number };

function finished(numerals: readonly Numeral[], typed: Typed, sign: 1 | -1, wanted: Wanted): ReadReply {
  const readings = numerals.flatMap((numeral) =>
    waysToRead({ ...numeral, value: sign * numeral.value + 0 }, typed, wanted),
  );
  if (readings.some(({ typed }) => !(Math.abs(typed.value) <= LARGEST)))
    return { unreadable: "That number is too large to be an answer." };
  const possible = readings.filter(({ value }) => !wanted.circle || (value >= 0 && value <= 360));
  return possible.length > 0 ? { readings: possible } : { unreadable: "Headings run from 001 to 360." };
}

/** A percentage may stand for itself, where the question asks for one, or for its hundredth. */
function waysToRead(numeral: Numeral, typed: Typed, wanted: Wanted): Reading[] {
  const sizes = typed.unit === "plain" && typed.size !== 1 ? [1, typed.size] : [typed.size];
  return sizes.map((size) => ({
    value:
      Math.abs(numeral.value) <= LARGEST ? converted(numeral.value * size, typed.unit, wanted.unit) : numeral.value,
    typed: { ...numeral, unit: typed.unit },
    inTyped: (value) => converted(value, wanted.unit, typed.unit) / size,
  }));
}
