import type { Source } from "./source.ts";

/** What the lines of a chapter are, from its first line after the front matter; offsets are into the file. */
export type Block = { readonly at: number } & (
  | { readonly kind: "heading"; readonly depth: number; readonly text: string; readonly textAt: number }
  | {
      readonly kind: "fence";
      readonly info: string;
      readonly body: string;
      readonly bodyAt: number;
      readonly closed: boolean;
    }
  | {
      readonly kind: "callout";
      readonly tone: string;
      readonly title: string;
      readonly titleAt: number;
      readonly body: string;
      readonly bodyAt: number;
    }
  | { readonly kind: "note"; readonly label: string; readonly text: string; readonly textAt: number }
  | { readonly kind: "maths"; readonly tex: string; readonly texAt: number; readonly closed: boolean }
  | { readonly kind: "prose"; readonly text: string }
);

/** A fence with what a cell reads in it. */
export type Fence = Extract<Block, { kind: "fence" }>;

/** Splits a file, from an offset on, into its blocks. */
export function blocksOf(source: Source, from: number): Block[] {
  return new Splitter(source.text, from).split();
}

type Start = (line: string) => Block | undefined;

const fenceStart = /^(`{3,}(?=[^`]*$)|~{3,})(.*)$/;
const noteStart = /^\[\^([\w-]{1,40})\]:[ \t]*/;
const calloutStart = /^> ?\[!([A-Za-z]+)\][ \t]*/;

class Splitter {
  readonly #text: string;
  #at: number;
  #proseFrom: number | undefined;
  readonly #blocks: Block[] = [];

  constructor(text: string, from: number) {
    this.#text = text;
    this.#at = from;
  }

  split(): Block[] {
    const starts: readonly Start[] = [this.#heading, this.#fence, this.#callout, this.#note, this.#maths];
    while (this.#at < this.#text.length) {
      const [from, line] = [this.#at, this.#line()];
      const block = isStart(line)
        ? starts.reduce<Block | undefined>((found, start) => found ?? start(line), undefined)
        : undefined;
      if (block) this.#blocks.push(block);
      else {
        this.#proseFrom ??= from;
        this.#at = this.#next(from);
      }
    }
    this.#endProse(this.#text.length);
    return this.#blocks;
  }

  #line = (at = this.#at): string => {
    const end = this.#text.indexOf("\n", at);
    return this.#text.slice(at, end < 0 ? undefined : end);
  };

  #next(at: number): number {
    const end = this.#text.indexOf("\n", at);
    return end < 0 ? this.#text.length : end + 1;
  }

  /** Ends the prose before a block that starts here, and moves to where the block ends. */
  #take(end: number): number {
    const at = this.#at;
    this.#endProse(at);
    this.#at = end;
    return at;
  }

  #endProse(end: number): void {
    const from = this.#proseFrom;
    this.#proseFrom = undefined;
    if (from === undefined) return;
    const text = this.#text.slice(from, end);
    const blank = /^(?:[ \t]*\n)*/.exec(text)![0].length;
    if (text.trim() !== "") this.#blocks.push({ kind: "prose", at: from + blank, text: text.slice(blank) });
  }

  #heading: Start = (line) => {
    const depth = line.startsWith("##") ? 2 : 1;
    if (line[0] !== "#" || line[depth] === "#" || (line.length > depth && !/\s/.test(line[depth]!))) return undefined;
    const at = this.#take(this.#next(this.#at));
    const text = withoutClosing(line.slice(depth));
    return {
      kind: "heading",
      at,
      depth,
      text: text.trim(),
      textAt: at + depth + text.length - text.trimStart().length,
    };
  };

  #fence: Start = (line) => {
    const [, signs, info = ""] = fenceStart.exec(line) ?? [];
    if (!signs) return undefined;
    const bodyAt = this.#next(this.#at);
    let end = bodyAt;
    while (end < this.#text.length && !closes(this.#line(end), signs) && !opensAnother(this.#line(end), signs))
      end = this.#next(end);
    const closed = end < this.#text.length && closes(this.#line(end), signs);
    const at = this.#take(closed ? this.#next(end) : end);
    return { kind: "fence", at, info: info.trim(), body: this.#text.slice(bodyAt, end), bodyAt, closed };
  };

  #callout: Start = (line) => {
    const [mark, tone] = calloutStart.exec(line) ?? [];
    if (!mark || !tone) return undefined;
    const bodyAt = this.#next(this.#at);
    const end = this.#run(bodyAt);
    const at = this.#take(end);
    return {
      kind: "callout",
      at,
      tone,
      title: line.slice(mark.length).trim(),
      titleAt: at + mark.length,
      body: this.#text.slice(bodyAt, end),
      bodyAt,
    };
  };

  #note: Start = (line) => {
    const [mark, label] = noteStart.exec(line) ?? [];
    if (!mark || !label) return undefined;
    const end = this.#run(this.#next(this.#at));
    const at = this.#take(end);
    return {
      kind: "note",
      at,
      label,
      text: this.#text.slice(at + mark.length, end).trimEnd(),
      textAt: at + mark.length,
    };
  };

  /** `$$` on lines of its own around a formula, or at both ends of one line. */
  #maths: Start = (line) => {
    if (!line.startsWith("$$")) return undefined;
    const one = line.trimEnd();
    const texAt = this.#at + 2;
    if (one.length > 4 && one.endsWith("$$") && one.indexOf("$$", 2) === one.length - 2)
      return { kind: "maths", at: this.#take(this.#next(this.#at)), tex: one.slice(2, -2), texAt, closed: true };
    if (one !== "$$") return undefined;
    const end = this.#formulaEnd(this.#next(this.#at));
    const closed = this.#line(end).trimEnd() === "$$";
    const at = this.#take(closed ? this.#next(end) : end);
    return { kind: "maths", at, tex: this.#text.slice(texAt, end), texAt, closed };
  };

  /** The line that closes a formula or, before the next block, the first blank one. */
  #formulaEnd(from: number): number {
    let blank: number | undefined;
    let end = from;
    for (; end < this.#text.length; end = this.#next(end)) {
      const line = this.#line(end);
      if (line.startsWith("$$")) return end;
      if (isStart(line)) break;
      if (line.trim() === "") blank ??= end;
    }
    return blank ?? end;
  }

  /** The end of the lines from an offset on that no blank line and no other block's start interrupts. */
  #run(from: number): number {
    let end = from;
    while (end < this.#text.length) {
      const line = this.#line(end);
      if (line.trim() === "" || (line[0] !== ">" && isStart(line)) || calloutStart.test(line)) break;
      end = this.#next(end);
    }
    return end;
  }
}

/** Whether a block other than prose may start with this line. */
const isStart = (line: string): boolean => /^(?:#{1,2}(?:\s|$)|```|~~~|> ?\[!|\[\^|\$\$)/.test(line);

function closes(line: string, signs: string): boolean {
  const bare = line.trim();
  return bare.length >= signs.length && line.search(/\S/) < 4 && bare === signs[0]!.repeat(bare.length);
}

/** A fence that opens where this one should have been closed. */
const opensAnother = (line: string, signs: string): boolean =>
  line.startsWith(signs) && /^[`~]+[ \t]*[a-z]/.test(line) && fenceStart.test(line);

/** A heading's text without the signs that may close it. */
function withoutClosing(text: string): string {
  const whole = text.trimEnd();
  let end = whole.length;
  while (whole[end - 1] === "#") end--;
  return end < whole.length && (end === 0 || /\s/.test(whole[end - 1]!)) ? whole.slice(0, end) : whole;
}
