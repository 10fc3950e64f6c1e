import type { Chapter, Given } from "../cells/chapter.ts";
import { draw } from "../cells/exercises/index.ts";
import type { Value } from "../cells/expressions/index.ts";
import type { Facts, Known } from "../cells/known.ts";
import { printed } from "../cells/printed.ts";
import { inlineHtml } from "../cells/prose.ts";
import type { Shells } from "../cells/render.ts";
import { Worksheet } from "../cells/worksheet.ts";
import type { BuiltSheet } from "../widgets/built-sheet.ts";
import { figureShell } from "../widgets/figure-shell.ts";
import { frontispiece } from "../widgets/frontispiece.ts";
import { exerciseShell, liveShell, predictShell, workingRows, workingShell } from "../widgets/shells.ts";
import { builtExercise } from "./built-exercise.ts";
import type { Course } from "./chapters-folder.ts";
import { domOf } from "./drawing-document.ts";
import { proseContext } from "./prose-context.ts";
import { typeset } from "./typeset.ts";

/** Everything a chapter's page is made with: shells at the chapter's default values, and the sheet for its script. */
export function shellsOf(chapter: Chapter, { aircraft, place, technique }: Known, course: Course) {
  const worksheet = new Worksheet(chapter, { aircraft, place, ...(technique && { technique }) });
  const live = liveAt(chapter, worksheet);
  const prose = proseContext(course, "../", live);
  const holes = proseContext(course, "../");
  const exercises = chapter.exercises.map((exercise) => builtExercise(exercise, holes));
  const shells: Shells = {
    prose,
    figure: (cell) =>
      figureShell(cell, { given: chapter.given, aircraft, see: inlineHtml(cell.seeTokens, prose), document: domOf() }),
    exercise: ({ exercise }, number) => {
      const built = exercises.find((one) => one.exercise === exercise)!;
      return exerciseShell(built, draw(exercise, "first"), number);
    },
    working: (cell) => workingShell(cell, workingRows(cell.steps, valuesOf(worksheet)), inLine),
    predict: (cell) =>
      predictShell(cell, {
        ask: inlineHtml(cell.askTokens, prose),
        options: cell.options.map(({ tokens }) => inlineHtml(tokens, prose)),
        say: inlineHtml(cell.sayTokens, prose),
      }),
  };
  const { name, title } = chapter.meta;
  const sheet: BuiltSheet = {
    chapter: { name, title },
    given: chapter.given,
    work: chapter.work,
    aircraft: factsAlone(aircraft),
    place: factsAlone(place),
    technique: factsAlone(technique ?? { title: "", owner: "", facts: {} }),
    exercises,
  };
  return { shells, sheet, live, frontispiece: aboveTheTurn(chapter, worksheet) };
}

/** What pages need of a school's facts, and no more. */
const factsAlone = ({ title, owner, facts }: Facts): Facts => ({ title, owner, facts });

const valuesOf = (worksheet: Worksheet) => (name: string) => worksheet.use(name);
const inLine = (tex: string) => typeset(tex, false);

/** The shell of a live value, its widest text measured over the corners of what a reader can choose. */
function liveAt(chapter: Chapter, worksheet: Worksheet): (name: string) => string {
  const corners = cornersOf(chapter.given);
  const scratch = new Worksheet(chapter, worksheet);
  const widest = new Map<string, string>();
  for (const corner of corners) {
    scratch.setMany(corner);
    for (const work of chapter.work) {
      const text = textOf(scratch.value(work.name), work);
      if (text.length > (widest.get(work.name)?.length ?? 0)) widest.set(work.name, text);
    }
  }
  return (name) => {
    const given = chapter.given.find((one) => one.name === name);
    if (given) return liveShell(name, { given }, textOf(worksheet.value(name), given));
    const work = chapter.work.find((one) => one.name === name)!;
    return liveShell(name, { work, wide: widest.get(name) }, textOf(worksheet.value(name), work));
  };
}

function textOf(value: Value | undefined, measure: { unit: string; digits: number; circle: boolean }): string {
  return typeof value === "number" ? printed(value, measure) : String(value ?? "—");
}

/** The ends and the default of each given, in every combination; a chapter has few. */
function cornersOf(given: readonly Given[]): Record<string, number>[] {
  return given
    .slice(0, 5)
    .reduce<Record<string, number>[]>(
      (all, { name, from, to, value }) =>
        all.flatMap((corner) => [from, value, to].map((end) => ({ ...corner, [name]: end }))),
      [{}],
    );
}

/** A drawing for the title's margin where the chapter turns: its numbers stand in its caption. */
function aboveTheTurn({ given }: Chapter, worksheet: Worksheet): string {
  const rollRate = worksheet.value("aircraft.rollRate");
  const drawn = typeof rollRate === "number" ? frontispiece(given, rollRate) : "";
  return drawn && `<figure class="frontispiece">${drawn}</figure>`;
}
