import type { Token } from "marked";
import type { Cell } from "../chapter.ts";
import type { Block, Fence } from "./blocks.ts";
import type { Draft } from "./draft.ts";
import { readExercise } from "./exercise.ts";
import { readFigure } from "./figure.ts";
import { readBlocks, readInline } from "./inline.ts";
import { type CellKind, cellKinds } from "./kinds.ts";
import { limits } from "./limits.ts";
import { didYouMean, quoted } from "./near.ts";
import { readPredict } from "./predict.ts";
import { readBrief, readCallout, readHeading, readMaths, readNotes } from "./words.ts";
import { readWorking } from "./working.ts";
import { type ReadYaml, readYaml } from "./yaml.ts";

/** Turns the blocks of a chapter into its cells. */
export class CellReader {
  readonly #draft: Draft;
  readonly #counts: Partial<Record<CellKind | "section", number>> = {};
  #fences = 0;
  #fenced = 0;

  constructor(draft: Draft) {
    this.#draft = draft;
  }

  read(blocks: readonly Block[]): void {
    this.#define(blocks);
    for (const [i, block] of blocks.entries()) {
      if (i >= limits.blocks) {
        const message = `The chapter has more than ${limits.blocks} headings, fences and pieces of prose.`;
        this.#draft.addAt(block.at, message, "Divide it into chapters.");
        return;
      }
      this.#block(block);
    }
  }

  /** Side notes are known before the sentences that refer to them. */
  #define(blocks: readonly Block[]): void {
    const { notes, problems } = this.#draft;
    for (const block of blocks.slice(0, limits.blocks)) {
      if (block.kind !== "note") continue;
      if (block.text === "") this.#draft.addAt(block.at, "The side note has no text.", "Write it after the colon.");
      const read = readInline(block.text, this.#draft.prose(block.textAt));
      problems.push(...read.problems);
      notes.define(block, read.tokens);
    }
  }

  #block(block: Block): void {
    const draft = this.#draft;
    if (block.kind === "prose") {
      const { tokens, problems } = readBlocks(block.text, draft.prose(block.at, { notes: draft.notes }));
      draft.problems.push(...problems);
      this.#prose(tokens, block.at);
    } else if (block.kind === "maths") this.#prose([readMaths(block, draft)], block.at);
    else if (block.kind === "callout") this.#add(readCallout(block, draft), block.at);
    else if (block.kind === "heading") this.#heading(block);
    else if (block.kind === "fence") this.#fence(block);
  }

  #heading(block: Extract<Block, { kind: "heading" }>): void {
    const section = readHeading(block, (this.#counts.section ?? 0) + 1, this.#draft);
    if (section) this.#count("section");
    this.#add(section, block.at);
  }

  /** Prose that follows prose belongs to the same cell. */
  #prose(tokens: readonly Token[], at: number): void {
    const last = this.#draft.cells.at(-1);
    if (last?.kind !== "prose") this.#add({ kind: "prose", tokens }, at);
    else this.#draft.cells[this.#draft.cells.length - 1] = { ...last, tokens: [...last.tokens, ...tokens] };
  }

  #fence(fence: Fence): void {
    const draft = this.#draft;
    const [kind = "", name = "", ...rest] = fence.info.split(/[ \t]+/);
    if (!fence.closed) {
      const mend = "Put its signs, ``` or ~~~, on a line of their own after it.";
      draft.addAt(fence.at, "This fence isn't closed.", mend);
    }
    const extra = kind === "figure" ? rest[0] : name;
    if (!isKind(kind)) {
      const message = kind ? `There is no fence of kind ${quoted(kind)}.` : "The fence doesn't say what it is.";
      draft.addAt(fence.at, message, didYouMean(kind, cellKinds));
    } else if (extra) {
      const mend = "Delete it; what the cell needs stands beneath, one key a line.";
      draft.addAt(fence.at, `${quoted(extra)} has no meaning after '${kind}'.`, mend);
    }
    if (!isKind(kind) || !this.#affordable(fence)) return;
    if (kind === "text") this.#prose([plainCode(fence)], fence.at);
    else this.#add(this.#cell(kind, name, fence), fence.at);
  }

  #affordable({ at, body }: Fence): boolean {
    this.#fences++;
    this.#fenced += body.length;
    if (this.#fences <= limits.cells && this.#fenced <= limits.allFences) return true;
    const most = limits.allFences.toLocaleString("en-GB");
    const message = `The chapter has more than ${limits.cells} fences, or more than ${most} characters in them.`;
    this.#draft.addAt(at, message, "Divide it into chapters.");
    return false;
  }

  #cell(kind: Exclude<CellKind, "text">, name: string, fence: Fence): AnyCell | undefined {
    const draft = this.#draft;
    switch (kind) {
      case "brief":
        return readBrief(fence, draft);
      case "notes":
        return readNotes(fence, draft);
      case "figure": {
        const number = this.#count("figure");
        const id = draft.id(`figure-${number}`);
        const cell = readFigure(name, fence, this.#yaml(fence), draft);
        return cell && { ...cell, number, id };
      }
      case "exercise":
        return readExercise(this.#yaml(fence), draft);
      case "working": {
        const id = draft.id(`working-${this.#count("working")}`);
        const cell = readWorking(this.#yaml(fence), draft);
        return cell && { ...cell, id };
      }
      case "predict": {
        const id = draft.id(`predict-${this.#count("predict")}`);
        const cell = readPredict(this.#yaml(fence), draft);
        return cell && { ...cell, id };
      }
    }
  }

  #yaml({ body, bodyAt }: Fence): ReadYaml {
    const { source } = this.#draft;
    return readYaml(body, { file: source.file, ...source.place(bodyAt) });
  }

  #count(kind: CellKind | "section"): number {
    const count = (this.#counts[kind] ?? 0) + 1;
    this.#counts[kind] = count;
    return count;
  }

  #add(cell: AnyCell | undefined, at: number): void {
    if (cell) this.#draft.cells.push({ ...cell, ...this.#draft.source.place(at) } as Cell);
  }
}

const plainCode = ({ body }: Fence): Token => ({ type: "code", raw: body, lang: "text", text: body.trimEnd() });

/** A cell of any kind before its place is known. */
type AnyCell = Cell extends infer Each ? (Each extends Cell ? Omit<Each, "line" | "column"> : never) : never;

const isKind = (kind: string): kind is CellKind => (cellKinds as readonly string[]).includes(kind);
