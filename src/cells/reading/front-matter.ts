import type { Problem } from "../problem.ts";
import type { Source } from "./source.ts";
import { type ReadYaml, readYaml } from "./yaml.ts";

/** The lines between `---` at a file's start, read; `end` is where the chapter's text begins. */
export function frontMatterOf(source: Source): { read?: ReadYaml; end: number; problems: Problem[] } {
  const { text, file } = source;
  const first = /^---[ \t]*(?:\n|$)/.exec(text);
  if (!first) {
    const message = "The chapter has no front matter.";
    return {
      end: 0,
      problems: [source.problem(0, message, "Start the file with '---', its keys (title, code …), and '---' again.")],
    };
  }
  const from = first[0].length;
  const close = closingLine(text, from);
  if (!close) {
    const message = "The front matter isn't closed.";
    return {
      end: text.length,
      problems: [source.problem(0, message, "Put '---' on a line of its own after its last key.")],
    };
  }
  const read = readYaml(text.slice(from, close.at), { file, ...source.place(from) });
  return { read, end: close.end, problems: [] };
}

function closingLine(text: string, from: number): { at: number; end: number } | undefined {
  for (let at = from; at < text.length; ) {
    const end = text.indexOf("\n", at);
    const line = text.slice(at, end < 0 ? undefined : end);
    if (line.trimEnd() === "---") return { at, end: end < 0 ? text.length : end + 1 };
    at = end < 0 ? text.length : end + 1;
  }
  return undefined;
}
