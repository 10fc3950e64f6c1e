import { type SpokenUnit, spokenUnits, unitSign } from "./printed.ts";

/**
 * A line of arithmetic in words, for assistive technology: '48.87² / (9.80665 × tan 15°) = 909 m' is '48.87 squared
 * divided by open bracket 9.80665 times the tangent of 15 degrees close bracket equals 909 metres'.
 */
export function spoken(text: string): string {
  const words: string[] = [];
  let rest = text.replace(/\|([^|]*)\|/g, "the size of ($1)");
  let number: string | undefined;
  while (rest !== "") {
    const token = nextToken(rest, number);
    if (token.words !== "") words.push(token.words);
    if (token.text.trim() !== "") number = /^\d/.test(token.text) ? token.words : undefined;
    rest = rest.slice(token.text.length);
  }
  return words.join(" ").replaceAll(" ,", ",");
}

interface Token {
  readonly text: string;
  readonly words: string;
}

const SPACE = /^[\s\u00a0]+/;
const NUMBER = /^\d[\d,]*(?:\.\d+)?/;
const WORD = /^[\p{L}]+/u;

const signWords: ReadonlyMap<string, string> = new Map([
  ["+", "plus"],
  ["−", "minus"],
  ["-", "minus"],
  ["×", "times"],
  ["·", "times"],
  ["/", "divided by"],
  ["=", "equals"],
  ["≈", "is about"],
  ["≠", "is not"],
  ["<", "is less than"],
  ["≤", "is at most"],
  [">", "is more than"],
  ["≥", "is at least"],
  ["(", "open bracket"],
  [")", "close bracket"],
  ["²", "squared"],
  ["³", "cubed"],
  ["^", "to the power of"],
  ["√", "the square root of"],
  ["°", "degrees"],
  ["%", "per cent"],
  ["∞", "infinity"],
  ["—", "no value"],
]);

const functionWords: ReadonlyMap<string, string> = new Map([
  ["sin", "the sine of"],
  ["cos", "the cosine of"],
  ["tan", "the tangent of"],
  ["arcsin", "the angle whose sine is"],
  ["arccos", "the angle whose cosine is"],
  ["arctan", "the angle whose tangent is"],
  ["ln", "the natural logarithm of"],
]);

/** Units as printed, the longest first, so that 'm/s' isn't read as metres. */
const units: readonly (readonly [sign: string, words: SpokenUnit])[] = [
  ...[...spokenUnits].filter(([unit]) => unit !== "plain").map(([unit, words]) => [unitSign(unit), words] as const),
  ["m/s²", { one: "metre a second squared", many: "metres a second squared" }] as const,
  ["rad/s", { one: "radian a second", many: "radians a second" }] as const,
].sort(([a], [b]) => b.length - a.length);

function nextToken(rest: string, number: string | undefined): Token {
  const space = SPACE.exec(rest)?.[0];
  if (space) return { text: space, words: "" };
  const unit = number === undefined ? undefined : unitAt(rest, number);
  if (unit) return unit;
  const digits = NUMBER.exec(rest)?.[0];
  if (digits) return { text: digits, words: digits.replaceAll(",", "") };
  const word = WORD.exec(rest)?.[0];
  if (word) return { text: word, words: functionWords.get(word) ?? word };
  const sign = String.fromCodePoint(rest.codePointAt(0)!);
  return { text: sign, words: signWords.get(sign) ?? sign };
}

function unitAt(rest: string, number: string): Token | undefined {
  const found = units.find(([sign]) => rest.startsWith(sign) && !WORD.test(rest.slice(sign.length)));
  return found && { text: found[0], words: number === "1" ? found[1].one : found[1].many };
}
