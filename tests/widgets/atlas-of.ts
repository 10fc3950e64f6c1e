import fc from "fast-check";
import { atlasRules } from "../../src/cells/atlas-rules.ts";
import { builtIn } from "../../src/cells/course.ts";
import { quantityOf } from "../../src/cells/quantities.ts";
import { atlasGivens } from "../../src/widgets/error-atlas/givens.ts";
import type { AtlasRule, Values } from "../../src/widgets/error-atlas/rule.ts";
import { ruleNamed } from "../../src/widgets/error-atlas/rules.ts";

export const { aircraft, place } = builtIn;

/** The values the atlas opens with, by the quantities' names. */
export const opening: Values = Object.fromEntries(atlasGivens(aircraft, place).map(({ name, value }) => [name, value]));

/** Those of them that a rule needs, with others in their place. */
export function valuesOf({ key }: AtlasRule, others: Values = {}): Values {
  return Object.fromEntries(atlasRules[key].needs.map((need) => [need, others[need] ?? opening[need]!]));
}

export const named = (key: keyof typeof atlasRules): AtlasRule => ruleNamed(key)!;

/** Any values of the quantities a rule needs: whole steps mostly, anything its formulas answer for by typing. */
export function anyValues({ key, holds }: AtlasRule): fc.Arbitrary<Values> {
  const entries = atlasRules[key].needs.map((need) => {
    const { from, to, step } = quantityOf(need)!;
    const [low, high] = holds[need] ?? [from, to];
    const slid = fc
      .integer({ min: 0, max: Math.floor((to - from) / step) })
      .map((steps) => Math.min(high, Math.max(low, from + steps * step)));
    return [need, fc.oneof({ weight: 3, arbitrary: slid }, fc.double({ min: low, max: high, noNaN: true }))] as const;
  });
  return fc.record(Object.fromEntries(entries));
}
