// What a chapter is built with. Pure functions to strings: no element class, no DOM.
export type { BuiltExercise, ExerciseHtml } from "./exercise-cell/built.ts";
export { fillHtml } from "./exercise-cell/fill-html.ts";
export { exerciseShell } from "./exercise-cell/shell.ts";
export { type LiveQuantity, liveShell } from "./live-values.ts";
export { type PredictHtml, predictShell } from "./predict-cell.ts";
export { type WorkedStep, workingRows, workingShell } from "./working-cell.ts";
