import type { Facts } from "../cells/known.ts";
import type { Panel, Size } from "./drawing/panel.ts";

/** What a figure shows at one moment: everything on screen follows from it. */
export interface FigureState {
  /** Present values by the quantities' names in src/cells/quantities.ts, in those units. */
  readonly values: Readonly<Record<string, number>>;
  /** The values kept as a ghost to compare with. */
  readonly kept?: Readonly<Record<string, number>> | undefined;
  readonly aircraft: Facts;
}

/** A live figure. Pure: the drawing is made from the panels it describes, elsewhere. */
export interface Figure {
  readonly name: string;
  /** Names in quantities.ts, in the order of their controls. */
  readonly needs: readonly string[];
  /** For each quantity the values its model answers for, ends included. */
  readonly holds: Readonly<Record<string, readonly [from: number, to: number]>>;
  /** Model, its range, what it leaves out and whose aircraft: a sentence or three. */
  readonly model: (aircraft: Facts) => string;
  /** @throws {OutOfRange} where a value lies outside `holds` */
  readonly show: (state: FigureState) => Shown;
}

export interface Shown {
  readonly readouts: readonly Readout[];
  /** A sentence for each limit that is passed, naming whose it is; empty where none is. */
  readonly notice: string;
  /** What is kept, in short: '120 kt, 15°'. */
  readonly kept: string;
  /** What the figure is there to answer, in a sentence or three beneath its drawing, where it has such an answer. */
  readonly answer?: string;
  /** What the drawing shows, in a sentence or two, for those who don't see it. */
  readonly description: string;
  readonly table: () => FigureTable;
  readonly panels: (size: Size) => readonly Panel[];
}

/** A number in large figures beside the drawing. */
export interface Readout {
  readonly label: string;
  readonly number: string;
  readonly unit: string;
  /** The unit in words, where its symbol is not read aloud well. */
  readonly spokenUnit: string;
  /** The same number for the kept values, in the same unit. */
  readonly kept?: string;
  /** What stands beside the number: 'error +1.9°'. */
  readonly aside?: string;
  /** The line it is read from: the class of its curve. */
  readonly line?: "one" | "two" | "three";
}

export interface FigureTable {
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly (number | null)[])[];
  /** The row nearest the present values, and the one nearest the kept ones. */
  readonly here: number;
  readonly was?: number;
}

export interface Column {
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
  /** Positive numbers carry their sign: an error, a correction. */
  readonly signed?: true;
}
