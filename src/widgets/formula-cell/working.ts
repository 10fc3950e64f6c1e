import type { Formula, Step } from "../../calc/index.ts";
import { type Row, workingOf } from "../../cells/workings.ts";
import { keyOf, type Values } from "./likeness.ts";
import { printOf } from "./outcome.ts";
import { capital, spaced } from "./wording.ts";

/**
 * The rows that lead to a formula's result; where it has several fields, a row for each after the common ones.
 *
 * @throws {OutOfRange} as the formula does
 */
export function workingFor(formula: Formula, values: Values): Row[] {
  if (!("fields" in formula.result)) return rowsTo(formula, values);
  const [first, ...others] = Object.keys(formula.result.fields);
  return [...rowsTo(formula, values, first), ...others.map((field) => rowsTo(formula, values, field).at(-1)!)];
}

function rowsTo(formula: Formula, values: Values, field?: string): Row[] {
  const { name, args } = formula;
  const named = (argument: string) => values.get(keyOf(name, argument));
  const given = args.map((argument) => {
    const value = named(argument.name);
    return typeof value === "string" ? `"${value}"` : argument.name;
  });
  const call = `${name}(${given.join(", ")})${field === undefined ? "" : `.${field}`}`;
  const { unit, digits, circle = false } = printOf(formula, values, field);
  const what =
    field === undefined
      ? lastOf(
          formula,
          args.map(({ name }) => named(name)),
        )
      : capital(spaced(field));
  return workingOf(call, unit, digits, what, named, { circle });
}

/** What the last step of a working is called: shorter than the formula's own words. */
function lastOf({ words, steps }: Formula, values: readonly unknown[]): string {
  const rows = (steps as ((...values: readonly unknown[]) => readonly Step[]) | undefined)?.(...values);
  return rows?.at(-1)?.what ?? capital(words);
}
