import type { Formula } from "../../calc/catalogue/formula.ts";
import { catalogue } from "../../calc/index.ts";
import { compareNumbers, compareOthers } from "./comparing.ts";
import { ExpressionError } from "./error.ts";
import { calleeOf } from "./formulas.ts";
import { nearKnown } from "./near.ts";
import type {
  ArithmeticNode,
  ArithmeticSign,
  CallNode,
  ComparisonNode,
  LogicNode,
  NameNode,
  Node,
  Value,
} from "./node.ts";

export type ValueOf = (name: string) => Value | undefined;

/**
 * The value of an expression. A null argument gives null; `if`, `and` and `or` look only at what decides.
 *
 * @param named the value of a name, undefined where it is unknown
 * @throws {OutOfRange} from the formulas it calls
 * @throws {ExpressionError} for an unknown name, a wrong count of arguments, or a word where a number is due
 */
export function evaluate(node: Node, named: ValueOf, formulas: readonly Formula[] = catalogue): Value {
  const of: Of = (each) => evaluate(each, named, formulas);
  switch (node.kind) {
    case "number":
    case "word":
    case "truth":
      return node.value;
    case "name":
      return named(node.name) ?? nullOrUnknown(node, named);
    case "negative":
      return withNumbers([node.of], of, (value) => -value);
    case "arithmetic":
      return arithmetic(node, of);
    case "comparison":
      return comparison(node, of);
    case "logic":
      return logic(node, of);
    case "not":
      return truth(node.of, of, (value) => !value);
    case "call":
      return call(node, of, formulas);
  }
}

/** An unknown name, with the names it may have meant. */
export function unknownName(node: NameNode, isKnown: (name: string) => boolean): ExpressionError {
  const near = nearKnown(node.name, isKnown);
  const mend =
    near.length > 0
      ? `did you mean ${near.join(" or ")}?`
      : "give it a value under given or work, or mend its spelling";
  return new ExpressionError(`nothing is named ${node.name}`, node.at, mend);
}

type Of = (node: Node) => Value;

function nullOrUnknown(node: NameNode, named: ValueOf): null {
  if (named(node.name) === null) return null;
  throw unknownName(node, (name) => named(name) !== undefined);
}

const arithmeticOf: Readonly<Record<ArithmeticSign, (a: number, b: number) => number>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
};

const arithmetic = ({ sign, left, right }: ArithmeticNode, of: Of): Value =>
  withNumbers([left, right], of, (a, b) => arithmeticOf[sign](a, b));

function withNumbers(nodes: readonly Node[], of: Of, compute: (...numbers: number[]) => Value): Value {
  const numbers: number[] = [];
  for (const node of nodes) {
    const value = of(node);
    if (value === null) return null;
    if (typeof value !== "number") throw notANumber(node, value);
    numbers.push(value);
  }
  return compute(...numbers);
}

function notANumber(node: Node, value: string | boolean): ExpressionError {
  const what = typeof value === "string" ? `the word ‘${value}’` : "a condition";
  return new ExpressionError(
    `${node.text} is ${what} where a number is due`,
    node.at,
    "write a number or a quantity there",
  );
}

function comparison({ sign, left, right }: ComparisonNode, of: Of): Value {
  const [a, b] = [of(left), of(right)];
  if (a === null || b === null) return null;
  if (typeof a === "number" && typeof b === "number") return compareNumbers(sign, a, b);
  const answer = typeof a === typeof b ? compareOthers(sign, a, b) : undefined;
  if (answer !== undefined) return answer;
  const mend = "compare numbers with numbers; words are only equal (==) or not (!=)";
  throw new ExpressionError(`${left.text} ${sign} ${right.text} compares what can’t be compared`, left.at, mend);
}

function logic({ sign, left, right }: LogicNode, of: Of): Value {
  return truth(left, of, (first) => {
    const decided = sign === "or";
    return first === decided ? decided : truth(right, of, (second) => second);
  });
}

function truth(node: Node, of: Of, then: (value: boolean) => Value): Value {
  const value = of(node);
  if (value === null) return null;
  if (typeof value === "boolean") return then(value);
  throw new ExpressionError(`${node.text} is no condition`, node.at, "write a comparison, such as bank > 30");
}

function call(node: CallNode, of: Of, formulas: readonly Formula[]): Value {
  const callee = calleeOf(node, formulas);
  if (callee.kind === "formula") return callFormula(node, callee.formula, of);
  if (node.field !== undefined) throw noField(node);
  if (callee.kind === "plain") return withNumbers(node.args, of, callee.plain.compute);
  const [condition, then, otherwise] = node.args;
  return truth(condition!, of, (holds) => of(holds ? then! : otherwise!));
}

function callFormula(node: CallNode, formula: Formula, of: Of): Value {
  checkField(node, formula);
  const args: (number | string)[] = [];
  for (const [i, each] of node.args.entries()) {
    const value = of(each);
    if (value === null) return null;
    args.push(fitting(each, value, formula, i));
  }
  const result = (formula.call as (...args: readonly unknown[]) => unknown)(...args);
  if (node.field === undefined || result === null) return result as Value;
  return (result as Readonly<Record<string, Value>>)[node.field]!;
}

function fitting(node: Node, value: Exclude<Value, null>, formula: Formula, i: number): number | string {
  const { unit, words } = formula.args[i]!;
  if (unit !== "word") {
    if (typeof value === "number") return value;
    throw notANumber(node, value);
  }
  if (typeof value === "string") return value;
  const options = formula.args[i]!.options ?? [];
  const mend =
    options.length > 0 ? `write ${options.map((option) => `"${option}"`).join(" or ")}` : "write a quoted word";
  throw new ExpressionError(`${formula.name} takes a word for ${words}`, node.at, mend);
}

/**
 * That a call asks for a field where, and only where, its formula gives several.
 *
 * @throws {ExpressionError} otherwise
 */
export function checkField(node: CallNode, { name, result }: Formula): void {
  const fields = "fields" in result ? Object.keys(result.fields) : undefined;
  if (fields && (node.field === undefined || !fields.includes(node.field))) {
    const message = node.field === undefined ? `${name} gives several values` : `${name} gives no ${node.field}`;
    throw new ExpressionError(message, node.at, `write ${fields.map((field) => `${name}(…).${field}`).join(" or ")}`);
  }
  if (!fields && node.field !== undefined) throw noField(node);
}

/** The mistake of asking a single value for a field. */
export const noField = (node: CallNode): ExpressionError =>
  new ExpressionError(`${node.name} gives one value, without parts`, node.at, `leave out .${node.field}`);
