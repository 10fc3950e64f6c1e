import type { Formula } from "../../calc/catalogue/formula.ts";
import { looseNumber, printedParts } from "../printed.ts";
import { withoutNoise } from "./comparing.ts";
import { evaluate, type ValueOf } from "./evaluate.ts";
import { formulaOf } from "./formulas.ts";
import type { ArithmeticNode, CallNode, ComparisonSign, Node, Value } from "./node.ts";

/**
 * An expression with its numbers in, as it is written by hand: '180 / 3.081', '(95 − 80)²', '48 × tan 15°'.
 * A call of a formula stands as its value; `if`, `min` and `max` as the branch that is taken.
 *
 * @throws {OutOfRange} from the formulas it calls
 */
export const substituted = (node: Node, named: ValueOf, formulas: readonly Formula[]): string =>
  new Writer(named, formulas).of(node).text;

/** A number as given where it has no more than two digits after the point, else with four significant figures. */
export function substitutedNumber(value: number): string {
  const rounded = Math.round(withoutNoise(value * 100)) / 100;
  if (rounded !== value || Math.abs(value) >= 1e15) return looseNumber(value);
  return String(value + 0).replace("-", "−");
}

interface Written {
  readonly text: string;
  /** How tightly its outermost sign binds. */
  readonly binding: number;
}

const binding = {
  loose: 0,
  or: 1,
  and: 2,
  not: 3,
  comparison: 4,
  sum: 5,
  product: 6,
  sign: 7,
  power: 8,
  atom: 9,
} as const;
const signs = { "+": "+", "-": "−", "*": "×", "/": "/" } as const;
const comparisons: Readonly<Record<ComparisonSign, string>> = {
  ...{ "<": "<", "<=": "≤", ">": ">", ">=": "≥", "==": "=", "!=": "≠" },
};
const functionWords: ReadonlyMap<string, string> = new Map([
  ["asin", "arcsin"],
  ["acos", "arccos"],
  ["atan", "arctan"],
]);

class Writer {
  readonly #named: ValueOf;
  readonly #formulas: readonly Formula[];

  constructor(named: ValueOf, formulas: readonly Formula[]) {
    this.#named = named;
    this.#formulas = formulas;
  }

  of(node: Node): Written {
    switch (node.kind) {
      case "number":
        return atom(/e/.test(String(node.value)) ? looseNumber(node.value) : String(node.value));
      case "word":
      case "truth":
      case "name":
        return written(this.#value(node));
      case "negative":
        return { text: `−${this.#within(node.of, binding.sign, true)}`, binding: binding.sign };
      case "arithmetic":
        return this.#arithmetic(node);
      case "comparison":
        return this.#joined(node.left, comparisons[node.sign], node.right, binding.comparison);
      case "logic":
        return this.#joined(node.left, node.sign, node.right, binding[node.sign]);
      case "not":
        return { text: `not ${this.#within(node.of, binding.not)}`, binding: binding.not };
      case "call":
        return this.#call(node);
    }
  }

  #value(node: Node): Value {
    return evaluate(node, this.#named, this.#formulas);
  }

  /** A part, in brackets where it binds more loosely than `least`, or where its minus would follow another sign. */
  #within(node: Node, least: number, afterSign = false): string {
    const { text, binding } = this.of(node);
    return binding < least || (afterSign && text.startsWith("−")) ? `(${text})` : text;
  }

  #joined(left: Node, sign: string, right: Node, own: number): Written {
    const text = `${this.#within(left, own)} ${sign} ${this.#within(right, own + 1, true)}`;
    return { text, binding: own };
  }

  #arithmetic(node: ArithmeticNode): Written {
    const { sign, left, right } = node;
    if (sign === "^") return { text: this.#power(left, right), binding: binding.power };
    return this.#joined(left, signs[sign], right, sign === "+" || sign === "-" ? binding.sum : binding.product);
  }

  #power(base: Node, exponent: Node): string {
    const below = this.#within(base, binding.atom, true);
    if (exponent.kind === "number" && exponent.value === 2) return `${below}²`;
    if (exponent.kind === "number" && exponent.value === 3) return `${below}³`;
    return `${below}^${this.#within(exponent, binding.atom, true)}`;
  }

  #call(node: CallNode): Written {
    const [first, second] = node.args as [Node, Node?];
    switch (node.name) {
      case "if":
        return this.of(this.#value(first) ? second! : node.args[2]!);
      case "min":
      case "max":
        return this.of(this.#extreme(node));
      case "sin":
      case "cos":
      case "tan":
        return atom(`${node.name} ${this.#within(first, binding.atom, true)}°`);
      case "ln":
        return atom(`ln ${this.#within(first, binding.atom, true)}`);
      case "exp":
        return { text: `e^${this.#within(first, binding.atom, true)}`, binding: binding.power };
      case "sqrt":
        return atom(`√(${this.of(first).text})`);
      case "abs":
        return atom(`|${this.of(first).text}|`);
      case "floor":
      case "ceil":
        return loose(`${this.of(first).text} rounded ${node.name === "floor" ? "down" : "up"}`);
      case "round":
        return loose(`${this.of(first).text} to the nearest ${second ? this.of(second).text : "whole number"}`);
    }
    const formula = formulaOf(node.name, this.#formulas);
    if (formula) return written(this.#value(node), formula);
    return atom(
      `${functionWords.get(node.name) ?? node.name}(${node.args.map((each) => this.of(each).text).join(", ")})`,
    );
  }

  /** The argument that min or max settles on. */
  #extreme(node: CallNode): Node {
    const value = this.#value(node);
    return node.args.find((each) => this.#value(each) === value) ?? node.args[0]!;
  }
}

const atom = (text: string): Written => ({ text, binding: binding.atom });
const loose = (text: string): Written => ({ text, binding: binding.loose });

/** A value in its place; that of a formula with one digit more than the formula prints. */
function written(value: Value, formula?: Formula): Written {
  if (value === null) return atom("—");
  if (typeof value !== "number") return atom(String(value));
  const text = formula && formula.name !== "convert" ? rounded(value, formula.digits + 1) : substitutedNumber(value);
  return { text, binding: text.startsWith("−") ? binding.sign : binding.atom };
}

function rounded(value: number, digits: number): string {
  if (!Number.isFinite(value)) return looseNumber(value);
  const text = printedParts(value, { unit: "plain", digits }).number.replaceAll(",", "");
  return text.replace(/\.?0+$/, "");
}
