import { Lexer, type MarkedOptions, type Token, Tokenizer } from "marked";

/** Block tokens of Markdown, tables included, with live values, maths and side notes in them. */
export const blockTokens = (markdown: string): Token[] => [...lexer().lex(markdown)];

/** Inline tokens of a sentence. */
export const lineTokens = (markdown: string): Token[] => lexer().inlineTokens(markdown);

/** A sign that opens nothing: a brace without a name, a lone dollar. */
export interface StrayToken {
  readonly type: "stray";
  readonly raw: string;
  readonly text: string;
}

/** `[^label]` as lexed; the chapter's notes give it number and text. */
export interface NoteMarker {
  readonly type: "note";
  readonly raw: string;
  readonly label: string;
}

/** Raw HTML is read sign by sign, so that each tag is found; it is never passed on. */
class OurTokenizer extends Tokenizer {
  override html(): undefined {}
}

/**
 * Without the dialect's bare addresses, struck-out text and boxes to tick; with its tables. Links by reference are left
 * to the dialect, so that they can be named as problems.
 */
function lexer(): Lexer {
  const tokenizer = new OurTokenizer();
  const options: MarkedOptions = {
    gfm: false,
    tokenizer,
    extensions,
    hooks: mask as NonNullable<MarkedOptions["hooks"]>,
  };
  const made = new Lexer(options);
  tokenizer.rules = { ...tokenizer.rules, block: Lexer.rules.block.gfm, inline: Lexer.rules.inline.normal };
  return made;
}

const formula = String.raw`\$(?![\s$])((?:\\[\s\S]|[^\\$])*)(?<!\s)\$(?!\d)`;
const formulaHere = new RegExp(formula, "y");
const formulas = new RegExp(formula, "g");
const bracesHere = /\{([^{}\n]*)\}/y;
const noteHere = /\[\^([\w-]{1,40})\](?![(:])/y;
const name = /^[A-Za-z][A-Za-z0-9]*(?:\.[A-Za-z0-9]+)*$/;

const at = (pattern: RegExp, src: string): RegExpExecArray | null => {
  pattern.lastIndex = 0;
  return pattern.exec(src);
};

const stray = (raw: string): StrayToken => ({ type: "stray", raw, text: raw });

function live(src: string) {
  if (src[0] !== "{") return undefined;
  const [raw, inside = ""] = at(bracesHere, src) ?? ["{"];
  return name.test(inside) ? { type: "live", raw, name: inside } : stray(raw);
}

function maths(src: string) {
  if (src[0] !== "$") return undefined;
  if (src[1] === "$") return stray("$$");
  const found = at(formulaHere, src);
  if (found) return { type: "math", raw: found[0], tex: found[1]!, display: false };
  return /^\$\d/.test(src) ? { type: "text", raw: "$", text: "$" } : stray("$");
}

function note(src: string) {
  const found = src.startsWith("[^") ? at(noteHere, src) : null;
  return found ? { type: "note", raw: found[0], label: found[1]! } : undefined;
}

const extensions = {
  renderers: {},
  childTokens: {},
  inline: [live, maths, note],
  startInline: [(src: string) => src.search(/[{$]/)],
};

/** Stars and underscores within maths emphasise nothing. */
const mask = { emStrongMask: (src: string) => src.replace(formulas, (found) => `$${"a".repeat(found.length - 2)}$`) };
