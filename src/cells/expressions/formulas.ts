import type { Formula } from "../../calc/catalogue/formula.ts";
import { ExpressionError } from "./error.ts";
import { nearIn } from "./near.ts";
import type { CallNode } from "./node.ts";
import { IF_ARGS, type PlainFunction, plainFunctions } from "./plain.ts";

/** What a call's name stands for. */
export type Callee =
  | { readonly kind: "if" }
  | { readonly kind: "plain"; readonly plain: PlainFunction }
  | { readonly kind: "formula"; readonly formula: Formula };

/**
 * What a call calls, its arguments counted.
 *
 * @throws {ExpressionError} for an unknown function or a wrong count of arguments
 */
export function calleeOf(node: CallNode, formulas: readonly Formula[]): Callee {
  if (node.name === "if") {
    count(node, 3, 3, IF_ARGS);
    return { kind: "if" };
  }
  const plain = plainFunctions.get(node.name);
  if (plain) {
    count(node, plain.least, plain.most, plain.args);
    return { kind: "plain", plain };
  }
  const formula = formulaOf(node.name, formulas);
  if (!formula) throw unknownFunction(node, formulas);
  const least = formula.args.filter((argument) => argument.default === undefined).length;
  const names = formula.args.map(({ name, default: value }) =>
    value === undefined ? name : `${name} (${value} if left out)`,
  );
  count(node, least, formula.args.length, names);
  return { kind: "formula", formula };
}

/** The formula of that name, or nothing. */
export function formulaOf(name: string, formulas: readonly Formula[]): Formula | undefined {
  let byName = indexes.get(formulas);
  if (!byName) {
    byName = new Map(formulas.map((formula) => [formula.name, formula]));
    indexes.set(formulas, byName);
  }
  return byName.get(name);
}

const indexes = new WeakMap<readonly Formula[], ReadonlyMap<string, Formula>>();

function count(node: CallNode, least: number, most: number, names: readonly string[]): void {
  const given = node.args.length;
  if (given >= least && given <= most) return;
  const upTo = least === most ? `${least}` : most > least + 1 ? `${least} to ${most}` : `${least} or ${most}`;
  const message = `${node.name} takes ${upTo} argument${most === 1 ? "" : "s"}: ${names.join(", ")}; here it has ${given}`;
  throw new ExpressionError(
    message,
    node.at,
    `write ${node.name}(${names.map((name) => name.split(" (")[0]).join(", ")})`,
  );
}

function unknownFunction(node: CallNode, formulas: readonly Formula[]): ExpressionError {
  const near = nearIn(node.name, ["if", ...plainFunctions.keys(), ...formulas.map(({ name }) => name)]);
  const mend =
    near.length > 0 ? `did you mean ${near.join(" or ")}?` : "see the page Formulas for every function’s name";
  return new ExpressionError(`there is no function ${node.name}`, node.at, mend);
}
