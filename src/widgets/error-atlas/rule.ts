import type { AtlasRuleName } from "../../cells/atlas-rules.ts";
import type { Facts } from "../../cells/known.ts";

/** Present values by the quantities' names, in those units. */
export type Values = Readonly<Record<string, number>>;

export type Range = readonly [from: number, to: number];

/** A rule of thumb beside what it stands for: everything its figure and its entry in the atlas say follows from this. */
export interface AtlasRule {
  readonly key: AtlasRuleName;
  /** Its name in the catalogue of formulas, which says what it stands for, and whether that is exact or a model. */
  readonly name: string;
  /** What is measured: 'Bank for 3 °/s', and its unit. */
  readonly result: Measured;
  /** The exact value, or the model's; nothing where there is no solution. May throw OutOfRange. */
  readonly exact: (values: Values) => number | null;
  /** The rule, or two ways of it that are taught. */
  readonly lines: readonly [RuleLine] | readonly [RuleLine, RuleLine];
  readonly across: Across;
  /** What the other quantities are, for the head of the answer: 'at 95 kt, rolling at 5 °/s'; nothing where there are none. */
  readonly at: ((values: Values) => string) | undefined;
  /** What an error above and one below zero is, in two or three words: 'too much bank'. */
  readonly over: string;
  readonly under: string;
  /** The sign that is the lesser evil, where there is one, and why, in a sentence that ends in a stop. */
  readonly safe: "over" | "under" | undefined;
  readonly why: string;
  /** What is assumed on both sides and left out: a sentence or two. */
  readonly leavesOut: string;
  /** Where a rule is used near the ground, in cloud or in protected airspace: what goes before it. */
  readonly caution?: string;
  /** For each quantity the values the formulas answer for. */
  readonly holds: Readonly<Record<string, Range>>;
}

export interface Measured {
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
  /** A direction, whose differences are taken the short way round. */
  readonly circle?: true;
}

export interface RuleLine {
  /** Beside its line, in a wide drawing and in a narrow one: ['TAS/10 + 7', '/10 + 7']. */
  readonly words: readonly [wide: string, narrow: string];
  /** The subject of the answer's sentence: 'half of the bank'. */
  readonly subject: string;
  /** May throw OutOfRange. */
  readonly value: (values: Values) => number | null;
}

/** The quantity along the axis. */
export interface Across {
  /** The range that is judged: the aircraft's own where it has one. */
  readonly range: (aircraft: Facts) => Range;
  /** What that range is, in words that follow 'Range: '. */
  readonly whose: (aircraft: Facts) => string;
  /** The range is a circle: every direction. */
  readonly whole?: true;
  /** The ends are limits of the aircraft, so the axis shows what lies beyond them, hatched. */
  readonly limits?: true;
}
