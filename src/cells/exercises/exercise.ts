import type { Fact } from "../known.ts";

/** What an exercise of any kind has. `ask`, `say`, `why`, options and hints are inline Markdown with `{name}` holes. */
export interface Common {
  /** Unique in the course: 'turning-radius-1'. */
  readonly id: string;
  /** A code of the chapter's objectives: 'TRN-1'. */
  readonly objective: string;
  readonly ask: string;
  readonly hints: readonly string[];
  /** Why it is so, shown after the verdict. */
  readonly why: string;
  readonly draws: readonly Draw[];
  /** How each drawn name, given and fact that the exercise uses is printed. */
  readonly measures: Readonly<Record<string, Measured>>;
  /** Givens of the chapter that the exercise uses and doesn't draw, at their default values. */
  readonly values: Readonly<Record<string, number>>;
  /** The facts of aircraft, place and technique that it uses, as they stood when it was read: 'aircraft.cruise'. */
  readonly facts: Readonly<Record<string, Fact>>;
  /** The chapter's computed quantities that it uses: each an expression over what else is here. */
  readonly work: Readonly<Record<string, Computed>>;
  readonly line: number;
}

/** How a value is printed and compared. */
export interface Measured {
  readonly label: string;
  /** A unit of `convert`, 'plain', or 'word'. */
  readonly unit: string;
  readonly digits: number;
  readonly circle: boolean;
}

/** A computed quantity of the chapter. */
export interface Computed extends Measured {
  readonly is: string;
}

/** A fresh number on a grid, one of a list, or a word of a list. */
export type Draw =
  | { readonly name: string; readonly from: number; readonly to: number; readonly step: number }
  | { readonly name: string; readonly list: readonly (number | string)[] };

export interface NumberExercise extends Common {
  readonly kind: "number";
  /** Named beside the reply's field: 'Radius'. */
  readonly label: string;
  readonly answer: string;
  readonly unit: string;
  readonly digits: number;
  /** Headings: compared on the circle, printed 001–360. */
  readonly circle: boolean;
  readonly within: Within;
  /** True where trade speech drops the sign. */
  readonly signIgnored: boolean;
  readonly slips: readonly { readonly is: string; readonly say: string }[];
}

/** How far from the answer still counts as right. */
export type Within = { readonly value: number; readonly unit: string } | { readonly percent: number };

export interface ChoiceExercise extends Common {
  readonly kind: "choice";
  /** True where more than one option may be right; all and only the right ones are then wanted. */
  readonly several: boolean;
  /** False keeps the order in which the options are written. */
  readonly shuffled: boolean;
  readonly options: readonly ChoiceOption[];
}

export interface ChoiceOption {
  readonly key: string;
  readonly text: string;
  /** 'true', 'false', or a comparison over the draws. */
  readonly right: string;
  /** The wrong path behind it; on a right one, why it is right. */
  readonly say: string;
}

export interface OrderExercise extends Common {
  readonly kind: "order";
  readonly items: readonly { readonly key: string; readonly text: string }[];
  /** The right order, as keys. */
  readonly answer: readonly string[];
  readonly slips: readonly { readonly is: readonly string[]; readonly say: string }[];
}

export type Exercise = NumberExercise | ChoiceExercise | OrderExercise;
