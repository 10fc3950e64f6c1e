import type { FigureSignature } from "./figures.ts";

/** What a chapter may refer to besides its own names; the built-in course is the default. */
export interface Known {
  /** Numbers of the school's aeroplane, by dotted name without 'aircraft.': 'cruise', 'climb.speed' → value and unit. */
  readonly aircraft: Facts;
  readonly place: Facts;
  /** How the school flies and speaks: 'leadFraction', 'handOver'. */
  readonly technique?: Facts;
  readonly terms: readonly Term[];
  readonly figures: readonly FigureSignature[];
  /** Names of all chapters, for links between them. */
  readonly chapters: readonly string[];
}

export interface Facts {
  readonly title: string;
  /** Whose numbers these are: 'Dunlin, Saltmarsh Flying Club'. */
  readonly owner: string;
  readonly facts: Readonly<Record<string, Fact>>;
}

export interface Fact {
  readonly value: number | string;
  /** A unit of `convert`, 'plain', or 'word'. */
  readonly unit: string;
}

/** A glossary term under a neutral key, with its regional forms. */
export interface Term {
  /** 'attitude-indicator' */
  readonly key: string;
  /** British form first: 'artificial horizon'; the same twice where regions agree. */
  readonly british: string;
  readonly american: string;
  /** Other shapes of the word, British and American side by side: ['balanced', 'coordinated']. */
  readonly forms: readonly (readonly [british: string, american: string])[];
  /** Inline Markdown. */
  readonly meaning: string;
}
