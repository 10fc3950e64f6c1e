import { printed } from "../printed.ts";
import type { Finding } from "./field.ts";
import { fieldNamed } from "./fields.ts";
import type { Values } from "./school.ts";

/** The number in a field; NaN where none is known, with which no comparison holds. */
export type NumberOf = (id: string) => number;

/** One thing that must hold; it finds fault only where it knows all its numbers. */
export type Rule = (number: NumberOf, values: Values) => Finding | undefined;

/** 'stalling speed': a field's name within a sentence. */
export function nameOf(id: string): string {
  const label = fieldNamed(id)?.label ?? id;
  return label.charAt(0).toLowerCase() + label.slice(1);
}

/** 'Stalling speed': the same at a sentence's start. */
export const labelOf = (id: string): string => fieldNamed(id)?.label ?? id;

/** A number in a field's unit, no longer than it was written. */
export function shown(id: string, value: number, digits?: number): string {
  const field = fieldNamed(id);
  const unit = field?.kind === "number" ? field.unit : "plain";
  const own = /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0;
  return printed(value, { unit, digits: digits ?? Math.min(own, 2) });
}
