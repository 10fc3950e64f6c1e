import type { Argument, Formula } from "../../calc/catalogue/formula.ts";
import { catalogue } from "../../calc/index.ts";
import { ExpressionError } from "./error.ts";
import { checkField, noField, unknownName } from "./evaluate.ts";
import { calleeOf } from "./formulas.ts";
import {
  agreed,
  converts,
  inUnit,
  type Measured,
  measured,
  mendOf,
  powerUnit,
  productUnit,
  quotientUnit,
} from "./measured.ts";
import type { ArithmeticNode, CallNode, ComparisonNode, Node } from "./node.ts";
import type { PlainFunction } from "./plain.ts";

type UnitOf = (name: string) => string | undefined;

/**
 * The unit of an expression, and every slip of units, name or count in it.
 *
 * @param unitOf a unit of `convert`, 'plain', 'word' or 'boolean'; undefined for a name that is unknown
 * @returns unit: one of those, or undefined where the expression takes whatever unit is stated: bare numbers, and
 *   products and quotients of unlike units
 */
export function checkUnits(
  node: Node,
  unitOf: UnitOf,
  formulas: readonly Formula[] = catalogue,
): { unit: string | undefined; errors: ExpressionError[] } {
  const check = new Check(unitOf, formulas);
  const { unit } = check.of(node);
  return { unit, errors: check.errors };
}

class Check {
  readonly errors: ExpressionError[] = [];
  readonly #unitOf: UnitOf;
  readonly #formulas: readonly Formula[];

  constructor(unitOf: UnitOf, formulas: readonly Formula[]) {
    this.#unitOf = unitOf;
    this.#formulas = formulas;
  }

  of(node: Node): Measured {
    switch (node.kind) {
      case "number":
        return measured(node, undefined, true);
      case "word":
        return measured(node, "word");
      case "truth":
        return measured(node, "boolean");
      case "name":
        return this.#name(node);
      case "negative":
        return { ...this.#number(node.of), node };
      case "arithmetic":
        return this.#arithmetic(node);
      case "comparison":
        return this.#comparison(node);
      case "logic":
        this.#condition(node.left);
        this.#condition(node.right);
        return measured(node, "boolean");
      case "not":
        this.#condition(node.of);
        return measured(node, "boolean");
      case "call":
        return this.#call(node);
    }
  }

  #name(node: Node & { kind: "name" }): Measured {
    const unit = this.#unitOf(node.name);
    if (unit === undefined) this.errors.push(unknownName(node, (name) => this.#unitOf(name) !== undefined));
    return measured(node, unit);
  }

  /** A node where a number is due. */
  #number(node: Node): Measured {
    const found = this.of(node);
    if (found.unit !== "word" && found.unit !== "boolean") return found;
    const what = found.unit === "word" ? "a word" : "a condition";
    this.#wrong(node, `${node.text} is ${what} where a number is due`, "write a number or a quantity there");
    return measured(node, undefined);
  }

  #condition(node: Node): void {
    const { unit } = this.of(node);
    if (unit !== "boolean") this.#wrong(node, `${node.text} is no condition`, "write a comparison, such as bank > 30");
  }

  #arithmetic(node: ArithmeticNode): Measured {
    const left = this.#number(node.left);
    const right = this.#number(node.right);
    const bare = left.bare && right.bare;
    switch (node.sign) {
      case "+":
      case "-":
        return this.#agree(node, [left, right], `both sides of ${node.sign === "+" ? "+" : "−"}`);
      case "*":
        return measured(node, productUnit(left, right), bare);
      case "/":
        return measured(node, quotientUnit(left, right), bare);
      case "^":
        this.#pure(right, "an exponent");
        return measured(node, powerUnit(left, right), bare);
    }
  }

  #comparison(node: ComparisonNode): Measured {
    const equality = node.sign === "==" || node.sign === "!=";
    const sides = [node.left, node.right].map((side) => (equality ? this.of(side) : this.#number(side)));
    this.#agree(node, sides, `both sides of ${node.sign}`);
    return measured(node, "boolean");
  }

  #call(node: CallNode): Measured {
    const callee = this.#tried(() => calleeOf(node, this.#formulas));
    if (callee?.kind === "formula") return this.#formula(node, callee.formula);
    if (callee?.kind === "if") return this.#if(node);
    if (callee) return this.#plain(node, callee.plain);
    for (const each of node.args) this.of(each);
    return measured(node, undefined);
  }

  #if(node: CallNode): Measured {
    const [condition, then, otherwise] = node.args;
    this.#condition(condition!);
    this.#noField(node);
    return this.#agree(node, [this.of(then!), this.of(otherwise!)], "both values of if");
  }

  #plain(node: CallNode, { units }: PlainFunction): Measured {
    const found = node.args.map((each) => this.#number(each));
    this.#noField(node);
    const [first] = found as [Measured];
    switch (units) {
      case "keeps":
        return this.#agree(node, found, `the arguments of ${node.name}`);
      case "root":
        return measured(node, first.unit === "plain" ? "plain" : undefined, first.bare);
      case "pure":
        this.#pure(first, node.name);
        return measured(node, "plain");
      case "of angle":
        this.#fit(first, "deg", `${node.name} takes its angle`);
        return measured(node, "plain");
      case "to angle":
        this.#pure(first, node.name);
        return measured(node, "deg");
      case "to bearing":
        this.#agree(node, found, `the arguments of ${node.name}`);
        return measured(node, "deg");
    }
  }

  #formula(node: CallNode, formula: Formula): Measured {
    if (formula.name === "convert") return this.#convert(node, formula);
    for (const [i, each] of node.args.entries()) this.#argument(each, formula, i);
    this.#tried(() => checkField(node, formula));
    const { result } = formula;
    if (!("fields" in result)) return measured(node, result.unit);
    const own = node.field !== undefined && Object.hasOwn(result.fields, node.field);
    return measured(node, own ? result.fields[node.field!]!.unit : undefined);
  }

  #argument(node: Node, formula: Formula, i: number): void {
    const argument = formula.args[i]!;
    if (argument.unit === "word") this.#choice(node, formula.name, argument);
    else this.#fit(this.#number(node), argument.unit, `${formula.name} takes the ${argument.words}`);
  }

  #choice(node: Node, taker: string, { words, options = [] }: Argument): void {
    const choice = options.map((option) => `"${option}"`).join(" or ");
    const mend = choice ? `write ${choice}` : 'write a quoted word, such as "left"';
    if (this.of(node).unit !== "word") this.#wrong(node, `${taker} takes a word for the ${words}`, mend);
    else if (node.kind === "word" && options.length > 0 && !options.includes(node.value)) {
      this.#wrong(node, `${taker} knows no ${words} named ‘${node.value}’`, mend);
    }
  }

  /** The unit that stands as a word decides: of the value, and of the result. */
  #convert(node: CallNode, formula: Formula): Measured {
    const [value, from, to] = node.args;
    const found = this.#number(value!);
    this.#argument(from!, formula, 1);
    this.#argument(to!, formula, 2);
    this.#noField(node);
    for (const each of [from!, to!]) {
      if (each.kind !== "word")
        this.#wrong(each, "convert needs its units as quoted words", 'write convert(height, "ft", "m")');
    }
    if (from!.kind === "word") this.#fit(found, from!.value, "convert is told its value comes");
    if (from!.kind !== "word" || to!.kind !== "word") return measured(node, undefined);
    if (!converts(from!.value, to!.value)) {
      this.#wrong(
        to!,
        `${from!.value} does not convert into ${to!.value}`,
        `name a unit of the kind of ${from!.value}`,
      );
    }
    return measured(node, to!.value);
  }

  #agree(node: Node, found: readonly Measured[], what: string): Measured {
    const { unit, against } = agreed(found);
    const bare = found.every((each) => each.bare);
    if (!against) return measured(node, unit, bare);
    const first = found.find((each) => each.unit === unit)!;
    const message = `${what} must agree: ${first.node.text} is ${inUnit(unit)} and ${against.node.text} ${inUnit(against.unit)}`;
    this.#wrong(against.node, message, mendOf(against, unit!));
    return measured(node, undefined);
  }

  #pure(found: Measured, what: string): void {
    if (found.unit === undefined || found.unit === "plain") return;
    const message = `${what} takes a plain number, and ${found.node.text} is ${inUnit(found.unit)}`;
    this.#wrong(found.node, message, `divide it by another value in ${found.unit}`);
  }

  #fit(found: Measured, unit: string, what: string): void {
    if (found.unit === undefined || found.unit === unit) return;
    const wanted = unit === "plain" ? "as a plain number" : `in ${unit}`;
    this.#wrong(found.node, `${what} ${wanted}, and ${found.node.text} is ${inUnit(found.unit)}`, mendOf(found, unit));
  }

  #noField(node: CallNode): void {
    if (node.field !== undefined) this.errors.push(noField(node));
  }

  #tried<T>(attempt: () => T): T | undefined {
    try {
      return attempt();
    } catch (error) {
      if (!(error instanceof ExpressionError)) throw error;
      this.errors.push(error);
      return undefined;
    }
  }

  #wrong(node: Node, message: string, mend: string): void {
    this.errors.push(new ExpressionError(message, node.at, mend));
  }
}
