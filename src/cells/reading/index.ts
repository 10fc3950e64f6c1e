import type { Chapter } from "../chapter.ts";
import { builtIn } from "../course.ts";
import type { Known } from "../known.ts";
import type { Problem } from "../problem.ts";
import { blocksOf } from "./blocks.ts";
import { CellReader } from "./cells.ts";
import { Draft } from "./draft.ts";
import { checkEnding } from "./ending.ts";
import { readFront } from "./front.ts";
import { frontMatterOf } from "./front-matter.ts";
import { limits } from "./limits.ts";
import { emptySheet } from "./sheet.ts";
import { readable } from "./source.ts";

/**
 * Reads a chapter: what is sound of it, and every mistake in it at its place, in the order of the file. Never throws,
 * whatever the text, and ends within a second.
 *
 * @param file the file's path, as problems name it; the chapter's name is its last part without '.md'
 * @param known what the chapter may refer to besides its own names
 */
export function readChapter(text: string, file: string, known: Known = builtIn): Chapter {
  if (typeof text !== "string") return refused(file, "This is no text.", "Open a Markdown file.");
  if (text.length > limits.file) {
    const most = limits.file.toLocaleString("en-GB");
    return refused(file, `The file is longer than ${most} characters.`, "Divide it into chapters.");
  }
  return read(text, file, known);
}

function read(text: string, file: string, known: Known): Chapter {
  const { source, problems } = readable(text, file);
  const draft = new Draft(source, nameOf(file), known);
  draft.problems.push(...problems);
  const front = frontMatterOf(source);
  draft.problems.push(...front.problems);
  if (front.read) draft.sheet = readFront(front.read, draft);
  new CellReader(draft).read(blocksOf(source, front.end));
  checkEnding(draft);
  const { sheet, cells, exercises } = draft;
  return {
    meta: { name: draft.name, ...sheet.meta },
    given: sheet.given,
    work: sheet.work,
    cells,
    exercises,
    problems: inOrder(draft.problems),
  };
}

function refused(file: string, message: string, mend: string): Chapter {
  const problem = { file, line: 1, column: 1, message, mend };
  const meta = { name: nameOf(file), ...emptySheet.meta };
  return { meta, given: [], work: [], cells: [], exercises: [], problems: [problem] };
}

const nameOf = (file: string): string => /([^/\\]*?)(?:\.md)?$/i.exec(file)![1]!;

/** In the order of the file, each once. */
function inOrder(problems: readonly Problem[]): Problem[] {
  const byPlace = problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
  const seen = new Set<string>();
  return byPlace.filter(({ line, column, message }) => {
    const key = `${line}:${column}:${message}`;
    return !seen.has(key) && seen.add(key);
  });
}
