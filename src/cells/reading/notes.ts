import type { Token } from "marked";
import type { Problem } from "../problem.ts";
import { didYouMean, quoted } from "./near.ts";
import type { Source } from "./source.ts";

/** `[^label]: text`: a side note as defined. */
export interface Definition {
  readonly label: string;
  readonly text: string;
  /** Where the definition, and its text, start in the file. */
  readonly at: number;
  readonly textAt: number;
}

/** `[^label]` in a sentence: a side note, numbered by first use. */
export interface NoteToken {
  readonly type: "note";
  readonly raw: string;
  readonly number: number;
  readonly tokens: readonly Token[];
}

/** The side notes of a chapter: what is defined, and what has been used so far. */
export class Notes {
  readonly problems: Problem[] = [];
  readonly #source: Source;
  readonly #texts = new Map<string, { definition: Definition; tokens: readonly Token[] }>();
  readonly #used = new Set<string>();

  constructor(source: Source) {
    this.#source = source;
  }

  define(definition: Definition, tokens: readonly Token[]): void {
    if (this.#texts.has(definition.label)) {
      const message = `The side note ${quoted(definition.label)} is written twice.`;
      this.problems.push(this.#source.problem(definition.at, message, "Give one of the two another label."));
    } else this.#texts.set(definition.label, { definition, tokens });
  }

  /** The number and tokens of a note at its marker, or what is wrong with the marker. */
  use(label: string): Pick<NoteToken, "number" | "tokens"> | { message: string; mend: string } {
    const note = this.#texts.get(label);
    if (!note)
      return {
        message: `There is no side note ${quoted(label)}.`,
        mend: `Write it on a line of its own: '[^${label}]: its text'. ${didYouMean(label, [...this.#texts.keys()])}`,
      };
    if (this.#used.has(label))
      return {
        message: `The side note ${quoted(label)} is used twice.`,
        mend: "Write it out again under another label.",
      };
    this.#used.add(label);
    return { number: this.#used.size, tokens: note.tokens };
  }

  /** A problem for each note that nothing refers to. */
  unused(): Problem[] {
    const left = [...this.#texts.values()].filter(({ definition }) => !this.#used.has(definition.label));
    return left.map(({ definition: { label, at } }) =>
      this.#source.problem(
        at,
        `Nothing refers to the side note ${quoted(label)}.`,
        `Write [^${label}] where it belongs, or delete it.`,
      ),
    );
  }
}
