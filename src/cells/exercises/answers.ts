import { catalogue, OutOfRange } from "../../calc/index.ts";
import { checkUnits, ExpressionError, evaluate, type Node, parseExpression, type Value } from "../expressions/index.ts";
import { beneath } from "../expressions/node.ts";
import type { Path } from "../reading/yaml.ts";
import type { Names } from "./names.ts";
import type { Report } from "./report.ts";

/** An expression as read. */
export interface Expression {
  readonly node: Node;
  /** Undefined where it takes whatever unit is stated. */
  readonly unit: string | undefined;
}

/** An expression whose names and units are checked; undefined where it has a mistake, which is then reported. */
export function readExpression(text: string, path: Path, names: Names, report: Report): Expression | undefined {
  const node = parsed(text, path, report);
  if (!node) return undefined;
  const { unit, errors } = checkUnits(node, names.unitOf);
  for (const error of errors) report.inExpression(path, error);
  return errors.length > 0 ? undefined : { node, unit };
}

/** A wrong path's expression: its units may be as wrong as it is, its names, counts and words may not. */
export function readSlip(text: string, path: Path, names: Names, report: Report): Node | undefined {
  const node = parsed(text, path, report);
  if (!node) return undefined;
  const error = mistakeIn(node, names.sampleOf);
  if (!error) return node;
  return report.inExpression(path, error);
}

function parsed(text: string, path: Path, report: Report): Node | undefined {
  try {
    return parseExpression(text);
  } catch (error) {
    if (error instanceof ExpressionError) return report.inExpression(path, error);
    throw error;
  }
}

/** The first mistake that shows when every part is tried with sample values, also parts that `if` would pass over. */
function mistakeIn(node: Node, sampleOf: (name: string) => Value | undefined): ExpressionError | undefined {
  for (const part of beneath(node)) {
    const mistake = mistakeIn(part, sampleOf);
    if (mistake) return mistake;
  }
  try {
    evaluate(node, sampleOf);
    return undefined;
  } catch (error) {
    if (error instanceof ExpressionError) return error;
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** Whether an expression gives a direction: a heading named or computed, or one with an angle added or taken away. */
export function givesDirection(node: Node, names: Names): boolean {
  if (node.kind === "name") return names.measureOf(node.name)?.circle ?? false;
  if (node.kind === "call") return callGivesDirection(node.name, node.field);
  if (node.kind !== "arithmetic" || (node.sign !== "+" && node.sign !== "-")) return false;
  const [left, right] = [givesDirection(node.left, names), givesDirection(node.right, names)];
  return node.sign === "+" ? left !== right : left && !right;
}

function callGivesDirection(name: string, field: string | undefined): boolean {
  const result = catalogue.find((formula) => formula.name === name)?.result;
  if (!result) return false;
  return ("fields" in result ? result.fields[field ?? ""]?.circle : result.circle) ?? false;
}

/** What an answer is called where its author gives no label: the formula's words, or the quantity's. */
export function labelOf(node: Node, names: Names): string {
  const words =
    node.kind === "call"
      ? catalogue.find((formula) => formula.name === node.name)?.words
      : node.kind === "name"
        ? names.measureOf(node.name)?.label
        : undefined;
  return words ? words.charAt(0).toUpperCase() + words.slice(1) : "Answer";
}
