import type { Token } from "marked";
import type { Exercise } from "./exercises/exercise.ts";
import type { Position, Problem } from "./problem.ts";

/** A chapter as read: never half an object, whatever the text; what could not be read is missing and stands in `problems`. */
export interface Chapter {
  readonly meta: Meta;
  readonly given: readonly Given[];
  readonly work: readonly Work[];
  readonly cells: readonly Cell[];
  readonly exercises: readonly Exercise[];
  readonly problems: readonly Problem[];
}

export interface Meta {
  /** The file's name without folder and ending: 'turning'. */
  readonly name: string;
  readonly title: string;
  /** Three capital letters: 'TRN'. */
  readonly code: string;
  readonly summary: string;
  readonly minutes: number;
  readonly objectives: readonly Objective[];
  /** Inline Markdown, each with its date. */
  readonly sources: readonly string[];
}

export interface Objective {
  readonly code: string;
  readonly text: string;
}

/** A quantity a reader can change, with what quantities.ts says of it and the chapter's narrowing. */
export interface Given {
  readonly name: string;
  /** The quantity's name in quantities.ts; equals `name` unless the chapter says otherwise (`quantity: tas`). */
  readonly quantity: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly digits: number;
  readonly circle: boolean;
  /** The fact that `value` is, where the chapter names one: 'aircraft.cruise'. Another school's takes its place. */
  readonly follows?: string;
}

/** A quantity that follows. */
export interface Work {
  readonly name: string;
  /** An expression over given, earlier work, `aircraft.*`, `place.*`, `technique.*` and the catalogue. */
  readonly is: string;
  readonly unit: string;
  readonly digits: number;
  readonly label: string;
  readonly circle: boolean;
}

export type Cell = (
  | SectionCell
  | ProseCell
  | FigureCell
  | ExerciseCell
  | WorkingCell
  | PredictCell
  | BriefCell
  | NotesCell
  | CalloutCell
) &
  Position;

/** A `##` heading: one screen of a briefing. */
export interface SectionCell {
  readonly kind: "section";
  readonly id: string;
  readonly number: number;
  /** Inline tokens of the heading; no live values in it. */
  readonly tokens: readonly Token[];
  readonly text: string;
}

/** Block tokens of marked with our inline tokens (live, term, maths) in them. */
export interface ProseCell {
  readonly kind: "prose";
  readonly tokens: readonly Token[];
}

export interface FigureCell {
  readonly kind: "figure";
  readonly name: string;
  /** Unique on the page: 'figure-1'. */
  readonly id: string;
  readonly number: number;
  /** What to see: inline Markdown and its tokens. */
  readonly see: string;
  readonly seeTokens: readonly Token[];
  readonly options: Readonly<Record<string, string | number | boolean>>;
}

export interface ExerciseCell {
  readonly kind: "exercise";
  readonly exercise: Exercise;
}

export interface WorkingCell {
  readonly kind: "working";
  readonly id: string;
  /** What is worked: 'half a turn at the figure’s numbers'. */
  readonly of: string;
  readonly steps: readonly WorkingStep[];
}

/** A row of a working, or several where `is` calls a formula of the catalogue that has steps of its own. */
export interface WorkingStep {
  /** A name by which later steps may use the result. */
  readonly name?: string;
  readonly what: string;
  readonly is: string;
  readonly unit: string;
  readonly digits: number;
  /** TeX of the left side and the right side, where the catalogue has none. */
  readonly symbol?: string;
  readonly tex?: string;
}

export interface PredictCell {
  readonly kind: "predict";
  readonly id: string;
  readonly ask: string;
  readonly askTokens: readonly Token[];
  readonly options: readonly PredictOption[];
  /** The change the reveal makes: name of a given → expression over the sheet before the reveal. */
  readonly then: readonly { readonly name: string; readonly is: string }[];
  readonly say: string;
  readonly sayTokens: readonly Token[];
}

export interface PredictOption {
  /** A, B, C …: the letter shown. */
  readonly key: string;
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly right: boolean;
}

export interface BriefCell {
  readonly kind: "brief";
  readonly text: string;
  readonly tokens: readonly Token[];
}

/** For the instructor: built into a page of its own, never into the reader's. */
export interface NotesCell {
  readonly kind: "notes";
  readonly tokens: readonly Token[];
}

export interface CalloutCell {
  readonly kind: "callout";
  readonly tone: "caution" | "note";
  /** Words after the mark, on its own line: '> [!CAUTION] avoid first'. */
  readonly title: string;
  readonly tokens: readonly Token[];
}

/** `{name}` in prose. */
export interface LiveToken {
  readonly type: "live";
  readonly raw: string;
  readonly name: string;
}

/** `[text](term:key)`; `tokens` is what the author wrote, shown where the glossary gives one form only. */
export interface TermToken {
  readonly type: "term";
  readonly raw: string;
  readonly key: string;
  readonly text: string;
}

/** `$…$` in a line or `$$…$$` on lines of its own. */
export interface MathToken {
  readonly type: "math";
  readonly raw: string;
  readonly tex: string;
  readonly display: boolean;
}
