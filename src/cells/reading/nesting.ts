import { limits } from "./limits.ts";

interface Container {
  readonly kind: "quote" | "list";
  /** The least column at which a line is inside it. */
  readonly content: number;
}

const marker = /[-+*](?=[ \t]|$)|\d{1,9}[.)](?=[ \t]|$)|>/y;

/** How deep lists and quotes of Markdown stand inside each other, line by line; it errs towards too deep. */
export class Nesting {
  #open: Container[] = [];

  /** Whether this line nests deeper than the limit. */
  tooDeep(line: string): boolean {
    let [at, column, level] = [0, 0, 0];
    while (this.#open.length <= limits.nesting) {
      while (line[at] === " " || line[at] === "\t") column += line[at++] === "\t" ? 4 - (column % 4) : 1;
      marker.lastIndex = at;
      const found = marker.exec(line)?.[0];
      if (found === undefined) return false;
      while (this.#open[level]?.kind === "list" && this.#open[level]!.content <= column) level++;
      level = this.#enter(found, level, column);
      at += found.length;
      column += found.length;
    }
    this.#open = [];
    return true;
  }

  #enter(found: string, level: number, column: number): number {
    const kind = found === ">" ? "quote" : "list";
    if (kind === "quote" && this.#open[level]?.kind === "quote") return level + 1;
    this.#open = this.#open.slice(0, level);
    this.#open.push({ kind, content: column + found.length + (kind === "list" ? 1 : 0) });
    return level + 1;
  }
}

/** The first line of a YAML text, counted from 0, whose maps and lists stand too deep inside each other by indentation. */
export function deepYamlLine(lines: readonly string[]): number | undefined {
  const indents: number[] = [];
  for (const [i, line] of lines.entries()) {
    const [, spaces = "", entries = ""] = /^( *)((?:[-?:] +)*)/.exec(line)!;
    if (line.length === spaces.length) continue;
    while (indents.length > 0 && indents.at(-1)! >= spaces.length) indents.pop();
    indents.push(spaces.length);
    if (indents.length + entries.replaceAll(" ", "").length > limits.nesting + 1) return i;
  }
  return undefined;
}
