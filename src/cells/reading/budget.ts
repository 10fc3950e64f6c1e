import { limits } from "./limits.ts";

/** What a file may still spend; each limit is far above what an honest chapter needs. */
export class Budget {
  readonly #left = {
    signs: limits.allSigns as number,
    tableCells: limits.tableCells as number,
    references: limits.references as number,
    formulas: limits.formulas as number,
    calls: limits.calls as number,
  };

  /** Whether so much may still be spent, which then it is. */
  spend(what: "signs" | "tableCells" | "references" | "formulas" | "calls", count: number): boolean {
    this.#left[what] -= count;
    return this.#left[what] >= 0;
  }
}
