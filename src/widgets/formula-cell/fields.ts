import { type Argument, catalogue, type Formula } from "../../calc/index.ts";
import { typedText } from "../figure-scale.ts";
import { type Following, following, keyOf } from "./likeness.ts";
import { labelsOf } from "./wording.ts";

/** One field of a calculator. */
export interface Field {
  /** The argument's name, one for a rule and what it stands for where both take it. */
  readonly key: string;
  /** 'true airspeed', 'bank 2'. */
  readonly label: string;
  readonly argument: Argument;
  /** The formula that asks for it. */
  readonly of: Formula;
  /** What stands in it at first, as typed. */
  readonly start: string;
  readonly follows?: Following;
}

/** A formula, what it is compared with, and every field that these take. */
export interface Calculator {
  readonly formula: Formula;
  /** What a rule stands for; for all else the rules that stand for it. */
  readonly compared: readonly Formula[];
  /** The formula's own first. */
  readonly fields: readonly Field[];
}

export function calculatorOf(formula: Formula, formulas: readonly Formula[] = catalogue): Calculator {
  const compared = comparedWith(formula, formulas);
  const fields = new Map<string, Field>();
  for (const of of [formula, ...compared])
    for (const field of fieldsOf(of, formula.name)) if (!fields.has(field.key)) fields.set(field.key, field);
  return { formula, compared, fields: [...fields.values()] };
}

/** What a rule stands for; for all else the rules that stand for it. */
export const comparedWith = ({ kind, name, standsFor }: Formula, formulas: readonly Formula[]): Formula[] =>
  formulas.filter((other) => (kind === "rule" ? other.name === standsFor : other.standsFor === name));

function fieldsOf(of: Formula, calculator: string): Field[] {
  const labels = labelsOf(of);
  return of.args.map((argument, at) => {
    const key = keyOf(of.name, argument.name);
    const follows = following[calculator]?.[key];
    const start = typeof argument.example === "number" ? typedText(argument.example) : argument.example;
    return { key, label: labels[at]!, argument, of, start, ...(follows && { follows }) };
  });
}
