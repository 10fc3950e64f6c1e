import type { ExerciseCell } from "../chapter.ts";
import { readExercise as readFence } from "../exercises/schema.ts";
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
  const objectives = sheet.meta.objectives.map(({ code }) => code);
  const context = { file: source.file, known, objectives, sheet: [...sheet.given, ...sheet.work], trials };
  const { exercise, problems } = readFence(read, context);
  draft.problems.push(...problems);
  if (!exercise) return undefined;
  const before = draft.exercises.find(({ id }) => id === exercise.id);
  if (before) {
    const message = `The exercise id '${exercise.id}' stands in line ${before.line}, too.`;
    draft.add(read.at(["id"]), message, "Give one of the two another id.");
  }
  draft.exercises.push(exercise);
  return { kind: "exercise", exercise };
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
