import { draw, type Exercise, mark, type Question } from "../cells/exercises/index.ts";
import type { ProseContext } from "../cells/prose.ts";
import type { BuiltExercise } from "../widgets/shells.ts";
import { sentenceHtml } from "./prose-context.ts";

/** An exercise with its sentences set as HTML whose `{name}` holes wait for numbers, and its formulas typeset. */
export function builtExercise(exercise: Exercise, prose: ProseContext): BuiltExercise {
  const set = (markdown: string) => sentenceHtml(markdown, prose);
  return {
    exercise,
    html: {
      ask: set(exercise.ask),
      hints: exercise.hints.map(set),
      why: set(exercise.why),
      options: Object.fromEntries(itemsOf(exercise).map(({ key, text }) => [key, set(text)])),
      say: Object.fromEntries(saysOf(exercise).map(([key, say]) => [key, set(say)])),
    },
    formulas: Object.fromEntries(
      formulasOf(exercise).map((tex) => [tex, prose.typeset(`\\displaystyle ${tex}`, false)]),
    ),
  };
}

function itemsOf(exercise: Exercise): readonly { key: string; text: string }[] {
  if (exercise.kind === "choice") return exercise.options;
  return exercise.kind === "order" ? exercise.items : [];
}

function saysOf(exercise: Exercise): [string, string][] {
  if (exercise.kind === "choice") return exercise.options.map(({ key, say }) => [key, say]);
  return exercise.slips.map(({ say }, i) => [`slip:${i}`, say]);
}

/** All TeX that a working of this exercise can show: the answer's rows and those of every slip's path. */
function formulasOf(exercise: Exercise): string[] {
  const questions = Array.from({ length: 20 }, (_, i) => draw(exercise, `formulas-${i}`));
  const rows = questions.flatMap((question) => repliesTo(question).flatMap((reply) => mark(question, reply).working));
  return [...new Set(rows.flatMap(({ symbol, tex }) => [symbol, tex].filter((one) => one !== undefined)))];
}

const repliesTo = (question: Question): string[] =>
  question.kind === "number" ? [question.printed["answer"]!, ...question.slips.map(({ value }) => String(value))] : [];
