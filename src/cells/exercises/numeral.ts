import { decimalsOf } from "./seed.ts";

/** A number as typed. */
export interface Numeral {
  readonly value: number;
  /** Digits after the point. */
  readonly decimals: number;
  /**
   * The sizes to which it may have been rounded, finest first, each leaving two significant figures at least: 1100 may
   * be exact to 1, to 10 or to 100. Empty for fractions.
   */
  readonly grains: readonly number[];
}

/** A number at the start of a text, in every way it can be read, and what follows it. */
export interface Numerals {
  readonly readings: readonly Numeral[];
  readonly rest: string;
}

/** The number at the start of a plain, lower-case text; no readings where its separators make no sense. */
export function numeralAt(text: string): Numerals | undefined {
  return fractionAt(text) ?? decimalAt(text);
}

const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "⅕": [1, 5],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
};

/** ½, 1½, 1 1/2, 1/2. */
function fractionAt(text: string): Numerals | undefined {
  const match = /^(?:(\d+) ?)?(?:([½¼¾⅓⅔⅕⅛⅜⅝⅞])|(?<!\d)(\d+) ?\/ ?(\d+)(?![\d.,/]))/.exec(text);
  if (!match) return undefined;
  const [all, whole = "0", vulgar, over = "", under = ""] = match;
  const [top, bottom] = vulgar ? VULGAR[vulgar]! : [Number(over), Number(under)];
  const value = Number(whole) + top / bottom;
  const readings = Number.isFinite(value) ? [{ value, decimals: Math.min(3, decimalsOf(value)), grains: [] }] : [];
  return { readings, rest: text.slice(all.length) };
}

/** 17, 17.0, .5, 0,6, 1 100, 1,100, 1,100.5, 1e3. */
function decimalAt(text: string): Numerals | undefined {
  const match = /^([.,]?\d+(?:[ .,]\d+)*)\.?(?:e([+-]?\d{1,3})(?![\d.,]))?/.exec(text);
  if (!match) return undefined;
  const power = Number(match[2] ?? 0);
  const readings = plainForms(match[1]!).map((plain) => numeral(plain, power));
  return { readings, rest: text.slice(match[0].length) };
}

/** A number's separators taken out, with a point before its decimals: one form, two where a comma may mean either. */
function plainForms(written: string): string[] {
  const spaced = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/.test(written);
  if (written.includes(" ") && !spaced) return [];
  const text = written.replaceAll(" ", "");
  const separators = text.replaceAll(/\d/g, "");
  if (separators === "") return [text];
  if (separators === ".") return [text];
  if (separators === ",") return commaForms(text, spaced);
  const decimal = separators.at(-1)!;
  const grouping = separators[0]!;
  if (grouping === decimal) return grouped(text, grouping);
  const [whole = "", decimals = ""] = [
    text.slice(0, text.lastIndexOf(decimal)),
    text.slice(text.lastIndexOf(decimal) + 1),
  ];
  return grouped(whole, grouping).map((plain) => `${plain}.${decimals}`);
}

/** Before exactly three digits a comma may separate thousands or decimals, unless a lone 0 (or nothing) leads. */
function commaForms(text: string, spaced: boolean): string[] {
  const decimal = text.replace(",", ".");
  const thousands = !spaced && /^[1-9]\d{0,2},\d{3}$/.test(text);
  return thousands ? [text.replace(",", ""), decimal] : [decimal];
}

function grouped(text: string, separator: string): string[] {
  const [first = "", ...groups] = text.split(separator);
  const even = /^[1-9]\d{0,2}$/.test(first) && groups.every((group) => /^\d{3}$/.test(group));
  return even ? [first + groups.join("")] : [];
}

function numeral(plain: string, power: number): Numeral {
  const [whole = "", fraction = ""] = plain.split(".");
  const significant = (whole + fraction).replace(/^0+/, "");
  const loose = fraction === "" ? (/0*$/.exec(significant)?.[0].length ?? 0) : 0;
  const finest = power - fraction.length;
  const grains = Array.from({ length: loose + 1 }, (_, zeros) => zeros)
    .filter((zeros) => significant.length - zeros >= 2)
    .map((zeros) => Number(`1e${finest + zeros}`));
  return { value: Number(`${plain}e${power}`), decimals: Math.min(10, Math.max(0, -finest)), grains };
}
