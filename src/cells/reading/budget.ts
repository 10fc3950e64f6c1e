import { limits } from "./limits.ts";

type Kind =
  | "allSigns"
  | "tableCells"
  | "references"
  | "formulas"
  | "calls"
  | "words"
  | "exerciseWords"
  | "exerciseCalls";

/** What a file may still spend; each limit is far above what an honest chapter needs. */
export class Budget {
  readonly #spent: Record<Kind, number> = {
    allSigns: 0,
    tableCells: 0,
    references: 0,
    formulas: 0,
    calls: 0,
    words: 0,
    exerciseWords: 0,
    exerciseCalls: 0,
  };

  /** Whether so much may still be spent, which then it is. */
  spend(kind: Kind, count: number): boolean {
    this.#spent[kind] += count;
    return this.#spent[kind] <= limits[kind];
  }
}
