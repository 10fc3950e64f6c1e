import type { Formula } from "../../calc/catalogue/formula.ts";
import { evaluate, type ValueOf } from "./evaluate.ts";
import { formulaOf } from "./formulas.ts";
import { beneath, type CallNode, type Node } from "./node.ts";

/** A call of a formula within an expression. */
export interface FormulaCall {
  readonly node: CallNode;
  readonly formula: Formula;
  /** False where the value of the expression doesn't look at it. */
  readonly taken: boolean;
}

/**
 * Calls of formulas in an expression, innermost first, each text once. Their number and order don't depend on values.
 *
 * @throws {OutOfRange} where a condition can't be decided
 */
export function formulaCalls(node: Node, named: ValueOf, formulas: readonly Formula[]): FormulaCall[] {
  const calls = new Map<string, FormulaCall>();
  const visit = (each: Node, taken: boolean): void => {
    for (const [i, part] of beneath(each).entries()) visit(part, taken && looksAt(each, i, named, formulas));
    const formula = each.kind === "call" ? formulaOf(each.name, formulas) : undefined;
    if (each.kind !== "call" || !formula) return;
    calls.set(each.text, { node: each, formula, taken: taken || (calls.get(each.text)?.taken ?? false) });
  };
  visit(node, true);
  return [...calls.values()];
}

/** Whether the value of a node depends on its part of that number. */
function looksAt(node: Node, part: number, named: ValueOf, formulas: readonly Formula[]): boolean {
  if (part === 0) return true;
  if (node.kind === "logic") return evaluate(node.left, named, formulas) === (node.sign === "and");
  if (node.kind !== "call" || node.name !== "if") return true;
  return evaluate(node.args[0]!, named, formulas) === (part === 1);
}
