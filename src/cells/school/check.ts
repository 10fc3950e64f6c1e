import { readEntry } from "./entry.ts";
import type { Field, FieldValue, Finding } from "./field.ts";
import { fields } from "./fields.ts";
import { implausible } from "./plausible.ts";
import { type School, schoolOf, type Values } from "./school.ts";

/** What a school's entries come to: a school, or everything that keeps them from being one. */
export interface Checked {
  readonly school?: School;
  readonly findings: readonly Finding[];
  /** What could be read, sound together or not. */
  readonly values: Values;
}

/**
 * A school of what was written into the fields, by their ids; what is missing counts as empty. The same for form, file
 * and address.
 *
 * @param stated whether numbers must carry their units, as in a file
 */
export function checkEntries(entries: Readonly<Record<string, string>>, stated = false): Checked {
  const { values, findings } = readEntries(fields, entries, stated);
  const all = [...findings, ...implausible(values)];
  return all.length === 0 ? { school: schoolOf(values), findings: all, values } : { findings: all, values };
}

/** The values of some fields, and which of their entries can't be read. */
export function readEntries(
  some: readonly Field[],
  entries: Readonly<Record<string, string>>,
  stated = false,
): { values: Values; findings: readonly Finding[] } {
  const values = new Map<string, FieldValue>();
  const findings: Finding[] = [];
  for (const field of some) {
    const text = Object.hasOwn(entries, field.id) ? entries[field.id]! : "";
    if (field.optional && field.kind === "number" && text.trim() === "") continue;
    const read = readEntry(field, text, stated);
    if ("value" in read) values.set(field.id, read.value);
    else findings.push({ field: field.id, ...read });
  }
  return { values, findings };
}
