import type { Known } from "../known.ts";
import type { Problem } from "../problem.ts";
import { checked } from "../reading/checked.ts";
import { didYouMean, quoted } from "../reading/near.ts";
import type { ReadYaml } from "../reading/yaml.ts";
import { builtChoice, builtNumber, builtOrder } from "./building.ts";
import { readDraws } from "./drawing.ts";
import type { Exercise } from "./exercise.ts";
import { Names, type SheetEntry } from "./names.ts";
import { Report } from "./report.ts";
import { checkHoles } from "./sentences.ts";
import { exerciseSchema, type Written } from "./shape.ts";
import { digitsFor, type Trials, tried } from "./trial.ts";

export type { SheetEntry } from "./names.ts";
export type { Trials } from "./trial.ts";

/** Where an exercise stands, and what it may refer to. */
export interface ExerciseContext {
  readonly file: string;
  readonly known: Pick<Known, "aircraft" | "place" | "technique">;
  /** Codes of the chapter's objectives. */
  readonly objectives: readonly string[];
  /** The chapter's givens and computed quantities. */
  readonly sheet: readonly SheetEntry[];
  /** Shared by the exercises of a chapter. */
  readonly trials?: Trials;
}

/** Calls of formulas, enough for some two hundred exercises in which every slip soon shows. */
const TRIALS = 150_000;

/**
 * One exercise out of its fence. It is missing where it could not be drawn or marked; problems that leave it usable
 * come beside it.
 */
export function readExercise(
  fence: ReadYaml,
  context: ExerciseContext,
): { exercise?: Exercise; problems: readonly Problem[] } {
  const shape = checked(exerciseSchema, fence, context.file);
  if ("problems" in shape) return { problems: shape.problems };
  const report = new Report(fence, context.file);
  const exercise = built(shape.output, fence, context, report);
  return { ...(exercise ? { exercise } : {}), problems: report.problems };
}

function built(written: Written, fence: ReadYaml, context: ExerciseContext, report: Report): Exercise | undefined {
  const names = new Names(readDraws(written.draw, context.sheet, report), context.sheet, context.known);
  if (report.problems.length > 0) return undefined;
  const line = fence.at([], "value").line;
  const exercise = builtOf(written, names, line, report);
  checkHoles(written, names, report);
  checkObjective(written.objective, context.objectives, report);
  if (!exercise) return undefined;
  const questions = tried(exercise, context.trials ?? { left: TRIALS }, report);
  if (!questions || exercise.kind !== "number" || ("digits" in written && written.digits !== undefined))
    return questions && exercise;
  return {
    ...exercise,
    digits: digitsFor(
      exercise,
      questions.map(({ answer }) => answer),
    ),
  };
}

function builtOf(written: Written, names: Names, line: number, report: Report): Exercise | undefined {
  if (written.kind === "number") return builtNumber(written, names, line, report);
  if (written.kind === "choice") return builtChoice(written, names, line, report);
  return builtOrder(written, names, line, report);
}

function checkObjective(objective: string, objectives: readonly string[], report: Report): void {
  if (objectives.includes(objective)) return;
  report.at(["objective"], `the chapter has no objective ${quoted(objective)}`, didYouMean(objective, objectives));
}
