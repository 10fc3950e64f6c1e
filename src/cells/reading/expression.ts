import { OutOfRange } from "../../calc/index.ts";
import {
  checkUnits,
  ExpressionError,
  evaluate,
  type Node,
  namesIn,
  parseExpression,
  type Value,
} from "../expressions/index.ts";
import type { Budget } from "./budget.ts";
import { expressionCost, wordsIn } from "./cost.ts";

/** What names in an expression stand for. */
export interface Names {
  unitOf(name: string): string | undefined;
  valueOf(name: string): Value | undefined;
  /** Whether the name has a problem of its own, so that nothing can be said of what follows from it. */
  isBroken(name: string): boolean;
  /** Whether the name is declared further down. */
  isLater?(name: string): boolean;
}

/** Told of each mistake: where in the expression, what, and its mend. */
export type Report = (at: number, message: string, mend: string) => void;

/**
 * Reads an expression, checks its names and units and tries it with the numbers as given.
 *
 * @param unit what the chapter says the expression gives; undefined where any will do
 * @returns the expression and its value; nothing where it has a mistake or follows from one
 */
export function readExpression(
  text: string,
  unit: string | undefined,
  names: Names,
  budget: Budget,
  report: Report,
): { node: Node; value: Value } | undefined {
  if (!budget.spend("words", wordsIn(text))) return tooMany(report);
  const node = attempt(() => parseExpression(text), text, report);
  if (!node) return undefined;
  const used = namesIn(node);
  const later = used.filter((name) => names.isLater?.(name));
  for (const name of later) report(placeOf(name, text), `'${name}' stands further down.`, "Put it above what uses it.");
  if (later.length > 0 || used.some((name) => names.isBroken(name))) return undefined;
  const { unit: found, errors } = checkUnits(node, (name) => names.unitOf(name));
  for (const error of errors) report(error.at, sentence(error.message, text), sentence(error.mend));
  if (errors.length > 0 || !agrees(found, unit, report)) return undefined;
  return triedValue(node, text, names, budget, report);
}

function triedValue(node: Node, text: string, names: Names, budget: Budget, report: Report) {
  if (!budget.spend("calls", expressionCost(text))) return tooMany(report);
  const tried = attempt(() => ({ value: evaluate(node, (name) => names.valueOf(name)) }), text, report);
  if (!tried) return undefined;
  if (typeof tried.value === "number" && Number.isNaN(tried.value)) {
    report(
      0,
      "With the numbers as given this is no number.",
      "Look for a division of nothing by nothing, or a root of a negative number.",
    );
    return undefined;
  }
  return { node, value: tried.value };
}

function tooMany(report: Report): undefined {
  const mend = "Compute a value once, under work, and use its name; or divide the chapter.";
  report(0, "The expressions of this chapter are too many or take too long to compute.", mend);
  return undefined;
}

/**
 * The first letter large, a full stop at the end; a name at the start stays as it is written.
 *
 * @param expression the text whose words are names
 */
export function sentence(words: string, expression = ""): string {
  const first = /^[\w.]+/.exec(words)?.[0] ?? "";
  const isName = /^[a-z]+[A-Z]/.test(first) || words[first.length] === "(" || namesOf(expression).includes(first);
  const whole = isName ? words : words.charAt(0).toUpperCase() + words.slice(1);
  return /[.?!]$/.test(whole) ? whole : `${whole}.`;
}

const namesOf = (expression: string): string[] => expression.match(/[A-Za-z][\w.]*/g) ?? [];

function agrees(found: string | undefined, stated: string | undefined, report: Report): boolean {
  if (stated === undefined || found === stated) return true;
  if (found === undefined && stated !== "word") return true;
  const gives = found === undefined ? "a number" : inWords(found);
  report(0, `The expression gives ${gives}, and its unit is said to be ${inWords(stated)}.`, mendOf(found, stated));
  return false;
}

const inWords = (unit: string) => ({ plain: "a plain number", word: "a word", boolean: "true or false" })[unit] ?? unit;

function mendOf(found: string | undefined, stated: string): string {
  if (found === undefined || found === "boolean" || found === "word" || stated === "word")
    return "Mend the unit or the expression.";
  return `Write 'unit: ${found}', or turn the value into ${stated}.`;
}

function attempt<T>(action: () => T, text: string, report: Report): T | undefined {
  try {
    return action();
  } catch (error) {
    if (error instanceof ExpressionError) report(error.at, sentence(error.message, text), sentence(error.mend));
    else if (error instanceof OutOfRange)
      report(
        0,
        `With the numbers as given it can't be computed: ${error.message}.`,
        "Mend the expression, or give numbers within its range.",
      );
    else throw error;
    return undefined;
  }
}

/** Where a name stands in an expression as a whole word. */
function placeOf(name: string, text: string): number {
  const at = text.search(new RegExp(`(?<![\\w.])${name.replaceAll(".", "\\.")}(?![\\w.])`));
  return Math.max(at, 0);
}
