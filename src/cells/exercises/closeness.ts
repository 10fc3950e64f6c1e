import { convert, type Unit } from "../../calc/index.ts";
import type { NumberExercise } from "./exercise.ts";

/** What decides how near two numbers are to each other. */
export type Compared = Pick<NumberExercise, "unit" | "circle" | "signIgnored" | "within">;

/**
 * Replies computed by hand and answers computed here may differ in their last bits: only what lies further out than
 * this share of the tolerance is outside.
 */
const ROUNDING = 1e-9;

/**
 * A drawn question must be accepted by every engine or by none, and sines differ in their last bit between engines.
 * Tolerances and distances are round numbers, so a distance that equals the tolerance is common, and one that lies a
 * millionth beyond it hardly ever is: there the line between accepted and drawn again is drawn.
 */
const GUARD = 1e-6;

/** How far apart two numbers are: on the circle for headings, by size alone where the sign is ignored. */
export function distance(
  { circle, signIgnored }: Pick<Compared, "circle" | "signIgnored">,
  a: number,
  b: number,
): number {
  if (signIgnored) return Math.abs(Math.abs(a) - Math.abs(b));
  if (!circle) return Math.abs(a - b);
  const apart = Math.abs(a - b) % 360;
  return Math.min(apart, 360 - apart);
}

/** How far from the answer is still right, in the exercise's unit. */
export function tolerance({ within, unit }: Pick<Compared, "within" | "unit">, answer: number): number {
  if ("percent" in within) return (Math.abs(answer) * within.percent) / 100;
  return difference(within.value, within.unit, unit);
}

/** Whether a value counts as another; `reach` is the tolerance. */
export const meets = (compared: Compared, value: number, target: number, reach: number): boolean =>
  distance(compared, value, target) <= reach * (1 + ROUNDING);

/** Whether two values are too near each other to tell a reply of one from a reply of the other. */
export const collides = (compared: Compared, a: number, b: number, reach: number): boolean =>
  distance(compared, a, b) <= reach * (1 + GUARD);

/** A difference in another unit; a temperature's zero plays no part in it. */
function difference(value: number, from: string, to: string): number {
  if (from === to) return value;
  const [source, target] = [from as Unit, to as Unit];
  return convert(value, source, target) - convert(0, source, target);
}
