import type { Limits } from "../limits.ts";
import type { Argument } from "./formula.ts";

/** A numeric argument in the words, unit and limits that its function enforces. */
export function argument(
  limits: Limits,
  given: Pick<Argument, "name" | "symbol" | "example"> & Partial<Pick<Argument, "words" | "default">>,
): Argument {
  return { words: limits.quantity, unit: limits.unit, from: limits.from, to: limits.to, ...given };
}
