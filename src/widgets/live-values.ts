import type { OutOfRange } from "../calc/limits.ts";
import type { Given, Work } from "../cells/chapter.ts";
import { printed, unitWords } from "../cells/printed.ts";
import { escaped } from "./escaped.ts";

/** What a live value needs to be printed. */
export interface Measure {
  readonly unit: string;
  readonly digits: number;
  readonly circle: boolean;
}

export type LiveQuantity =
  | { readonly given: Given }
  /** `wide`: the longest text it can come to; its width is reserved so that prose stays where it is. */
  | { readonly work: Work; readonly wide?: string };

/**
 * A value in a sentence, as built: a given is a slider on its own range, work follows in plain teal.
 * The widest text is kept beside it, out of sight and in the same face, and so reserves its true width.
 */
export function liveShell(name: string, quantity: LiveQuantity, text: string): string {
  if ("given" in quantity) return givenShell(name, quantity.given, text);
  const wide = wider(quantity.wide ?? "", text);
  return `<span class="live" data-is="${escaped(name)}" data-wide="${escaped(wide)}">${escaped(text)}</span>`;
}

function givenShell(name: string, given: Given, text: string): string {
  const attributes = {
    class: "given",
    role: "slider",
    tabindex: "0",
    "data-given": name,
    "data-wide": [given.from, given.to].map((end) => printed(end, given)).reduce(wider, text),
    "aria-label": given.label,
    "aria-valuemin": `${given.from}`,
    "aria-valuemax": `${given.to}`,
    "aria-valuenow": `${given.value}`,
    "aria-valuetext": valueWords(given.value, given),
    style: `--at:${placeOf(given.value, given)}`,
  };
  const list = Object.entries(attributes).map(([key, value]) => `${key}="${escaped(value)}"`);
  return `<span ${list.join(" ")}>${escaped(text)}</span>`;
}

/** The text that takes more room, digits being of one width. */
export const wider = (one: string, other: string): string => (other.length > one.length ? other : one);

/** Where a value stands on its range, from 0 to 100. */
export function placeOf(value: number, { from, to }: { from: number; to: number }): number {
  if (to <= from) return 0;
  return Math.round(Math.min(1, Math.max(0, (value - from) / (to - from))) * 1000) / 10;
}

/** '95 knots', '15 degrees': a value for assistive technology. */
export function valueWords(value: number, measure: Measure): string {
  const words = unitWords(measure.unit);
  return `${printed(value, { ...asGiven(value, measure), unit: "plain" })}${words ? ` ${words}` : ""}`;
}

/** A value of the worksheet as a sentence shows it; a dash where there is none. */
export function liveText(
  value: number | string | boolean | null | undefined,
  measure: Measure,
  exactly = false,
): string {
  if (typeof value === "number") return printed(value, exactly ? asGiven(value, measure) : measure);
  if (typeof value === "boolean") return value ? "yes" : "no";
  return value ?? "—";
}

/** With every digit that a reader gave, so that no sentence rounds her number: at most three after the point. */
function asGiven(value: number, measure: Measure): Measure {
  const after = /\.(\d*)$/.exec(String(Number(value.toFixed(3))))?.[1]?.length ?? 0;
  return { ...measure, digits: Math.max(measure.digits, after) };
}

/** What stands in the place of a value that no formula answers for: 'outside 5–60°'. */
export function troubleText({ limits }: OutOfRange): string {
  const { from, to } = limits;
  const low = Number.isFinite(from);
  const high = Number.isFinite(to);
  if (low && high) return `outside ${bare(from)}${from < 0 ? " to " : "–"}${printedLimit(to, limits.unit)}`;
  if (low) return `${limits.openFrom ? "not over" : "under"} ${printedLimit(from, limits.unit)}`;
  if (high) return `${limits.openTo ? "not under" : "over"} ${printedLimit(to, limits.unit)}`;
  return "no answer";
}

/** The same with what was outside: 'Bank: 64° is outside 5–60°'. */
export function troubleTitle(trouble: OutOfRange): string {
  const { quantity, unit, value } = trouble;
  const named = quantity.charAt(0).toUpperCase() + quantity.slice(1);
  return Number.isFinite(value) ? `${named}: ${printedLimit(value, unit)} is ${troubleText(trouble)}` : named;
}

const bare = (value: number): string => printedLimit(value, "plain");

function printedLimit(value: number, unit: string): string {
  const digits = [0, 1, 2].find((count) => Number(value.toFixed(count)) === value) ?? 3;
  return printed(value, { unit, digits, circle: false });
}
