import type { ComparisonSign, Value } from "./node.ts";

/** Values closer than this, relative to the larger, are equal: sines and logarithms differ in the last bit between engines. */
const EQUAL = 1e-12;

/** Whether two numbers are equal as far as every engine agrees. */
export const same = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) < EQUAL * Math.max(Math.abs(a), Math.abs(b));

/** A comparison of two numbers; equal ones are neither less nor greater, and NaN is unequal to all. */
export function compareNumbers(sign: ComparisonSign, a: number, b: number): boolean {
  const equal = same(a, b);
  switch (sign) {
    case "==":
      return equal;
    case "!=":
      return !equal;
    case "<":
      return !equal && a < b;
    case ">":
      return !equal && a > b;
    case "<=":
      return equal || a < b;
    case ">=":
      return equal || a > b;
  }
}

/** Equality of words or truths; undefined for a sign that has no meaning between them. */
export function compareOthers(sign: ComparisonSign, a: Value, b: Value): boolean | undefined {
  if (sign === "==") return a === b;
  if (sign === "!=") return a !== b;
  return undefined;
}

/** The number without the noise of binary fractions: 15 significant figures. */
export const withoutNoise = (value: number): number => (Number.isFinite(value) ? Number(value.toPrecision(15)) : value);
