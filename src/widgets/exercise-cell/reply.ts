import type { Question, Reply } from "../../cells/exercises/index.ts";
import type { BuiltExercise } from "./built.ts";

/** What a reader answers with: a field, rows to tick, or rows to put in order. */
export interface ReplyControl {
  read(): Reply;
  /** Shows a question afresh, with nothing replied. */
  ask(question: Question, built: BuiltExercise): void;
  /** Says beside each row what the verdict knows of it. */
  note(question: Question): void;
  focus(): void;
}
