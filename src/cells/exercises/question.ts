import type { Facts } from "../known.ts";
import type { ChoiceExercise, Exercise, NumberExercise, OrderExercise } from "./exercise.ts";

/** Whose numbers fill an exercise; what is left out is as it was when the exercise was read. */
export interface Settings {
  readonly aircraft?: Facts;
  readonly place?: Facts;
  readonly technique?: Facts;
  /** The chapter's givens at their present values. */
  readonly values?: Readonly<Record<string, number>>;
}

/** What a question of any kind has: an exercise with its numbers in. */
interface Posed<E extends Exercise> {
  readonly exercise: E;
  readonly seed: string;
  /** Every name the exercise uses, drawn or given, with its value. */
  readonly given: Given;
  /** What stands for each `{name}`: '110 kt'. A number question has 'answer' too. */
  readonly printed: Readonly<Record<string, string>>;
  /** Inline Markdown, holes filled. */
  readonly ask: string;
}

export type Given = Readonly<Record<string, number | string>>;

export interface NumberQuestion extends Posed<NumberExercise> {
  readonly kind: "number";
  /** In the exercise's unit; a heading at 0 ≤ x < 360. */
  readonly answer: number;
  /** The wrong paths that lead somewhere with these numbers. */
  readonly slips: readonly NumberSlip[];
}

export interface NumberSlip {
  readonly value: number;
  /** Holes filled. */
  readonly say: string;
  /** Its expression. */
  readonly is: string;
  /** Its place among the exercise's slips. */
  readonly index: number;
}

export interface ChoiceQuestion extends Posed<ChoiceExercise> {
  readonly kind: "choice";
  /** Keys of the right options. */
  readonly answer: readonly string[];
  readonly slips: readonly KeySlip[];
  /** Keys in the order shown. */
  readonly options: readonly string[];
}

export interface OrderQuestion extends Posed<OrderExercise> {
  readonly kind: "order";
  /** Keys in the right order. */
  readonly answer: readonly string[];
  readonly slips: readonly KeySlip[];
  /** Keys in the order shown, which is never the right one. */
  readonly options: readonly string[];
}

/** A wrong option, or a wrong order. */
interface KeySlip {
  readonly value: readonly string[];
  /** Holes filled. */
  readonly say: string;
}

export type Question = NumberQuestion | ChoiceQuestion | OrderQuestion;

/** The question that an exercise of a kind becomes. */
export type QuestionOf<E extends Exercise> = E extends NumberExercise
  ? NumberQuestion
  : E extends ChoiceExercise
    ? ChoiceQuestion
    : OrderQuestion;
