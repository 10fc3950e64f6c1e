/** The groups of the formula sheet, in its order. */
export const topics = [
  "units",
  "atmosphere",
  "airspeed",
  "turns",
  "leads",
  "vertical",
  "altimetry",
  "compass",
  "wind",
  "holding",
  "radio",
  "vestibular",
  "panel",
] as const;
export type Topic = (typeof topics)[number];

/** How an argument or a result is measured: a unit of `convert`, a pure number, or a word out of a list. */
export type Measure = string;

/** One argument of a formula in its positional form. */
export interface Argument {
  /** The name of the function's parameter. */
  readonly name: string;
  /** What it is, in lower case and without its unit: 'true airspeed'. */
  readonly words: string;
  /** Its letter in `tex`, as TeX. */
  readonly symbol: string;
  /** A unit that `convert` knows, 'kg/m3', 'plain' for a pure number, or 'word'. */
  readonly unit: Measure;
  /** Limits, as the function enforces them (open ends included here, too). */
  readonly from?: number;
  readonly to?: number;
  /** What stands where the argument is left out; absent on an argument that must be given. */
  readonly default?: number | string;
  /** The words an argument of unit 'word' may be. */
  readonly options?: readonly string[];
  /** A sensible value to start a calculator with. */
  readonly example: number | string;
}

/** One row of a working: what, formula, the numbers under its equals sign, what it comes to. */
export interface Step {
  /** 'True airspeed', 'Radius': capital first, no unit. */
  readonly what: string;
  /** The left side, as TeX: 'V', '\\omega'. */
  readonly symbol: string;
  /** The right side, as TeX; left out where the step is only a conversion. */
  readonly tex?: string;
  /** The right side with the numbers in, as plain text: '48.87² / (9.80665 × tan 15°) = 909 m'. */
  readonly numbers: string;
  /** What it comes to with its unit; left out on the last step, whose result the reader of the step prints. */
  readonly comes?: string;
}

/** What a formula gives: a measure, named fields each with one, or a word. */
export type Result =
  | { readonly unit: Measure; readonly circle?: boolean; readonly options?: readonly string[] }
  | { readonly fields: Readonly<Record<string, { readonly unit: Measure; readonly circle?: boolean }>> };

/** A formula as expressions, workings and the formula sheet know it. */
export interface Formula {
  /** The public name of the function in src/calc. */
  readonly name: string;
  readonly topic: Topic;
  /** A noun phrase in lower case: 'radius of turn'. */
  readonly words: string;
  /** The result's letter, as TeX. */
  readonly symbol: string;
  readonly args: readonly Argument[];
  readonly result: Result & { readonly nullable?: boolean };
  /** Digits after the point that are worth printing. */
  readonly digits: number;
  /** The right side, as TeX, in the arguments' symbols. */
  readonly tex: string;
  /** The positional form: arguments in the order of `args`. Throws OutOfRange as the function does. */
  readonly call: (...args: never[]) => unknown;
  /** The working for given arguments (all of them, defaults filled in), conversions first, the formula itself last. */
  readonly steps?: (...args: never[]) => readonly Step[];
  /** 'exact': geometry or kinematics; 'model': a named physical model; 'rule': a rule of thumb. */
  readonly kind: "exact" | "model" | "rule";
  /** On a rule: the public name of the exact function or model it stands for. */
  readonly standsFor?: string;
  /** A sentence or two: what is assumed, where it holds. */
  readonly assumes: string;
  /** The document it comes from, or the law it follows from. */
  readonly source: string;
}
