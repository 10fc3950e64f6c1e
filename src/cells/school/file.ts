import { rangeWords } from "./entry.ts";
import type { Field, FieldValue } from "./field.ts";
import { fields } from "./fields.ts";
import { type School, valuesOf } from "./school.ts";

/** The version of the form that files and addresses are written in; another one is refused. */
export const VERSION = 1;

/** A school as one YAML file that reads like a form: each entry with what it is and what it may be. */
export function schoolFile(school: School): string {
  const values = valuesOf(school);
  const lines = [...HEAD, `version: ${VERSION}`];
  let around: readonly string[] = [];
  for (const field of fields) {
    const { path } = field;
    const inner = path.slice(0, -1);
    const same = inner.findIndex((key, i) => key !== around[i]);
    const from = same < 0 ? inner.length : same;
    if (from < inner.length && from === 0) lines.push("");
    for (const [depth, key] of inner.entries()) if (depth >= from) lines.push(`${indent(depth)}${key}:`);
    around = inner;
    const value = values.get(field.id);
    if (value === undefined || value === "") continue;
    lines.push(...entryLines(field, value));
  }
  return `${lines.join("\n")}\n`;
}

const HEAD = [
  "# A school's own numbers, place, technique and words for Hoodwork: a form to fill in with any editor.",
  "# A number stands with its unit, one space between. Comments stand on lines of their own.",
  "# Ground study only: the flight manual, local rules and a licensed instructor decide.",
];

const indent = (depth: number): string => "  ".repeat(depth);

function entryLines(field: Field, value: FieldValue): string[] {
  const depth = indent(field.path.length - 1);
  const key = field.path.at(-1)!;
  const comment = `${depth}# ${commentOn(field)}`;
  if (typeof value === "object")
    return [comment, `${depth}${key}:`, ...value.map((step) => `${depth}  - ${scalar(step)}`)];
  return [comment, `${depth}${key}: ${typeof value === "number" ? measured(value, field) : scalar(value)}`];
}

function commentOn(field: Field): string {
  const about = field.note ? `${field.label}: ${field.note}` : field.label;
  if (field.kind === "number") return `${about}; ${rangeWords(field)}.`.replaceAll("\u00a0", " ");
  if (field.kind === "choice") return `${about}; one of ${Object.keys(field.choices).join(", ")}.`;
  return field.kind === "list" ? `${about}: one step to a line.` : `${about}.`;
}

const measured = (value: number, field: Field): string =>
  field.kind === "number" && field.unit !== "plain" ? `${value} ${field.unit}` : String(value);

const PLAIN = /^\p{L}[\p{L}\p{N} ,.()/’–-]*$/u;
const WORDS = /^(?:true|false|null|yes|no|on|off|y|n)$/i;

/** Text as YAML: plain where nothing in it could be misread, else in quotes. */
const scalar = (text: string): string => (PLAIN.test(text) && !WORDS.test(text) ? text : JSON.stringify(text));
