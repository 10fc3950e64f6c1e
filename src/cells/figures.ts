import { atlasRules } from "./atlas-rules.ts";

/** What a chapter may ask of a figure; src/widgets holds a drawing for each. */
export interface FigureSignature {
  readonly name: string;
  /** Shown beside its number: 'Rate and radius against bank'. */
  readonly title: string;
  /** Names in quantities.ts; a chapter that shows the figure has them among its given. */
  readonly needs: readonly string[];
  /** Options it takes beside `see`, each with the type of its value. */
  readonly options: Readonly<Record<string, "number" | "word" | "boolean">>;
  /** An option that must be given and decides what is shown: each of its words has a title and needs of its own. */
  readonly choice?: FigureChoice;
}

export interface FigureChoice {
  readonly option: string;
  readonly of: Readonly<Record<string, Pick<FigureSignature, "title" | "needs">>>;
}

export type FigureOptions = Readonly<Record<string, string | number | boolean>>;

export const figures = [
  { name: "turn-rate-radius", title: "Rate and radius against bank", needs: ["tas", "bank"], options: {} },
  { name: "rate-one-rules", title: "Two rules of thumb against the exact bank", needs: ["tas"], options: {} },
  {
    name: "error-atlas",
    title: "A rule of thumb against the exact value",
    needs: [],
    options: {},
    choice: { option: "rule", of: atlasRules },
  },
] as const satisfies readonly FigureSignature[];

export type FigureName = (typeof figures)[number]["name"];

/** Title and needs of a figure with these options; what its choice would add is missing where that isn't among its words. */
export function chosenOf(signature: FigureSignature, options: FigureOptions): Pick<FigureSignature, "title" | "needs"> {
  const { title, needs, choice } = signature;
  const word = choice && options[choice.option];
  if (typeof word !== "string" || !Object.hasOwn(choice!.of, word)) return { title, needs };
  const chosen = choice!.of[word]!;
  return { title: chosen.title, needs: [...needs, ...chosen.needs] };
}
