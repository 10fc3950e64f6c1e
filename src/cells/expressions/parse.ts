import { rooms } from "../facts.ts";
import { ExpressionError } from "./error.ts";
import type { ArithmeticSign, CallNode, ComparisonSign, Node } from "./node.ts";
import { type Token, tokens } from "./tokens.ts";

/** Characters an expression may have. */
export const LONGEST = 400;
/** Brackets, calls, signs and powers that may stand within each other. */
export const DEEPEST = 60;

/**
 * An expression as a tree. From loose to tight: or · and · not · comparisons (not chained) · + − · * / ·
 * signs · ^ (from the right). The same text gives the same tree.
 *
 * @throws {ExpressionError} on a mistake of writing, and on a text over 400 characters or nested over 60 deep
 */
export function parseExpression(text: string): Node {
  const known = read.get(text);
  if (known) return known;
  if (text.length > LONGEST) {
    const mend = "give parts of it names of their own under work";
    throw new ExpressionError(`an expression may have ${LONGEST} characters, not ${text.length}`, LONGEST, mend);
  }
  const node = new Parser(text).whole();
  if (read.size >= KEPT) read.clear();
  read.set(text, node);
  return node;
}

const read = new Map<string, Node>();
const KEPT = 2000;

const COMPARISONS: readonly string[] = ["<", "<=", ">", ">=", "==", "!="] satisfies ComparisonSign[];
const RESERVED: readonly string[] = ["and", "or", "not", "true", "false"];
const DOTTED: readonly string[] = rooms;

/** One pass over the tokens; each method reads one level of binding. */
class Parser {
  readonly #text: string;
  readonly #tokens: readonly Token[];
  #next = 0;
  #depth = 0;

  constructor(text: string) {
    this.#text = text;
    this.#tokens = tokens(text);
  }

  whole(): Node {
    if (this.#ended()) throw new ExpressionError("the expression is empty", 0, "write a value or a sum");
    const node = this.#either();
    if (!this.#ended()) throw this.#unexpected();
    return node;
  }

  #either(): Node {
    const at = this.#token.at;
    let left = this.#both();
    while (this.#taken("name", "or"))
      left = { kind: "logic", sign: "or", left, right: this.#both(), ...this.#from(at) };
    return left;
  }

  #both(): Node {
    const at = this.#token.at;
    let left = this.#not();
    while (this.#taken("name", "and"))
      left = { kind: "logic", sign: "and", left, right: this.#not(), ...this.#from(at) };
    return left;
  }

  #not(): Node {
    const at = this.#token.at;
    if (!this.#taken("name", "not")) return this.#comparison();
    return { kind: "not", of: this.#deeper(() => this.#not()), ...this.#from(at) };
  }

  #comparison(): Node {
    const at = this.#token.at;
    const left = this.#sum();
    const sign = this.#takenSign(COMPARISONS) as ComparisonSign | undefined;
    if (!sign) return left;
    const right = this.#sum();
    if (this.#token.kind === "sign" && COMPARISONS.includes(this.#token.text)) {
      throw new ExpressionError("comparisons can’t be chained", this.#token.at, "write a < b and b < c");
    }
    return { kind: "comparison", sign, left, right, ...this.#from(at) };
  }

  #sum(): Node {
    return this.#leftward(["+", "-"], () => this.#product());
  }

  #product(): Node {
    return this.#leftward(["*", "/"], () => this.#signed());
  }

  #leftward(signs: readonly ArithmeticSign[], part: () => Node): Node {
    const at = this.#token.at;
    let left = part();
    for (let sign = this.#takenSign(signs); sign; sign = this.#takenSign(signs)) {
      left = { kind: "arithmetic", sign: sign as ArithmeticSign, left, right: part(), ...this.#from(at) };
    }
    return left;
  }

  #signed(): Node {
    const at = this.#token.at;
    const sign = this.#takenSign(["-", "+"]);
    if (!sign) return this.#power();
    const of = this.#deeper(() => this.#signed());
    return sign === "+" ? of : { kind: "negative", of, ...this.#from(at) };
  }

  #power(): Node {
    const at = this.#token.at;
    const left = this.#atom();
    if (!this.#taken("sign", "^")) return left;
    const right = this.#deeper(() => this.#signed());
    return { kind: "arithmetic", sign: "^", left, right, ...this.#from(at) };
  }

  #atom(): Node {
    const token = this.#token;
    if (token.kind === "number") {
      this.#next++;
      return { kind: "number", value: Number(token.text), ...this.#from(token.at) };
    }
    if (token.kind === "word") {
      this.#next++;
      return { kind: "word", value: token.text, ...this.#from(token.at) };
    }
    if (token.kind === "name" && !["and", "or", "not"].includes(token.text)) return this.#named();
    if (!this.#taken("sign", "(")) throw this.#unexpected();
    const node = this.#deeper(() => this.#either());
    this.#close(token.at);
    return node;
  }

  #named(): Node {
    const { text: name, at } = this.#take();
    if (name === "true" || name === "false") return { kind: "truth", value: name === "true", ...this.#from(at) };
    if (this.#token.text === "(" && this.#token.kind === "sign") return this.#call(name, at);
    const parts = [name];
    while (this.#token.kind === "sign" && this.#token.text === ".") {
      if (!DOTTED.includes(name)) {
        const mend = "only aircraft., place. and technique. lead on by a dot, and a field follows a call: f(…).field";
        throw new ExpressionError(`${name} has no parts`, this.#token.at, mend);
      }
      this.#next++;
      parts.push(this.#name(`after ${parts.join(".")}.`));
    }
    return { kind: "name", name: parts.join("."), ...this.#from(at) };
  }

  #call(name: string, at: number): CallNode {
    const bracket = this.#take().at;
    const args: Node[] = [];
    this.#deeper(() => {
      if (this.#token.kind === "sign" && this.#token.text === ")") return;
      do args.push(this.#either());
      while (this.#taken("sign", ","));
    });
    this.#close(bracket);
    if (!this.#taken("sign", ".")) return { kind: "call", name, args, ...this.#from(at) };
    const field = this.#name(`after ${name}(…).`);
    return { kind: "call", name, args, field, ...this.#from(at) };
  }

  #name(where: string): string {
    const { kind, text, at } = this.#token;
    if (kind !== "name" || RESERVED.includes(text))
      throw new ExpressionError(`a name is missing ${where}`, at, "write it");
    this.#next++;
    return text;
  }

  #close(opened: number): void {
    if (this.#taken("sign", ")")) return;
    if (!this.#ended()) throw this.#unexpected();
    throw new ExpressionError("a bracket is never closed", opened, "close it with )");
  }

  #deeper<T>(inside: () => T): T {
    if (++this.#depth > DEEPEST) {
      const mend = "give parts of it names of their own under work";
      throw new ExpressionError(`nested over ${DEEPEST} deep`, this.#token.at, mend);
    }
    const result = inside();
    this.#depth--;
    return result;
  }

  #ended(): boolean {
    return this.#token.kind === "end";
  }

  get #token(): Token {
    return this.#tokens[this.#next]!;
  }

  #take(): Token {
    return this.#tokens[this.#next++]!;
  }

  #taken(kind: Token["kind"], text: string): boolean {
    if (this.#token.kind !== kind || this.#token.text !== text) return false;
    this.#next++;
    return true;
  }

  #takenSign(signs: readonly string[]): string | undefined {
    const { kind, text } = this.#token;
    if (kind !== "sign" || !signs.includes(text)) return undefined;
    this.#next++;
    return text;
  }

  /** Where a node stands that started at `at` and whose last token was taken just now. */
  #from(at: number): { at: number; text: string } {
    return { at, text: this.#text.slice(at, this.#tokens[this.#next - 1]!.end) };
  }

  #unexpected(): ExpressionError {
    const { kind, text, at } = this.#token;
    if (kind === "end") return new ExpressionError("the expression breaks off", at, "write what is missing at its end");
    if (text === ",")
      return new ExpressionError("a comma has no meaning here", at, "write numbers without commas: 1200, 0.5");
    if (text === ")")
      return new ExpressionError("this bracket closes nothing, or nothing stands before it", at, "take it out");
    const shown = kind === "word" ? `"${text}"` : text;
    const mend = kind === "sign" ? "write a value before it" : "write a sign such as * before it";
    return new ExpressionError(`${shown} has no meaning here`, at, mend);
  }
}
