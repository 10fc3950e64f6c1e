import type { Position } from "../problem.ts";

const WINDOW = 2_000;

/**
 * Follows the tokens of a lexer through the text they came from, since the lexer gives no positions. Line prefixes
 * that it dropped (quotes' signs, lists' indentation) are passed over.
 */
export class Cursor {
  readonly #text: string;
  readonly #place: (offset: number) => Position;
  #at: number;

  /**
   * @param place where an offset of the text stands in its file
   */
  constructor(text: string, place: (offset: number) => Position, at = 0) {
    this.#text = text;
    this.#place = place;
    this.#at = at;
  }

  /** Where the next occurrence of a token's raw text starts, and what passes it. */
  find(raw: string): { position: Position; start: number; end: number } {
    const last = Math.min(this.#text.length, this.#at + WINDOW);
    for (let start = this.#at; start < last; start++) {
      if (this.#text[start] !== raw[0] && !(isSpace(raw[0]) && isSpace(this.#text[start]))) continue;
      const end = this.#match(raw, start);
      if (end !== undefined) return { position: this.#place(start), start, end };
    }
    return { position: this.#place(this.#at), start: this.#at, end: this.#at };
  }

  /** Moves to an offset that `find` gave. */
  moveTo(offset: number): void {
    this.#at = Math.max(this.#at, offset);
  }

  /** Moves past a token's raw text. */
  pass(raw: string): void {
    this.moveTo(this.find(raw).end);
  }

  #match(raw: string, start: number): number | undefined {
    const text = this.#text;
    let at = start;
    for (let i = 0; i < raw.length; i++) {
      if (raw[i] !== text[at]) at = this.#skip(raw[i]!, at);
      if (raw[i] === text[at]) at++;
      else if (!isSpace(raw[i])) return undefined;
    }
    return at;
  }

  /** Past what the lexer dropped before `sign`: a prefix at a line's start, space it narrowed, a table's backslash. */
  #skip(sign: string, from: number): number {
    const text = this.#text;
    if (sign === "|" && text.startsWith("\\|", from)) return from + 1;
    let at = from;
    while (text[at] === " " || text[at] === "\t" || text[at] === ">") at++;
    return at > from && startsLine(text, from) ? at : from;
  }
}

const isSpace = (sign: string | undefined) => sign === " " || sign === "\n" || sign === "\t";

function startsLine(text: string, at: number): boolean {
  let before = at - 1;
  while (text[before] === " " || text[before] === "\t" || text[before] === ">") before--;
  return before < 0 || text[before] === "\n";
}
