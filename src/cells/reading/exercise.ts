import type { ExerciseCell } from "../chapter.ts";
import type { Exercise } from "../exercises/exercise.ts";
import { readExercise as readFence } from "../exercises/schema.ts";
import { expressionCost, wordsIn } from "./cost.ts";
import type { Draft } from "./draft.ts";
import { readInline } from "./inline.ts";
import type { Path, ReadYaml } from "./yaml.ts";

/** An exercise; its sentences are read as Markdown, too, so that a mistake in them stands in the list. */
export function readExercise(read: ReadYaml, draft: Draft): ExerciseCell | undefined {
  const { sheet, source, known, trials } = draft;
  for (const { path, markdown } of sentences(read.value)) {
    const scope = draft.scope((offset) => read.within(path, offset), { names: undefined });
    draft.problems.push(...readInline(markdown, scope).problems);
  }
  const objective = partAt(read.value, ["objective"]);
  if (typeof objective === "string") draft.served.add(objective);
  if (!sheet.readable) {
    draft.problems.push(...read.problems);
    return undefined;
  }
  if (!affordable(read, draft)) return undefined;
  const objectives = sheet.meta.objectives.map(({ code }) => code);
  const context = { file: source.file, known, objectives, sheet: [...sheet.given, ...sheet.work], trials };
  const { exercise, problems } = readFence(read, context);
  draft.problems.push(...problems);
  if (!exercise) return undefined;
  checkId(exercise, read, draft);
  draft.exercises.push(exercise);
  return { kind: "exercise", exercise };
}

function checkId({ id }: Exercise, read: ReadYaml, draft: Draft): void {
  const before = draft.exercises.find((each) => each.id === id);
  if (!before) return;
  draft.add(
    read.at(["id"]),
    `The exercise id '${id}' stands in line ${before.line}, too.`,
    "Give one of the two another id.",
  );
}

/** Whether the expressions of all exercises so far hold few enough names to look up, and calls to try. */
function affordable(read: ReadYaml, draft: Draft): boolean {
  const { budget } = draft;
  const written = expressions(read.value);
  const words = written.reduce((count, text) => count + wordsIn(text), 0);
  const calls = written.reduce((count, text) => count + expressionCost(text), 0);
  const able = [
    budget.spend("references", 0),
    budget.spend("exerciseWords", words),
    budget.spend("exerciseCalls", calls),
  ];
  if (!able.includes(false)) return true;
  draft.add(
    read.at([]),
    "The exercises of this chapter are too many, or take too long to compute.",
    "Divide the chapter.",
  );
  return false;
}

const computed = new Set(["answer", "is", "right"]);

function expressions(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    typeof each === "string" && computed.has(key) ? [each] : expressions(each),
  );
}

interface Sentence {
  readonly path: Path;
  readonly markdown: string;
}

/** Every text in an exercise that the reader sees. */
function sentences(value: unknown): Sentence[] {
  const under = (key: string) => Object.keys(partAt(value, [key]) ?? {}).map((each) => [key, each]);
  const paths: Path[] = [
    ["ask"],
    ["why"],
    ...under("hints"),
    ...under("items"),
    ...under("options").flatMap((path) => [path, [...path, "text"], [...path, "say"]]),
    ...under("slips").map((path) => [...path, "say"]),
  ];
  return paths.flatMap((path) => {
    const markdown = partAt(value, path);
    return typeof markdown === "string" ? [{ path, markdown }] : [];
  });
}

function partAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((part, key) => {
    const own = typeof part === "object" && part !== null && Object.hasOwn(part, key);
    return own ? (part as Record<string | number, unknown>)[key] : undefined;
  }, value);
}
