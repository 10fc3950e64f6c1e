import type { Position, Problem } from "../problem.ts";
import { limits } from "./limits.ts";

/** A file's text with `\n` line ends alone, and where its offsets stand. */
export class Source {
  readonly text: string;
  readonly file: string;
  readonly #starts: number[] = [0];

  constructor(text: string, file: string) {
    this.text = text;
    this.file = file;
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) this.#starts.push(at + 1);
  }

  /** Line and column of an offset, both from 1. */
  place(offset: number): Position {
    let [low, high] = [0, this.#starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.#starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - this.#starts[low]! + 1 };
  }

  problem(offset: number, message: string, mend: string): Problem {
    return { file: this.file, ...this.place(offset), message, mend };
  }
}

const longLine = new RegExp(`^.{${limits.paragraph + 1},}$`, "gm");

// Control characters, half a surrogate pair, and marks that reverse the direction of writing: none can be seen.
const unseen =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** The text as it can be read, positions unchanged: line ends alike, no mark of byte order, nothing unseen, no endless line. */
export function readable(text: string, file: string): { source: Source; problems: Problem[] } {
  const lined = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const seen = lined.replace(unseen, "\uFFFD");
  const source = new Source(
    seen.replace(longLine, (line) => " ".repeat(line.length)),
    file,
  );
  const problems: Problem[] = [];
  const lines = new Set<number>();
  for (const { index, 0: sign } of lined.matchAll(unseen)) {
    const { line } = source.place(index);
    if (lines.has(line)) continue;
    lines.add(line);
    const code = sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
    problems.push(
      source.problem(
        index,
        `A character that can't be seen stands here (U+${code}).`,
        "Delete it and type the line anew.",
      ),
    );
  }
  for (const { index } of seen.matchAll(longLine)) {
    const message = `This line is longer than ${limits.paragraph.toLocaleString("en-GB")} characters.`;
    problems.push(source.problem(index, message, "Divide it, at a blank line between paragraphs."));
  }
  return { source, problems };
}
