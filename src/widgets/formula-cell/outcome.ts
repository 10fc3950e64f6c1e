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

/** Digits a field is printed with at least, where its fellows need none. */
const leastDigits: Readonly<Record<string, number>> = { g: 2, "deg/s": 1 };

/** How a result, or one field of it, is printed. */
export function printOf({ name, result, digits }: Formula, values: Values, field?: string): Print {
  if (name === "convert") return { unit: String(values.get("to")), digits };
  if (!("fields" in result)) return { unit: result.unit, digits, circle: result.circle ?? false };
  const { unit, circle = false } = result.fields[field!]!;
  return { unit, digits: Math.max(digits, leastDigits[unit] ?? 0), circle };
}
