import type { Formula, Step } from "../calc/catalogue/formula.ts";
import { catalogue, OutOfRange } from "../calc/index.ts";
import type { CallNode, Value, ValueOf } from "./expressions/index.ts";
import {
  evaluate,
  type FormulaCall,
  formulaCalls,
  parseExpression,
  substituted,
  substitutedNumber,
} from "./expressions/index.ts";
import { type Print, printed, unbroken, unitSign } from "./printed.ts";
import { spoken } from "./spoken.ts";

export { looseNumber } from "./printed.ts";
export { spoken } from "./spoken.ts";

/** A row of a working. For one expression, rows, letters and TeX stay the same while numbers change. */
export interface Row {
  /** 'Radius' */
  readonly what: string;
  /** The left side, as TeX. */
  readonly symbol?: string;
  /** The right side, as TeX. */
  readonly tex?: string;
  /** The right side with the numbers in, as plain text; empty where there is nothing to reckon. */
  readonly numbers: string;
  /** The result with its unit; empty where `numbers` ends with it. */
  readonly comes: string;
  /** `numbers` in words, for assistive technology. */
  readonly spoken: string;
  /** Name of the formula that the row belongs to. */
  readonly formula?: string;
  /** On a row of a branch that isn't taken: its numbers are empty, and a page leaves it out of sight. */
  readonly idle?: true;
}

export interface WorkingOptions {
  readonly circle?: boolean;
  /** Letters of the last row where the catalogue has none, as TeX. */
  readonly symbol?: string;
  readonly tex?: string;
  readonly formulas?: readonly Formula[];
}

/**
 * The working of an expression: the steps of each formula it calls, innermost first, and, unless it is one bare call,
 * a last row with the numbers in its arithmetic. The last row is named `what` and comes to the result as printed.
 *
 * @param unit, digits how the result is printed
 * @param named the value of a name, undefined where it is unknown
 * @throws {OutOfRange} from the formulas it calls
 * @throws {ExpressionError} as parseExpression and evaluate do
 */
export function workingOf(
  expression: string,
  unit: string,
  digits: number,
  what: string,
  named: ValueOf,
  { circle = false, symbol, tex, formulas = catalogue }: WorkingOptions = {},
): Row[] {
  const node = parseExpression(expression);
  const work: Work = { named, formulas };
  const comes = worded(evaluate(node, named, formulas), { unit, digits, circle });
  const own = { what, ...(symbol && { symbol }), ...(tex && { tex }), comes };
  const calls = formulaCalls(node, named, formulas);
  const rows = calls.filter((call) => call.node !== node).flatMap((call) => callRows(call, work));
  const bare = calls.find((call) => call.node === node);
  if (!bare) return [...rows, rowOf({ ...own, numbers: substituted(node, named, formulas) })];
  const steps = callRows(bare, work);
  return [...rows, ...steps.slice(0, -1), { ...steps.at(-1)!, ...own }];
}

interface Work {
  readonly named: ValueOf;
  readonly formulas: readonly Formula[];
}

/** The rows of one call; blank, but as many, where its branch isn't taken or there is no solution. */
function callRows({ node, formula, taken }: FormulaCall, work: Work): Row[] {
  const name = { formula: formula.name };
  const blank = () =>
    stepsOf(node, formula, examplesOf(node, formula)).map((step) => ({ ...step, numbers: "", comes: "" }));
  if (!taken) return blank().map((step) => ({ ...rowOf(step), ...name, idle: true }));
  const value = evaluate(node, work.named, work.formulas);
  const args = argumentsOf(node, formula, work);
  const steps = args && value !== null ? stepsOf(node, formula, args) : blank();
  const comes = worded(value, printOf(node, formula));
  return steps.map((step, i) => ({ ...rowOf(i === steps.length - 1 ? { ...step, comes } : step), ...name }));
}

type Arguments = readonly (number | string)[];

/** Arguments that show the steps' form: words as they are written, examples for the rest. */
const examplesOf = (node: CallNode, { args }: Formula): Arguments =>
  args.map(({ example }, i) => {
    const each = node.args[i];
    return each?.kind === "word" ? each.value : example;
  });

/** Arguments of a call, left-out ones filled in; nothing where one has no solution. */
function argumentsOf(node: CallNode, { args }: Formula, { named, formulas }: Work): Arguments | undefined {
  const values = args.map(({ default: left }, i) => {
    const each = node.args[i];
    return each ? evaluate(each, named, formulas) : left!;
  });
  return values.some((value) => value === null) ? undefined : (values as Arguments);
}

function stepsOf(node: CallNode, formula: Formula, args: Arguments): readonly Step[] {
  if (!formula.steps) return [onlyStep(formula, args)];
  const steps = formula.steps as (...args: readonly unknown[]) => readonly Step[];
  return [...withRoundedArguments(steps, args), ...fieldStep(node, formula)];
}

/** Values that were worked out before appear in the steps with as many figures as they have elsewhere. */
function withRoundedArguments(
  steps: (...args: readonly unknown[]) => readonly Step[],
  args: Arguments,
): readonly Step[] {
  try {
    return steps(
      ...args.map((value) => (typeof value === "number" && Number.isFinite(value) ? shortened(value) : value)),
    );
  } catch (error) {
    // Rounding may carry a value over its limit.
    if (error instanceof OutOfRange) return steps(...args);
    throw error;
  }
}

const shortened = (value: number): number => Number(substitutedNumber(value).replace("−", "-"));

/** The one row of a formula that isn't worked by hand: what goes in, and what comes out. */
function onlyStep(formula: Formula, args: Arguments): Step {
  const given = args.map((value, i) => withUnit(value, formula.args[i]!.unit));
  if (formula.name === "convert") {
    const [value, from, into] = args;
    const numbers = withUnit(value!, String(from));
    return { what: `From ${from} into ${into}`, symbol: "", numbers };
  }
  const { words, symbol, tex } = formula;
  return { what: capital(words), symbol, tex, numbers: `f(${given.join(", ")})` };
}

/** Where a formula gives several values, the one that was asked for has a row of its own. */
function fieldStep(node: CallNode, { result }: Formula): Step[] {
  if (!("fields" in result) || node.field === undefined) return [];
  return [
    { what: capital(node.field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)), symbol: "", numbers: "" },
  ];
}

/** How the result of a call is printed within a longer working. */
function printOf(node: CallNode, { name, result, digits }: Formula): Print {
  if (name === "convert") return { unit: node.args[2]?.kind === "word" ? node.args[2].value : "plain", digits };
  return { digits, ...("fields" in result ? result.fields[node.field!]! : result) };
}

function worded(value: Value, print: Print): string {
  if (value === null) return "no solution";
  if (typeof value === "boolean") return value ? "yes" : "no";
  return typeof value === "string" ? value : printed(value, print);
}

function withUnit(value: number | string, unit: string): string {
  if (typeof value === "string") return value;
  const sign = unitSign(unit);
  return `${substitutedNumber(value)}${sign === "°" || sign === "" ? "" : "\u00a0"}${sign}`;
}

function rowOf({ what, symbol, tex, numbers, comes = "" }: Omit<Step, "symbol"> & { readonly symbol?: string }): Row {
  const spaced = typographic(numbers);
  const letters = { ...(symbol && { symbol }), ...(tex && { tex }) };
  return { what, ...letters, numbers: spaced, comes: typographic(comes), spoken: spoken(spaced) };
}

/** No break between a number and its unit, and one way to print a rate. */
const typographic = (text: string): string => unbroken(text).replace(/(\d)°\/s/g, "$1\u00a0°/s");

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
