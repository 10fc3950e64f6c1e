import { type Formula, units } from "../../calc/index.ts";
import type { Given, Meta, Work } from "../chapter.ts";
import type { Value } from "../expressions/index.ts";
import type { Position } from "../problem.ts";

/** What the front matter declares. */
export interface Sheet {
  readonly meta: Omit<Meta, "name">;
  /** Where each objective stands, by its code. */
  readonly objectivesAt: ReadonlyMap<string, Position>;
  readonly given: readonly Given[];
  readonly work: readonly Work[];
  /** Every name that is declared, sound or not. */
  readonly names: ReadonlySet<string>;
  /** Names whose declaration has a problem, or whose value follows from one that has. */
  readonly broken: ReadonlySet<string>;
  /** Values at the defaults. */
  readonly values: ReadonlyMap<string, Value>;
  /** False where the front matter's YAML is broken, so that nothing can be checked against it. */
  readonly readable: boolean;
}

export const emptySheet: Sheet = {
  meta: { title: "", code: "", summary: "", minutes: 0, objectives: [], sources: [] },
  objectivesAt: new Map(),
  given: [],
  work: [],
  names: new Set(),
  broken: new Set(),
  values: new Map(),
  readable: false,
};

/** Units that a chapter may state. */
export const statedUnits: readonly string[] = [...units, "kg/m3", "plain", "word"];

/** Whether a formula's result, or the field of it that is taken, is a direction. */
export function isDirection({ result }: Formula, field?: string): boolean {
  if (!("fields" in result)) return result.circle === true;
  return field !== undefined && Object.hasOwn(result.fields, field) && result.fields[field]!.circle === true;
}
