import { type Formula, OutOfRange } from "../../calc/index.ts";
import type { Print } from "../../cells/printed.ts";
import { keyOf, type Values } from "./likeness.ts";

/** One value, a word, or several under their names. */
export type FormulaValue = number | string | Readonly<Record<string, number>>;

/** What a formula comes to, null where it has no solution; or what kept it from an answer. */
export type Outcome =
  | { readonly value: FormulaValue | null }
  | { readonly trouble: OutOfRange }
  /** A field can't be read. */
  | { readonly unread: true };

export function outcomeOf({ name, args, call }: Formula, values: Values): Outcome {
  const given = args.map((argument) => values.get(keyOf(name, argument.name)));
  if (given.includes(undefined)) return { unread: true };
  try {
    return { value: (call as (...args: readonly unknown[]) => FormulaValue | null)(...given) };
  } catch (error) {
    if (error instanceof OutOfRange) return { trouble: error };
    throw error;
  }
}

/** How a result, or one field of it, is printed. */
export function printOf({ name, result, digits }: Formula, values: Values, field?: string): Print {
  if (name === "convert") return { unit: String(values.get("to")), digits };
  const { unit, circle = false } = "fields" in result ? result.fields[field!]! : result;
  return { unit, digits, circle };
}
