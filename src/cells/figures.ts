/** What a chapter may ask of a figure; src/widgets holds a drawing for each. */
export interface FigureSignature {
  readonly name: string;
  /** Shown beside its number: 'Rate and radius against bank'. */
  readonly title: string;
  /** Names in quantities.ts; a chapter that shows the figure has them among its given. */
  readonly needs: readonly string[];
  /** Options it takes beside `see`, each with the type of its value. */
  readonly options: Readonly<Record<string, "number" | "word" | "boolean">>;
}

export const figures = [
  { name: "turn-rate-radius", title: "Rate and radius against bank", needs: ["tas", "bank"], options: {} },
  { name: "rate-one-rules", title: "Two rules of thumb against the exact bank", needs: ["tas"], options: {} },
] as const satisfies readonly FigureSignature[];

export type FigureName = (typeof figures)[number]["name"];
