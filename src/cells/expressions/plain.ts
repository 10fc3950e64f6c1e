import { within } from "../../calc/index.ts";
import { withoutNoise } from "./comparing.ts";

/**
 * How a plain function treats units: 'keeps' wants like arguments and gives their unit; 'root' keeps a plain number
 * plain; 'pure' takes and gives plain numbers; 'of angle' takes degrees; 'to angle' takes plain numbers, and
 * 'to bearing' like ones, and both give degrees.
 */
export type UnitRule = "keeps" | "root" | "pure" | "of angle" | "to angle" | "to bearing";

/** A function of numbers that is no formula of the catalogue. */
export interface PlainFunction {
  /** Its arguments in words. */
  readonly args: readonly string[];
  /** Arguments that must be given. */
  readonly least: number;
  readonly most: number;
  readonly units: UnitRule;
  readonly compute: (...numbers: number[]) => number;
}

const MANY = 20;
const STEP = { quantity: "step", unit: "plain", from: 0, to: Infinity, openFrom: true, openTo: true };

/** A whole number nearest to `value`, halves away from zero. */
const nearest = (value: number): number => Math.sign(value) * Math.floor(Math.abs(withoutNoise(value)) + 0.5);

const toStep = (value: number, step = 1): number => withoutNoise(nearest(value / within(STEP, step)) * step);

const radians = (angle: number): number => (angle * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

const one = (word: string, units: UnitRule, compute: (value: number) => number): PlainFunction => ({
  args: [word],
  least: 1,
  most: 1,
  units,
  compute,
});

const several = (compute: (...numbers: number[]) => number): PlainFunction => ({
  args: ["a", "b", "…"],
  least: 2,
  most: MANY,
  units: "keeps",
  compute,
});

/** The plain functions by name; `if` stands apart, since it looks at one branch only. */
export const plainFunctions: ReadonlyMap<string, PlainFunction> = new Map([
  ["abs", one("value", "keeps", Math.abs)],
  ["min", several(Math.min)],
  ["max", several(Math.max)],
  ["round", { args: ["value", "step (1 if left out)"], least: 1, most: 2, units: "keeps", compute: toStep }],
  ["floor", one("value", "keeps", (value) => Math.floor(withoutNoise(value)))],
  ["ceil", one("value", "keeps", (value) => Math.ceil(withoutNoise(value)))],
  ["sqrt", one("value", "root", Math.sqrt)],
  ["ln", one("value", "pure", Math.log)],
  ["exp", one("value", "pure", Math.exp)],
  ["sin", one("angle", "of angle", (angle) => Math.sin(radians(angle)))],
  ["cos", one("angle", "of angle", (angle) => Math.cos(radians(angle)))],
  ["tan", one("angle", "of angle", (angle) => Math.tan(radians(angle)))],
  ["asin", one("ratio", "to angle", (ratio) => degrees(Math.asin(ratio)))],
  ["acos", one("ratio", "to angle", (ratio) => degrees(Math.acos(ratio)))],
  ["atan", one("ratio", "to angle", (ratio) => degrees(Math.atan(ratio)))],
  ["atan2", { args: ["y", "x"], least: 2, most: 2, units: "to bearing", compute: (y, x) => degrees(Math.atan2(y, x)) }],
]);

/** Arguments of `if`, in words. */
export const IF_ARGS: readonly string[] = ["condition", "value if true", "value if not"];
