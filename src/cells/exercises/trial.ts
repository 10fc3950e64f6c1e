import { ExpressionError } from "../expressions/index.ts";
import { expressionCost } from "../reading/cost.ts";
import { tolerance } from "./closeness.ts";
import { ATTEMPTS, DrawProblem, draw } from "./draw.ts";
import type { Exercise, NumberExercise } from "./exercise.ts";
import type { NumberQuestion, Question } from "./question.ts";
import type { Report } from "./report.ts";

/** Draws that are tried before a slip that never shows is called one. */
const MOST = 200;
/** Draws that are tried where every slip has shown. */
const FEWEST = 25;

/** What a chapter's exercises may still spend together on trial draws, in calls of formulas, so that reading ends in time. */
export interface Trials {
  left: number;
}

/** Questions drawn to see that an exercise works; undefined where it doesn't, which is then reported. */
export function tried(exercise: Exercise, trials: Trials, report: Report): NumberQuestion[] | undefined {
  const questions: NumberQuestion[] = [];
  const unseen = new Set(exercise.kind === "number" ? exercise.slips.keys() : []);
  const most = exercise.draws.length === 0 ? 1 : MOST;
  for (let at = 0; at < most && (at < FEWEST || unseen.size > 0); at++) {
    const question = drawn(exercise, `trial ${at}`, trials, report);
    if (!question) return undefined;
    if (question.kind !== "number") continue;
    questions.push(question);
    for (const { index } of question.slips) unseen.delete(index);
  }
  for (const index of unseen) {
    const message = most === 1 ? "this slip leads nowhere" : `this slip leads nowhere in ${most} draws`;
    report.at(["slips", index, "is"], message, "mend its expression, or take it out");
  }
  return questions;
}

function drawn(exercise: Exercise, seed: string, trials: Trials, report: Report): Question | undefined {
  const cost = costOf(exercise);
  const afford = (): boolean => {
    trials.left -= cost;
    return trials.left >= 0;
  };
  try {
    return draw(exercise, seed, {}, afford);
  } catch (error) {
    if (trials.left < 0) return report.at([], "the chapter has more exercises than can be tried", "divide the chapter");
    if (error instanceof ExpressionError) return report.at([], error.message, error.mend);
    if (!(error instanceof DrawProblem)) throw error;
    const message = `no usable numbers in ${ATTEMPTS} draws: ${error.reason}`;
    return report.at([], message, "narrow the draws, the tolerance or the slips");
  }
}

/** What one attempt at drawing it costs. */
function costOf(exercise: Exercise): number {
  const deciding = exercise.kind === "choice" ? exercise.options.map(({ right }) => right) : [];
  const paths = exercise.kind === "number" ? [exercise.answer, ...exercise.slips.map(({ is }) => is)] : [];
  const all = [...deciding, ...paths, ...Object.values(exercise.work).map(({ is }) => is)];
  return all.reduce((sum, expression) => sum + expressionCost(expression), 3);
}

/** Digits after the point that an answer is printed with: enough to show what still counts as right. */
export function digitsFor(exercise: NumberExercise, answers: readonly number[]): number {
  const reach = Math.min(...answers.map((answer) => tolerance(exercise, answer)));
  return [0, 1, 2, 3].find((digits) => 10 ** -digits <= reach * (1 + 1e-9)) ?? 4;
}
