import type { Exercise } from "../../cells/exercises/exercise.ts";

/** An exercise as a page carries it: what it is, and what was typeset of it at build. */
export interface BuiltExercise {
  readonly exercise: Exercise;
  readonly html: ExerciseHtml;
  /** Inline HTML by TeX, for every symbol and formula its workings can show. */
  readonly formulas: Readonly<Record<string, string>>;
}

/** Inline HTML in which `{name}` stands for a number still to come. */
export interface ExerciseHtml {
  readonly ask: string;
  readonly hints: readonly string[];
  readonly why: string;
  /** By key: a choice's options, an order's items. */
  readonly options: Readonly<Record<string, string>>;
  /** By what a verdict is because of: 'slip:0', or an option's key. */
  readonly say: Readonly<Record<string, string>>;
}
