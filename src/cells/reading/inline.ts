import type { Token } from "marked";
import type { Known } from "../known.ts";
import type { Position, Problem } from "../problem.ts";
import { Budget } from "./budget.ts";
import { Cursor } from "./cursor.ts";
import { excessOf } from "./excess.ts";
import { blockTokens, lineTokens } from "./markdown.ts";
import type { Notes } from "./notes.ts";
import { ProseReader } from "./prose-reader.ts";

/** Where Markdown stands and what it may refer to. */
export interface ProseScope {
  readonly file: string;
  /** Where a character of the text stands in the file. */
  readonly place: (offset: number) => Position;
  /** Names that `{name}` may stand for; left out, they are not checked. */
  readonly names?: ReadonlySet<string> | undefined;
  /** Why `{name}` may not stand here at all: 'a heading'. */
  readonly withoutLive?: string | undefined;
  readonly known: Pick<Known, "terms" | "chapters">;
  /** The chapter's side notes; left out, none may stand here. */
  readonly notes?: Notes | undefined;
  readonly budget?: Budget | undefined;
  /** Told of each link to a section of a chapter, so that it can be checked once all sections are known. */
  readonly onAnchor?: ((chapter: string, section: string, position: Position) => void) | undefined;
}

interface Read {
  readonly tokens: Token[];
  readonly problems: Problem[];
}

/** The inline tokens of one sentence, and every mistake in it. */
export const readInline = (markdown: string, scope: ProseScope): Read => read(markdown, markdown, lineTokens, scope);

/**
 * The block tokens of a piece of Markdown, and every mistake in it.
 *
 * @param written the text as it stands in the file, where `markdown` lacks a quote's signs
 */
export const readBlocks = (markdown: string, scope: ProseScope, written = markdown): Read =>
  read(markdown, written, blockTokens, scope);

function read(markdown: string, written: string, lex: (text: string) => Token[], scope: ProseScope): Read {
  const budget = scope.budget ?? new Budget();
  const excess = excessOf(markdown, budget);
  if (excess) {
    const { at, message, mend } = excess;
    return { tokens: [], problems: [{ file: scope.file, ...scope.place(at), message, mend }] };
  }
  const reader = new ProseReader(new Cursor(written, scope.place), { ...scope, budget });
  return { tokens: reader.read(lex(markdown)), problems: reader.problems };
}
