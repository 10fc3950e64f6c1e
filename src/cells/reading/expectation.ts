import type * as v from "valibot";
import { didYouMean } from "./near.ts";

/** What a schema wanted ('a whole number'), and how to write it. */
export interface Expectation {
  readonly kind: string;
  readonly advice: string;
}

const aNumber = { kind: "a number", advice: "Write a plain number, without a unit." };
const aMap = { kind: "a list of keys, each with its value", advice: "Write 'key: value', one key a line, indented." };

const expectations: Readonly<Record<string, Expectation>> = {
  string: {
    kind: "text",
    advice: "Write a word or a sentence; put a number, or true or false, that is meant as text in quotes.",
  },
  number: aNumber,
  finite: aNumber,
  integer: { kind: "a whole number", advice: "Write it without a decimal point." },
  boolean: { kind: "true or false", advice: "Write true or false." },
  array: { kind: "a list", advice: "Write each entry on a line of its own, after '- '." },
  strict_object: aMap,
  object: aMap,
  record: aMap,
  non_empty: { kind: "some text", advice: "Write its text, or delete the key." },
};

/** The words for a schema's expectation where its author gave none. */
export function expectationOf(issue: v.BaseIssue<unknown>): Expectation {
  const found = expectations[issue.type];
  if (found) return found;
  const { type, requirement, expected, input } = issue;
  if (typeof requirement === "number" && /^(min|max)/.test(type)) return bound(type, requirement);
  const choices = (expected?.match(/"[^"]*"/g) ?? []).map((each) => each.slice(1, -1));
  if (choices.length > 0 && type !== "union") {
    const kind = choices.length === 1 ? `'${choices[0]}'` : `one of: ${choices.join(", ")}`;
    return { kind, advice: didYouMean(String(input), choices) };
  }
  return { kind: "something else", advice: "Compare it with the same key in another chapter." };
}

function bound(type: string, limit: number): Expectation {
  const least = `${type.startsWith("min") ? "at least" : "at most"} ${limit}`;
  if (!type.endsWith("length")) return { kind: least, advice: `Write ${least}.` };
  return { kind: `of ${least} parts`, advice: `Give it ${least} characters or entries.` };
}
