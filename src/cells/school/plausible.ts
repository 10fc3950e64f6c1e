import type { Finding } from "./field.ts";
import { atMost, below } from "./order-rules.ts";
import { placeRules } from "./place-rules.ts";
import type { Rule } from "./rule.ts";
import type { Values } from "./school.ts";
import { speedRules } from "./speed-rules.ts";
import { tableRules } from "./table-rules.ts";

const rules: readonly Rule[] = [...below, ...atMost, ...speedRules, ...tableRules, ...placeRules];

/**
 * What can't be true of one aeroplane and its school together, each with the field where it shows. A rule whose numbers
 * aren't all there says nothing.
 */
export function implausible(values: Values): readonly Finding[] {
  const number = (id: string): number => {
    const value = values.get(id);
    return typeof value === "number" ? value : Number.NaN;
  };
  return rules.flatMap((rule) => rule(number, values) ?? []);
}
