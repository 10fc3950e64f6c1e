import { type Formula, OutOfRange, UnitMismatch } from "../../calc/index.ts";
import { type Print, printedParts, unitWords } from "../../cells/printed.ts";
import { type Comparison, compare } from "./comparison.ts";
import type { Calculator, Field } from "./fields.ts";
import type { Values } from "./likeness.ts";
import { limitSentence } from "./limits.ts";
import { noSolution } from "./no-solution.ts";
import { type FormulaValue, outcomeOf, printOf } from "./outcome.ts";
import { readField } from "./reading.ts";
import { capital, optionWords, spaced } from "./wording.ts";

/** One value of a result, as a readout shows it. */
export interface ResultLine {
  readonly label: string;
  readonly number: string;
  readonly unit: string;
  /** For a listener: 'Rate of turn 3.08 degrees a second'. */
  readonly spoken: string;
}

/** What a calculator shows for what stands in its fields. */
export interface Calculation {
  readonly values: Values;
  /** Sentences by the key of the field they belong to; those of no field under ''. */
  readonly notices: ReadonlyMap<string, string>;
  /** How a field was read, where that isn't plain to see. */
  readonly read: ReadonlyMap<string, string>;
  /** Empty where there is no answer. */
  readonly results: readonly ResultLine[];
  /** Why there is no solution, where the formula has none; it has an answer otherwise, or a notice. */
  readonly noSolution?: string;
  readonly comparisons: readonly Comparison[];
}

/** Everything a calculator shows for the texts in its fields, by key; a field without a text holds its start. */
export function calculate({ formula, compared, fields }: Calculator, texts: ReadonlyMap<string, string>): Calculation {
  const { values, read, notices } = readFields(fields, texts);
  const own = { formula, outcome: outcomeOf(formula, values) };
  const others = compared.map((other) => ({ formula: other, outcome: outcomeOf(other, values) }));
  for (const { outcome } of [own, ...others]) if ("trouble" in outcome) note(outcome.trouble, fields, values, notices);
  const value = "value" in own.outcome ? own.outcome.value : undefined;
  return {
    ...{ values, notices, read },
    results: value === undefined || value === null ? [] : resultLines(formula, value, values),
    ...(value === null && { noSolution: noSolution[formula.name] ?? "there is none" }),
    comparisons: others.map((other) => compare(own, other, values)),
  };
}

function readFields(fields: readonly Field[], texts: ReadonlyMap<string, string>) {
  const values = new Map<string, number | string>();
  const [read, notices] = [new Map<string, string>(), new Map<string, string>()];
  const put = ({ key, argument }: Field, text: string): void => {
    const reading = readField(text, argument);
    if ("unreadable" in reading) return void notices.set(key, reading.unreadable);
    values.set(key, reading.value);
    if (reading.read) read.set(key, reading.read);
  };
  for (const field of fields)
    if (!field.follows || texts.has(field.key)) put(field, texts.get(field.key) ?? field.start);
  for (const field of fields) if (field.follows && !texts.has(field.key)) follow(field, values);
  return { values, read, notices };
}

/** A field that no one has typed in goes with the others; its example serves where they decide nothing. */
function follow({ key, argument, follows }: Field, values: Map<string, number | string>): void {
  values.set(key, argument.example);
  const outcome = attempt(() => follows!.value(values));
  if (outcome !== undefined) values.set(key, Math.round(outcome * 10) / 10);
}

function attempt<T>(compute: () => T): T | undefined {
  try {
    return compute();
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** Puts what is out of range beside the field that holds it. */
function note(trouble: OutOfRange, fields: readonly Field[], values: Values, notices: Map<string, string>): void {
  if (trouble instanceof UnitMismatch)
    return void notices.set("to", `${trouble.from} does not convert into ${trouble.into}: choose a unit of its kind.`);
  const alike = fields.filter(({ argument }) => argument.words === trouble.quantity);
  const holds = ({ key }: Field) => Math.abs(Number(values.get(key))) === Math.abs(trouble.value);
  const field = alike.find(holds) ?? alike[0] ?? fields.find(holds);
  notices.set(field?.key ?? "", limitSentence(trouble.limits));
}

/** A value as readouts, one for each of its fields. */
function resultLines(formula: Formula, value: FormulaValue, values: Values): ResultLine[] {
  const label = capital(formula.words);
  if (typeof value === "number") return [numberLine(label, value, printOf(formula, values))];
  if (typeof value === "object")
    return Object.entries(value).map(([field, each]) =>
      numberLine(capital(spaced(field)), each, printOf(formula, values, field)),
    );
  const word = optionWords(value);
  return [{ label, number: word, unit: "", spoken: `${label}: ${word}` }];
}

function numberLine(label: string, value: number, print: Print): ResultLine {
  const parts = printedParts(value, print);
  const words = parts.unit && ` ${unitWords(print.unit)}`;
  return { label, ...parts, spoken: `${label} ${parts.number}${words}` };
}
