import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Chapter } from "../cells/chapter.ts";
import { readCourse, readGlossary } from "../cells/course.ts";
import type { Term } from "../cells/known.ts";
import type { Problem } from "../cells/problem.ts";
import { readChapter } from "../cells/reading/index.ts";

/** The chapters folder as it stands on disk, with every problem in it. */
export interface Course {
  readonly parts: readonly Part[];
  readonly chapters: readonly Chapter[];
  readonly terms: readonly Term[];
  readonly problems: readonly Problem[];
}

interface Part {
  readonly title: string;
  readonly chapters: readonly { readonly name: string; readonly title: string }[];
}

/** Reads and checks everything under `folder`; never throws on what an author wrote. */
export function readFolder(folder: string): Course {
  const text = (name: string) => readFileSync(join(folder, name), "utf8");
  const course = readCourse(text("course.yaml"), "chapters/course.yaml");
  const glossary = readGlossary(text("glossary.md"), "chapters/glossary.md");
  const files = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "glossary.md");
  const chapters = files.map((name) => readChapter(text(name), `chapters/${name}`));
  return {
    parts: course.value?.parts ?? [],
    chapters: inOrder(chapters, course.value?.parts ?? []),
    terms: glossary.value ?? [],
    problems: [
      ...course.problems,
      ...glossary.problems,
      ...chapters.flatMap(({ problems }) => problems),
      ...twice(chapters),
    ],
  };
}

function inOrder(chapters: readonly Chapter[], parts: readonly Part[]): Chapter[] {
  const names = parts.flatMap((part) => part.chapters.map(({ name }) => name));
  return chapters.toSorted((a, b) => names.indexOf(a.meta.name) - names.indexOf(b.meta.name));
}

/** Exercise ids must be unique in the whole course: records keep them. */
function twice(chapters: readonly Chapter[]): Problem[] {
  const seen = new Map<string, string>();
  return chapters.flatMap(({ meta, exercises }) =>
    exercises.flatMap(({ id, line }) => {
      const before = seen.get(id);
      seen.set(id, meta.name);
      if (before === undefined || before === meta.name) return [];
      const file = `chapters/${meta.name}.md`;
      return [
        {
          file,
          line,
          column: 1,
          message: `The exercise id '${id}' stands in ${before}.md too.`,
          mend: "Give one of the two another id.",
        },
      ];
    }),
  );
}

/** Problems as an editor's problem list reads them, one to a paragraph. */
export const reportOf = (problems: readonly Problem[]): string =>
  problems
    .map(({ file, line, column, message, mend }) => `${file}:${line}:${column}  ${message}\n    ${mend}`)
    .join("\n");
