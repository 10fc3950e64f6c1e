import { readFileSync } from "node:fs";
import { join } from "node:path";
import { builtIn } from "../cells/course.ts";
import { readFolder, reportOf } from "./chapters-folder.ts";
import type { Page } from "./page.ts";
import { aircraftPage } from "./templates/aircraft.ts";
import { atlasPage } from "./templates/atlas.ts";
import { chapterPage } from "./templates/chapter.ts";
import { contentsPage } from "./templates/contents.ts";
import { formulasPage } from "./templates/formulas.ts";
import { glossaryPage } from "./templates/glossary.ts";
import { notesPage } from "./templates/notes.ts";

export interface Site {
  readonly pages: readonly Page[];
  readonly problems: readonly unknown[];
  /** The problems in words; empty where there are none. */
  readonly report: string;
}

/** Every page of the workbook whose root folder is given. */
export async function readSite(root: string): Promise<Site> {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const course = readFolder(join(root, "chapters"));
  const numbers = course.parts.flatMap((part) => part.chapters).map(({ name }) => name);
  const readable = course.chapters.filter(
    ({ meta }) => !course.problems.some(({ file }) => file === `chapters/${meta.name}.md`),
  );
  const shown = { ...course, chapters: readable };
  const pages = [
    contentsPage(shown, builtIn.aircraft, version),
    formulasPage(version),
    atlasPage(builtIn, version),
    glossaryPage(shown, version),
    ...aircraftPage(version),
    ...readable.flatMap((chapter) => [
      chapterPage(chapter, numbers.indexOf(chapter.meta.name) + 1, shown, builtIn, version),
      notesPage(chapter, shown, builtIn, version),
    ]),
  ];
  return { pages, problems: course.problems, report: reportOf(course.problems) };
}
