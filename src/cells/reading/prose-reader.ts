import type { Token, Tokens } from "marked";
import type { LiveToken, MathToken, TermToken } from "../chapter.ts";
import type { Position, Problem } from "../problem.ts";
import type { Budget } from "./budget.ts";
import type { Cursor } from "./cursor.ts";
import type { ProseScope } from "./inline.ts";
import { limits } from "./limits.ts";
import { linkMistake } from "./links.ts";
import type { NoteMarker, StrayToken } from "./markdown.ts";
import { didYouMean } from "./near.ts";
import { texMistake } from "./tex.ts";
import { wordsOf } from "./token-words.ts";

type Scope = ProseScope & { readonly budget: Budget };
type Ours = LiveToken | MathToken | NoteMarker | StrayToken;

/** Walks the tokens of a piece of prose: turns links into terms and markers into side notes, and collects mistakes. */
export class ProseReader {
  readonly problems: Problem[] = [];
  readonly #cursor: Cursor;
  readonly #scope: Scope;
  #withoutLive: string | undefined;

  constructor(cursor: Cursor, scope: Scope) {
    this.#cursor = cursor;
    this.#scope = scope;
    this.#withoutLive = scope.withoutLive;
  }

  read(tokens: readonly Token[]): Token[] {
    return tokens.map((token) => this.#token(token));
  }

  #token(token: Token): Token {
    switch (token.type) {
      case "live":
      case "math":
      case "note":
      case "stray":
        return this.#ours(token as Ours);
      case "link":
        return this.#link(token as Tokens.Link);
      case "blockquote":
        return this.#quote(token as Tokens.Blockquote);
      case "heading":
        return this.#heading(token as Tokens.Heading);
      case "table":
        return this.#table(token as Tokens.Table);
      case "list":
        return { ...token, items: (token as Tokens.List).items.map((item) => this.#within(item)) };
      case "html":
      case "image":
      case "def":
      case "code":
        return this.#barred(token);
      case "text":
        if (!(token as Tokens.Text).tokens) this.#plain(token as Tokens.Text);
        return this.#within(token);
      default:
        return this.#within(token);
    }
  }

  /** A token with its children read; a leaf is passed. */
  #within<T extends Token>(token: T): T {
    const { tokens } = token as { readonly tokens?: readonly Token[] };
    if (tokens) return { ...token, tokens: this.read(tokens) };
    if (token.type !== "space") this.#cursor.pass(token.raw);
    return token;
  }

  #ours(token: Ours): Token {
    const { position, start } = this.#pass(token.raw);
    if (token.type === "stray") {
      this.#add(position, ...wordsOf(token));
      return token;
    }
    if (!this.#scope.budget.spend("references", 1)) {
      this.#tooMany(position);
      return token.type === "note" ? { type: "text", raw: token.raw, text: token.raw } : token;
    }
    if (token.type === "live") this.#live(token, position);
    if (token.type === "math") this.#maths(token, start);
    return token.type === "note" ? this.#note(token, position) : token;
  }

  #live({ name }: LiveToken, position: Position): void {
    const { names } = this.#scope;
    if (this.#withoutLive) {
      this.#add(
        position,
        `A live value can't stand in ${this.#withoutLive}.`,
        "Write the words out; a plain brace is written \\{.",
      );
    } else if (names && !names.has(name)) {
      const mend = `${didYouMean(name, [...names])} A plain brace is written \\{.`;
      this.#add(position, `{${name}} stands for nothing: no given or work has that name.`, mend);
    }
  }

  #maths({ tex }: MathToken, start: number): void {
    const mistake = this.#scope.budget.spend("formulas", 1) ? texMistake(tex, false) : undefined;
    if (mistake) this.#add(this.#scope.place(start + 1 + mistake.at), mistake.message, mistake.mend);
  }

  #note(token: NoteMarker, position: Position): Token {
    const { notes } = this.#scope;
    const used = notes?.use(token.label) ?? {
      message: "A side note can't stand here.",
      mend: "Write side notes in the chapter's own paragraphs.",
    };
    if ("message" in used) {
      this.#add(position, used.message, used.mend);
      return { type: "text", raw: token.raw, text: token.raw };
    }
    return { type: "note", raw: token.raw, number: used.number, tokens: [...used.tokens] };
  }

  #link(token: Tokens.Link): Token {
    const { position, start, end } = this.#cursor.find(token.raw);
    const affordable = this.#scope.budget.spend("references", 1);
    if (!affordable) this.#tooMany(position);
    this.#cursor.moveTo(start);
    const before = this.#withoutLive;
    this.#withoutLive ??= token.href.startsWith("term:") ? "a term" : undefined;
    const tokens = this.read(token.tokens);
    this.#withoutLive = before;
    this.#cursor.moveTo(end);
    const { text } = token;
    const mistake = affordable ? linkMistake(token, this.#scope, position) : undefined;
    if (mistake) this.#add(position, mistake.message, mistake.mend);
    if (!token.href.startsWith("term:")) return { ...token, tokens };
    return { type: "term", raw: token.raw, key: token.href.slice(5), text } satisfies TermToken;
  }

  /** A callout that the chapter's lines don't show as one is nested or indented. */
  #quote(token: Tokens.Blockquote): Token {
    const mark = /^\s*\[![A-Za-z]+\]/.exec(token.text)?.[0].trim();
    if (mark) {
      const mend = "Start it at the line's first column, outside lists and other quotes.";
      this.#add(
        this.#cursor.find(mark).position,
        "A callout can't stand inside a list or a quote, nor be indented.",
        mend,
      );
    }
    return this.#within(token);
  }

  #heading(token: Tokens.Heading): Token {
    const { position } = this.#cursor.find(token.raw.trimEnd());
    if (token.depth < 3) this.#add(position, ...wordsOf(token));
    const before = this.#withoutLive;
    this.#withoutLive = "a heading";
    const read = this.#within(token);
    this.#withoutLive = before;
    return read;
  }

  #table(token: Tokens.Table): Token {
    const row = (cells: Tokens.TableCell[]) => cells.map((cell) => ({ ...cell, tokens: this.read(cell.tokens) }));
    return { ...token, header: row(token.header), rows: token.rows.map(row) };
  }

  /** HTML, images, definitions and code: passed over and reported. */
  #barred(token: Token): Token {
    const { position } = this.#pass(token.raw.trim());
    this.#add(position, ...wordsOf(token));
    return token.type === "image" ? { type: "text", raw: token.raw, text: token.text } : token;
  }

  #plain({ raw }: Tokens.Text): void {
    const entity = /&(?:#\d{1,7}|#[xX][\da-fA-F]{1,6}|[A-Za-z][A-Za-z\d]{1,31});/.exec(raw);
    if (!entity) return;
    const { position } = this.#cursor.find(entity[0]);
    this.#add(position, `${entity[0]} stands for a character in HTML only.`, "Write the character itself.");
  }

  #pass(raw: string): { position: Position; start: number } {
    const { position, start, end } = this.#cursor.find(raw);
    this.#cursor.moveTo(end);
    return { position, start };
  }

  #tooMany(position: Position): void {
    const most = limits.references.toLocaleString("en-GB");
    const message = `This chapter holds more than ${most} live values, links, notes and formulas.`;
    if (!this.problems.some((problem) => problem.message === message))
      this.#add(position, message, "Divide the chapter.");
  }

  #add(position: Position, message: string, mend: string): void {
    this.problems.push({ file: this.#scope.file, ...position, message, mend });
  }
}
