import { type Unit, unitKind, units } from "../../calc/units.ts";
import type { Node } from "./node.ts";

/** A node with its unit as far as it has one. */
export interface Measured {
  readonly node: Node;
  /** Undefined where it takes whatever unit is stated. */
  readonly unit: string | undefined;
  /** Built of bare numbers alone: agrees with any unit, and multiplies without changing one. */
  readonly bare: boolean;
}

export const measured = (node: Node, unit: string | undefined, bare = false): Measured => ({ node, unit, bare });

const isPure = ({ unit, bare }: Measured): boolean => bare || unit === "plain";

/** The unit of a product: that of the factor that isn't a pure number. */
export function productUnit(left: Measured, right: Measured): string | undefined {
  if (left.unit === "plain" && right.unit === "plain") return "plain";
  if (left.bare && right.unit !== "plain") return right.unit;
  if (right.bare && left.unit !== "plain") return left.unit;
  if (left.unit === "plain") return right.unit;
  return right.unit === "plain" ? left.unit : undefined;
}

/** The unit of a quotient: that of the dividend over a pure number, 'plain' between like units. */
export function quotientUnit(left: Measured, right: Measured): string | undefined {
  if (left.unit !== undefined && left.unit === right.unit) return "plain";
  return isPure(right) && !(right.bare && left.unit === "plain") ? left.unit : undefined;
}

/** The unit of a power: a pure number stays one. */
export const powerUnit = (left: Measured, right: Measured): string | undefined =>
  left.unit === "plain" || (left.bare && right.unit === "plain") ? "plain" : undefined;

/** The first unit among several, and the first that is against it. */
export function agreed(found: readonly Measured[]): { unit: string | undefined; against: Measured | undefined } {
  const unit = found.find((each) => each.unit !== undefined)?.unit;
  return { unit, against: found.find((each) => each.unit !== undefined && each.unit !== unit) };
}

/** Whether one unit converts into another. */
export const converts = (from: string, into: string): boolean =>
  isUnit(from) && isUnit(into) && unitKind(from) === unitKind(into);

/** What an author may write in the place of a value of the wrong unit. */
export function mendOf({ node, unit }: Measured, wanted: string): string {
  if (unit !== undefined && converts(unit, wanted)) return `write convert(${node.text}, "${unit}", "${wanted}")`;
  if (wanted === "word") return 'write a quoted word: "left"';
  return wanted === "plain" ? "give a plain number there" : `give a value in ${wanted} there`;
}

/** 'in kt', 'a plain number', 'a word', 'a condition'. */
export function inUnit(unit: string | undefined): string {
  if (unit === "plain") return "a plain number";
  if (unit === "word") return "a word";
  if (unit === "boolean") return "a condition";
  return unit === undefined ? "in any unit" : `in ${unit}`;
}

const isUnit = (name: string): name is Unit => (units as readonly string[]).includes(name);
