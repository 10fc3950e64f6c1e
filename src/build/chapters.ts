import { resolve } from "node:path";
import { type Course, readFolder, reportOf } from "./chapters-folder.ts";

/** Checks all chapters and prints counts; with --json as one object. Exit code 1 where there is a problem. */
export async function main(options: readonly string[]): Promise<number> {
  const course = readFolder(resolve(import.meta.dirname, "../../chapters"));
  const counts = countsOf(course);
  if (options.includes("--json")) console.log(JSON.stringify(counts, null, 2));
  else console.log(inWords(counts, course));
  return course.problems.length > 0 ? 1 : 0;
}

/** What the chapters hold, by chapter and in all. */
export function countsOf({ chapters, problems }: Course) {
  const exercises = chapters.flatMap((chapter) => chapter.exercises);
  return {
    chapters: chapters.map((chapter) => ({
      name: chapter.meta.name,
      words: wordsIn(chapter),
      figures: chapter.cells.filter(({ kind }) => kind === "figure").length,
      exercises: chapter.exercises.length,
      fresh: chapter.exercises.filter(({ draws }) => draws.length > 0).length,
    })),
    words: chapters.reduce((sum, chapter) => sum + wordsIn(chapter), 0),
    figures: tally(
      chapters.flatMap(({ cells }) => cells.flatMap((cell) => (cell.kind === "figure" ? [cell.name] : []))),
    ),
    exercises: {
      count: exercises.length,
      byKind: tally(exercises.map(({ kind }) => kind)),
      byObjective: tally(exercises.map(({ objective }) => objective)),
    },
    problems,
  };
}

/** Words of running prose and callouts, as a reader counts them; fences aside. */
function wordsIn({ cells }: Course["chapters"][number]): number {
  const text = cells.flatMap((cell) =>
    cell.kind === "prose" || cell.kind === "callout" ? cell.tokens.map(({ raw }) => raw) : [],
  );
  return text
    .join(" ")
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}{]/u.test(word)).length;
}

function tally(names: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const name of names.toSorted()) counts[name] = (counts[name] ?? 0) + 1;
  return counts;
}

function inWords(counts: ReturnType<typeof countsOf>, { problems }: Course): string {
  const rows = counts.chapters.map(
    ({ name, words, figures, exercises, fresh }) =>
      `${name}: ${words} words, ${figures} figures, ${exercises} exercises, ${fresh} with fresh numbers`,
  );
  const kinds = Object.entries(counts.exercises.byKind).map(([kind, count]) => `${count} ${kind}`);
  const found = problems.length === 0 ? "No problems." : `${reportOf(problems)}\n\n${problems.length} problems.`;
  return [...rows, `Exercises by kind: ${kinds.join(", ") || "none"}.`, found].join("\n");
}
