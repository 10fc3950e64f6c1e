import { type Argument, type Formula, type Limits, OutOfRange } from "../../calc/index.ts";
import { typedText } from "../figure-scale.ts";
import { capital, choiceWords, withUnit } from "./wording.ts";

/** An angle that may go round as often as it likes, and a number of any size, have no limit worth printing. */
const ANY_ANGLE = 100_000;
const ANY_NUMBER = 1e12;

/** The range of one argument in words: 'over 0 to 700 kt', '−90 to 90°', 'any', 'left or right'. */
export function rangeWords(formula: Formula, at: number): string {
  const argument = formula.args[at]!;
  if (argument.options)
    return argument.options.length > 6 ? `one of ${argument.options.length}` : choiceWords(argument.options);
  const { unit, from = -Infinity, to = Infinity } = argument;
  if (isBoundless(argument)) return unit === "plain" ? "any number" : "any";
  const low = `${isOpen(formula, at, from) ? "over " : ""}${numberText(from)}`;
  if (to === Infinity) return isOpen(formula, at, from) ? withUnit(low, unit) : `${withUnit(low, unit)} or more`;
  return withUnit(`${low} to ${isOpen(formula, at, to) ? "under " : ""}${numberText(to)}`, unit);
}

function isBoundless({ unit, from = -Infinity, to = Infinity }: Argument): boolean {
  const any = unit === "deg" ? ANY_ANGLE : ANY_NUMBER;
  return from <= -any && to >= any;
}

/** Whether an end of the range is itself outside, found by asking the formula. */
function isOpen({ args, call }: Formula, at: number, end: number): boolean {
  const values = args.map(({ example }, i) => (i === at ? end : example));
  try {
    (call as (...args: readonly unknown[]) => unknown)(...values);
    return false;
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { quantity, from, to, openFrom, openTo } = error.limits;
    return quantity === args[at]!.words && ((openFrom === true && from === end) || (openTo === true && to === end));
  }
}

/** How far from its example an end may lie and still be met in use. */
const WITHIN_REACH = 10;

/** Whether other formulas take the same quantity over a wider range, and this one's end is within reach in use. */
export function isNarrow(argument: Argument, formulas: readonly Formula[]): boolean {
  const { words, unit, from = -Infinity, to = Infinity, example } = argument;
  const alike = formulas.flatMap(({ args }) => args).filter((other) => other.words === words && other.unit === unit);
  const near = Math.max(Math.abs(from), Math.abs(to)) < WITHIN_REACH * Math.abs(Number(example));
  return near && alike.some((other) => other.from! < from || other.to! > to);
}

/** What a field has to hold, in a sentence: 'Bank must be over 0 and at most 90°.' */
export function limitSentence({ quantity, unit, from, to, openFrom, openTo }: Limits): string {
  const low = from === -Infinity ? "" : `${openFrom ? "over" : "at least"} ${numberText(from)}`;
  const high = to === Infinity ? "" : `${openTo ? "under" : "at most"} ${numberText(to)}`;
  const limits = [low, high].filter(Boolean).join(" and ") || "a finite number";
  return `${capital(quantity)} must be ${withUnit(limits, unit)}.`;
}

function numberText(value: number): string {
  const [whole, ...fraction] = typedText(value).split(".") as [string, ...string[]];
  return [whole.replace(/\B(?=(\d{3})+$)/g, ","), ...fraction].join(".");
}
