import { ExpressionError } from "./error.ts";

export interface Token {
  readonly kind: "number" | "word" | "name" | "sign" | "end";
  /** The sign in its plain form, a name, a number as written, or a word without its quotes. */
  readonly text: string;
  readonly at: number;
  readonly end: number;
}

/**
 * The tokens of an expression, an 'end' last.
 *
 * @throws {ExpressionError} at a character that has no meaning, or a word whose quote isn't closed
 */
export function tokens(text: string): Token[] {
  const found: Token[] = [];
  let at = skipSpace(text, 0);
  while (at < text.length) {
    const token = tokenAt(text, at);
    found.push(token);
    at = skipSpace(text, token.end);
  }
  found.push({ kind: "end", text: "", at, end: at });
  return found;
}

const NUMBER = /(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/y;
const NAME = /[A-Za-z_][A-Za-z0-9_]*/y;
const WORD = /"([^"]*)"|'([^']*)'/y;
const SIGN = /<=|>=|==|!=|\*\*|&&|\|\||[-+*/^<>(),.−×÷]/y;
const SPACE = /\s*/y;

const PLAIN: Readonly<Record<string, string>> = { "−": "-", "×": "*", "÷": "/" };

const MENDS: readonly (readonly [signs: string, mend: string])[] = [
  ["=", "write == to compare"],
  ["!", "write not, or != to compare"],
  ["&", "write and"],
  ["|", "write or, or abs(…) for a magnitude"],
  ["≤", "write <="],
  ["≥", "write >="],
  ["≠", "write !="],
  ["–—", "write - for minus"],
  ["·", "write * for times"],
  ["%", "write a hundredth: 0.15 for 15 %"],
  ["°", "leave the degree sign out"],
  ["√", "write sqrt(…)"],
  ["²³", "write ^2 or ^3"],
  ["“”‘’«»`", 'write straight quotes: "left"'],
  ["{}[]", "write round brackets, and names without braces"],
];

function tokenAt(text: string, at: number): Token {
  const number = matchAt(NUMBER, text, at);
  if (number) return numberToken(number[0], at);
  const name = matchAt(NAME, text, at);
  if (name) return { kind: "name", text: name[0], at, end: at + name[0].length };
  const word = matchAt(WORD, text, at);
  if (word) return { kind: "word", text: word[1] ?? word[2] ?? "", at, end: at + word[0].length };
  const sign = matchAt(SIGN, text, at);
  if (sign) return signToken(sign[0], at);
  throw strange(text, at);
}

function numberToken(text: string, at: number): Token {
  if (!Number.isFinite(Number(text)))
    throw new ExpressionError(`${text} is too large a number`, at, "write less of it");
  return { kind: "number", text, at, end: at + text.length };
}

function signToken(written: string, at: number): Token {
  if (written === "**") throw new ExpressionError("** has no meaning here", at, "write ^ for a power");
  if (written === "&&") throw new ExpressionError("&& has no meaning here", at, "write and");
  if (written === "||") throw new ExpressionError("|| has no meaning here", at, "write or");
  return { kind: "sign", text: PLAIN[written] ?? written, at, end: at + written.length };
}

function strange(text: string, at: number): ExpressionError {
  const sign = String.fromCodePoint(text.codePointAt(at)!);
  if (sign === '"' || sign === "'") {
    return new ExpressionError(`the word that starts with ${sign} has no end`, at, `close it with ${sign}`);
  }
  const mend = MENDS.find(([signs]) => signs.includes(sign))?.[1];
  return new ExpressionError(
    `${sign} has no meaning here`,
    at,
    mend ?? "take it out; names are of plain letters and digits",
  );
}

const skipSpace = (text: string, at: number): number => at + (matchAt(SPACE, text, at)?.[0].length ?? 0);

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}
