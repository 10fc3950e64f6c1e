import { type Formula, shortestTurn } from "../../calc/index.ts";
import { looseNumber, type Print, printed } from "../../cells/printed.ts";
import { signed } from "../figure-words.ts";
import { comparedField, takenForGranted, type Values } from "./likeness.ts";
import type { FormulaValue, Outcome } from "./outcome.ts";
import { printOf } from "./outcome.ts";
import { capital, labelsOf, spaced, withUnit } from "./wording.ts";

/** One value of the other formula, and how the rule stands to the exact value or the model's. */
export interface ComparedLine {
  /** The field's name; empty where the result is one value. */
  readonly label: string;
  /** '14.6°' */
  readonly value: string;
  /** 'error +1.9° (+13 %)', 'differs from the model by −28 ft'; empty where there is nothing to compare with. */
  readonly difference: string;
}

/** A rule's reference, or a rule, at the same numbers. */
export interface Comparison {
  /** The other formula. */
  readonly formula: Formula;
  readonly lines: readonly ComparedLine[];
  /** What else must be known; empty where there is nothing. */
  readonly note: string;
}

/** A formula and what it comes to. */
export interface Worked {
  readonly formula: Formula;
  readonly outcome: Outcome;
}

/** What the other formula comes to, and how the rule of the two differs from its reference. */
export function compare(own: Worked, other: Worked, values: Values): Comparison {
  const { formula, outcome } = other;
  if ("unread" in outcome) return { formula, lines: [], note: "" };
  if ("trouble" in outcome) return { formula, lines: [], note: "no value at these numbers" };
  if (outcome.value === null) return { formula, lines: [], note: "no solution at these numbers" };
  const [rule, reference] = formula.kind === "rule" ? [other, own] : [own, other];
  const lines = fieldPairs(rule.formula).map((pair) => {
    const field = formula === rule.formula ? pair.rule : pair.reference;
    const value = partOf(outcome.value!, field);
    return {
      label: field === undefined ? "" : capital(spaced(field)),
      value: typeof value === "number" ? printed(value, printOf(formula, values, field)) : value,
      difference: differenceWords(rule, reference, pair, values),
    };
  });
  return { formula, lines, note: caveat(rule.formula, reference.formula, values) };
}

interface FieldPair {
  readonly rule: string | undefined;
  readonly reference: string | undefined;
}

function fieldPairs({ name, result }: Formula): FieldPair[] {
  if (!("fields" in result)) return [{ rule: undefined, reference: undefined }];
  return Object.keys(result.fields).map((field) => ({ rule: field, reference: comparedField(name, field) }));
}

const partOf = (value: FormulaValue, field: string | undefined): number | string =>
  typeof value === "object" ? value[field!]! : value;

function differenceWords(rule: Worked, reference: Worked, pair: FieldPair, values: Values): string {
  const [mine, true_] = [numberOf(rule, pair.rule), numberOf(reference, pair.reference)];
  if (mine === undefined || true_ === undefined) return "";
  const print = printOf(reference.formula, values, pair.reference);
  const amount = differenceText(mine, true_, print);
  if (reference.formula.kind === "model")
    return amount ? `differs from the model by ${amount}` : "agrees with the model";
  return amount ? `error ${amount}` : "no error";
}

function numberOf({ outcome }: Worked, field: string | undefined): number | undefined {
  if (!("value" in outcome) || outcome.value === null) return undefined;
  const value = partOf(outcome.value, field);
  return typeof value === "number" && Number.isFinite(value) ? value : undefined;
}

/** '+1.9° (+13 %)', 'under 0.5 kt' where it rounds to nothing; empty where there is no difference at all. */
export function differenceText(rule: number, reference: number, print: Print): string {
  const difference = print.circle ? shortestTurn(reference, rule) : rule - reference;
  if (Math.abs(difference) <= 1e-9 * Math.max(1, Math.abs(reference))) return "";
  const text = signed(difference, print.unit, print.digits);
  if (!/[1-9]/.test(text)) return `under ${withUnit(looseNumber(0.5 / 10 ** print.digits), print.unit)}`;
  return text + share(difference, reference, print);
}

/** A share of the reference says something where its scale has a true zero. */
function share(difference: number, reference: number, { unit, circle }: Print): string {
  const percent = (100 * difference) / Math.abs(reference);
  if (circle || unit === "degC" || !(Math.abs(percent) < 1000)) return "";
  const text = signed(percent, "plain", Math.abs(percent) < 9.95 ? 1 : 0);
  return /[1-9]/.test(text) ? ` (${text}\u00a0%)` : "";
}

/** A rule made for one rate or one path says so where another was typed. */
function caveat(rule: Formula, reference: Formula, values: Values): string {
  const granted = takenForGranted[rule.name];
  if (!granted || values.get(granted.key) === granted.value) return "";
  const at = reference.args.findIndex(({ name }) => name === granted.key);
  const { unit } = reference.args[at]!;
  return `the rule is made for a ${labelsOf(reference)[at]} of ${withUnit(looseNumber(granted.value), unit)}`;
}
