import { convert, type Unit, unitKind, units } from "../../calc/index.ts";
import { printed, unitSign } from "../printed.ts";
import type { ChoiceField, Field, FieldValue, ListField, NumberField, TextField } from "./field.ts";

/** Why an entry can't be read, and what would mend it. */
export interface Refusal {
  readonly message: string;
  readonly mend: string;
}

export type Reading<Value extends FieldValue = FieldValue> = { readonly value: Value } | Refusal;

/** Steps of an order of work, and characters of a step. */
const STEPS = 12;
const LONGEST_STEP = 60;

/**
 * What was written into a field: a number in its unit or in one that converts into it, words, a choice, or steps one
 * to a line.
 *
 * @param stated whether a number must carry its unit, as in a file; in a form the unit stands beside it
 */
export function readEntry(field: Field, text: string, stated = false): Reading {
  if (field.kind === "number") return readNumber(field, text.trim(), stated);
  if (field.kind === "choice") return readChoice(field, text.trim());
  if (field.kind === "text") return readText(field, text.trim());
  return readList(field, text);
}

/** A field's value as it is written into the form; a number without its unit. */
export function entryOf(value: FieldValue): string {
  if (typeof value === "number") return String(value).replace("-", "−");
  return typeof value === "string" ? value : value.join("\n");
}

/** '25 to 100 kt': what a number field takes. */
export function rangeWords({ unit, from, to }: NumberField): string {
  const sign = unitSign(unit);
  const end = (value: number) => printed(value, { unit: "plain", digits: decimals(value) });
  return `${end(from)} to ${end(to)}${sign === "" || sign === "°" ? sign : `\u00a0${sign}`}`;
}

// A comma before one or two digits, or after a lone 0, is a decimal one; before three it stands between thousands.
const NUMBER = /^([+\-−]?)\s?([1-9]\d{0,2}(?:[,\s]\d{3})+(?:\.\d+)?|\d*\.\d+|0?,\d+|\d+(?:,\d{1,2})?)\s*([^\d,.]\S*)?$/;
const LONGEST_NUMBER = 30;
/** So many digits of a converted number are kept. */
const FIGURES = 9;

function readNumber(field: NumberField, text: string, stated: boolean): Reading<number> {
  const { label, unit } = field;
  const wanted = `Write a number, ${rangeWords(field)}.`;
  if (text === "") return { message: `${label}: nothing stands here.`, mend: wanted };
  const [, sign = "", digits = "", written = ""] = (text.length <= LONGEST_NUMBER && NUMBER.exec(text)) || [];
  if (digits === "") return { message: `${label}: ${quoted(text)} is not a number.`, mend: wanted };
  if (written === "" && stated && unit !== "plain")
    return { message: `${label}: ${text} stands without its unit.`, mend: `Write '${text} ${unit}', with one space.` };
  const size = plainDigits(digits);
  const value = inUnit(sign === "-" || sign === "−" ? -size : size, written, unit);
  if (value === undefined)
    return {
      message: `${label}: ${quoted(written)} is no unit that fits here.`,
      mend: unit === "plain" ? "Write the number alone." : `Write it in ${unit}.`,
    };
  if (value >= field.from && value <= field.to) return { value };
  const asked = printed(value, { unit, digits: Math.min(decimals(value), 2) });
  return { message: `${label}: ${asked} is outside ${rangeWords(field)}.`, mend: wanted };
}

/** Without commas or spaces between thousands; a decimal comma becomes a point. */
function plainDigits(digits: string): number {
  const grouped = /^[1-9]\d{0,2}(?:[,\s]\d{3})+(?:\.\d+)?$/.test(digits);
  return Number(grouped ? digits.replace(/[,\s]/g, "") : digits.replace(",", "."));
}

function inUnit(value: number, written: string, unit: string): number | undefined {
  if (written === "" || written === unit || written === unitSign(unit)) return value + 0;
  const from = units.find((each) => each === written || unitSign(each) === written);
  const to = units.find((each) => each === unit);
  if (from === undefined || to === undefined || unitKind(from) !== unitKind(to)) return undefined;
  return Number(convert(value, from, to satisfies Unit).toPrecision(FIGURES));
}

function readChoice({ label, choices }: ChoiceField, text: string): Reading<string> {
  if (Object.hasOwn(choices, text)) return { value: text };
  const list = Object.keys(choices).join(", ");
  return {
    message: text === "" ? `${label}: nothing is chosen.` : `${label}: ${quoted(text)} is none of the choices.`,
    mend: `Choose from: ${list}.`,
  };
}

function readText({ label, longest, optional }: TextField, text: string): Reading<string> {
  if (text === "" && !optional) return { message: `${label}: nothing stands here.`, mend: "Write it." };
  return troubleWith(label, text, longest) ?? { value: text };
}

function readList({ label }: ListField, text: string): Reading<readonly string[]> {
  const steps = text
    .split("\n")
    .map((step) => step.trim())
    .filter(Boolean);
  if (steps.length === 0) return { message: `${label}: there is no step.`, mend: "Write one step to a line." };
  if (steps.length > STEPS)
    return { message: `${label}: there are ${steps.length} steps.`, mend: `Give ${STEPS} at most.` };
  return steps.map((step) => troubleWith(label, step, LONGEST_STEP)).find(Boolean) ?? { value: steps };
}

// Control characters, halves of surrogate pairs, and marks that reverse the direction of writing: none can be seen.
const UNSEEN = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069\uFEFF]/u;

function troubleWith(label: string, text: string, longest: number): Refusal | undefined {
  if (UNSEEN.test(text))
    return { message: `${label}: a character that can’t be seen stands in it.`, mend: "Type it anew." };
  if (text.length <= longest) return undefined;
  return { message: `${label}: this is ${text.length} characters long.`, mend: `Write ${longest} at most.` };
}

const decimals = (value: number): number => /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0;

function quoted(text: string): string {
  return `‘${text.length > 30 ? `${text.slice(0, 29)}…` : text}’`;
}
