import type { FigureName, FigureOptions } from "../cells/figures.ts";
import { atlasFigure } from "./error-atlas/figure.ts";
import type { Figure } from "./figure.ts";
import { rateOneRules } from "./rate-one-rules/figure.ts";
import { turnRateRadius } from "./turn-rate-radius/figure.ts";

/** Every figure a chapter may ask for by its name alone: the compiler wants one for each. */
export const figuresByName: {
  readonly [Name in Exclude<FigureName, "error-atlas">]: Figure & { readonly name: Name };
} = {
  "turn-rate-radius": turnRateRadius,
  "rate-one-rules": rateOneRules,
};

/** The figure of a name and, where its options choose what it shows, of those; nothing where there is none. */
export function figureNamed(name: string, options: FigureOptions = {}): Figure | undefined {
  if (name === "error-atlas") return atlasFigure(options["rule"]);
  return Object.hasOwn(figuresByName, name) ? figuresByName[name as keyof typeof figuresByName] : undefined;
}
