// What a reader touches; pages register the elements.
export type { BuiltSheet } from "./built-sheet.ts";
export { type Answered, type BuiltExercise, ExerciseCellElement, type OwnWords } from "./exercise-cell/index.ts";
export { FigureCellElement } from "./figure-cell.ts";
export { bindLiveValues } from "./live-binding.ts";
export { type AskedAgain, PredictCellElement, type Predicted } from "./predict-element.ts";
export { WorkingCellElement } from "./working-element.ts";
