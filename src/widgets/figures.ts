import type { FigureName } from "../cells/figures.ts";
import type { Figure } from "./figure.ts";
import { rateOneRules } from "./rate-one-rules/figure.ts";
import { turnRateRadius } from "./turn-rate-radius/figure.ts";

/** Every figure a chapter may ask for, by name: the compiler wants one for each. */
export const figuresByName: { readonly [Name in FigureName]: Figure & { readonly name: Name } } = {
  "turn-rate-radius": turnRateRadius,
  "rate-one-rules": rateOneRules,
};

/** The figure of a name, or nothing where none has it. */
export const figureNamed = (name: string): Figure | undefined =>
  Object.hasOwn(figuresByName, name) ? figuresByName[name as FigureName] : undefined;
