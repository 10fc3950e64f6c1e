import type { FigureName, FigureOptions } from "../cells/figures.ts";
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

/** The figure of a name, or nothing where none has it by its name alone. */
export const figureNamed = (name: string): Figure | undefined =>
  Object.hasOwn(figuresByName, name) ? figuresByName[name as keyof typeof figuresByName] : undefined;

/**
 * The figure of a name whose options choose what it shows: a chunk of its own, which a page without it doesn't load.
 *
 * @throws whatever the import throws
 */
export async function loadFigure(name: string, options: FigureOptions): Promise<Figure | undefined> {
  if (name !== "error-atlas") return figureNamed(name);
  const { atlasFigure } = await import("./error-atlas/figure.ts");
  return atlasFigure(options["rule"]);
}
