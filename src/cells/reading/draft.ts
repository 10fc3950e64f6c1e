import type { Cell } from "../chapter.ts";
import type { Exercise } from "../exercises/exercise.ts";
import type { Known } from "../known.ts";
import type { Position, Problem } from "../problem.ts";
import { Budget } from "./budget.ts";
import type { ProseScope } from "./inline.ts";
import { limits } from "./limits.ts";
import { Notes } from "./notes.ts";
import { emptySheet, type Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";

/** A chapter while it is read. */
export class Draft {
  readonly source: Source;
  readonly name: string;
  readonly known: Known;
  readonly notes: Notes;
  readonly budget = new Budget();
  readonly cells: Cell[] = [];
  readonly exercises: Exercise[] = [];
  readonly problems: Problem[] = [];
  /** Codes of objectives that exercises name, sound or not. */
  readonly served = new Set<string>();
  /** What the trial draws of all exercises may still cost. */
  readonly trials = { left: limits.trials };
  /** Links to sections of this chapter, checked when all sections are known. */
  readonly anchors: { readonly section: string; readonly position: Position }[] = [];
  /** What the front matter says; the sheet is empty and `readable` false where its YAML is broken. */
  sheet: Sheet = emptySheet;
  readonly #ids = new Set<string>();

  constructor(source: Source, name: string, known: Known) {
    this.source = source;
    this.name = name;
    this.known = known;
    this.notes = new Notes(source);
  }

  add(position: Position, message: string, mend: string): void {
    this.problems.push({ file: this.source.file, line: position.line, column: position.column, message, mend });
  }

  /** A problem at an offset of the file. */
  addAt(offset: number, message: string, mend: string): void {
    this.problems.push(this.source.problem(offset, message, mend));
  }

  /** An id that nothing else on the page has: the wish itself or, where taken, the wish with a number. */
  id(wish: string): string {
    let id = wish;
    for (let n = 2; this.#ids.has(id); n++) id = `${wish}-${n}`;
    this.#ids.add(id);
    return id;
  }

  /** How prose that starts at an offset of the file is read. */
  prose(from: number, more: Partial<ProseScope> = {}): ProseScope {
    return this.scope((offset) => this.source.place(from + offset), more);
  }

  scope(place: (offset: number) => Position, more: Partial<ProseScope> = {}): ProseScope {
    const { names, readable } = this.sheet;
    return {
      file: this.source.file,
      place,
      names: readable ? names : undefined,
      known: { terms: this.known.terms, chapters: [...this.known.chapters, this.name] },
      budget: this.budget,
      onAnchor: (chapter, section, position) => {
        if (chapter === this.name) this.anchors.push({ section, position });
      },
      ...more,
    };
  }
}
