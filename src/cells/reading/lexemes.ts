import { Lexer } from "yaml";
import { limits } from "./limits.ts";

/** A mistake found in YAML's own signs: where it starts, what it is, and its mend. */
export interface Mistake {
  readonly at: number;
  readonly message: string;
  readonly mend: string;
  /** True where nothing around it can be used. */
  readonly stops?: boolean;
}

interface Lexeme {
  readonly text: string;
  readonly at: number;
  readonly scalar: boolean;
}

/** What YAML would take in silence and an author never means: comments after text, anchors, tags, documents, deep brackets. */
export function lexicalMistakes(text: string): Mistake[] {
  const mistakes: Mistake[] = [];
  let depth = 0;
  for (const lexeme of lexemesOf(text)) {
    if (lexeme.scalar) continue;
    const sign = lexeme.text[0];
    if (sign === "[" || sign === "{") depth++;
    if (sign === "]" || sign === "}") depth--;
    if (depth > limits.nesting) return [...mistakes, mistakeAt(lexeme, tooDeep)];
    const found = mistakeOf(lexeme, text);
    if (found) mistakes.push(mistakeAt(lexeme, found));
  }
  return mistakes;
}

type Words = readonly [message: string, mend: string, stops?: "stops"];

const mistakeAt = ({ at }: Lexeme, [message, mend, stops]: Words): Mistake => ({
  at,
  message,
  mend,
  stops: stops !== undefined,
});

const tooDeep: Words = [
  "Brackets stand too deep inside each other.",
  `Nest ${limits.nesting} of them at most.`,
  "stops",
];
const comment: Words = [
  "A comment after text on the same line would be dropped in silence.",
  "Put the comment on a line of its own, or the text in quotes if '#' belongs to it.",
];
const bySign: Readonly<Record<string, Words>> = {
  "&": ["An anchor (&) has no use here.", "Write the value out; put text that starts with '&' in quotes."],
  "*": ["An alias (*) has no use here.", "Write the value out; put text that starts with '*' in quotes.", "stops"],
  "!": ["A tag (!) has no use here.", "Write the plain value; put text that starts with '!' in quotes."],
  "?": [
    "A key after '?' has no use here.",
    "Write it as 'key: value'; put text that starts with '?' in quotes.",
    "stops",
  ],
  "%": ["A line that starts with '%' has no use here.", "Delete it.", "stops"],
};
const ofDocuments: Words = [
  "Only one document may stand here.",
  "Delete this line; the keys before and after it belong together.",
  "stops",
];

function mistakeOf({ text, at }: Lexeme, source: string): Words | undefined {
  if (text.startsWith("#")) return startsLine(source, at) ? undefined : comment;
  if (text === "---" || text === "...") return ofDocuments;
  return bySign[text[0] ?? ""];
}

function startsLine(source: string, at: number): boolean {
  let before = at - 1;
  while (source[before] === " ") before--;
  return before < 0 || source[before] === "\n";
}

const DOCUMENT = "\u0002";
const FLOW_END = "\u0018";
const SCALAR = "\u001F";

function* lexemesOf(text: string): Generator<Lexeme> {
  let at = 0;
  let scalar = false;
  for (const each of new Lexer().lex(text)) {
    if (each === DOCUMENT || each === FLOW_END || each === SCALAR) {
      scalar = each === SCALAR;
      continue;
    }
    yield { text: each, at, scalar };
    at += each.length;
    scalar = false;
  }
}
