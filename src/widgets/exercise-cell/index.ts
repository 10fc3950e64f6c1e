export type { BuiltExercise } from "./built.ts";
export { type Answered, ExerciseCellElement } from "./element.ts";
export type { OwnWords } from "./own-words.ts";
