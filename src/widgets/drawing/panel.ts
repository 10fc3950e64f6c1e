/** The room a drawing has, in its own pixels: labels are 13 px whatever it is scaled to. */
export interface Size {
  readonly width: number;
  /** Where it is left out, panels take the height that suits them. */
  readonly height?: number;
}

/** One axis of a panel. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  /** Distances between ticks, the smallest first: the first that leaves room for the numbers is taken. */
  readonly steps: readonly number[];
  readonly text: (value: number) => string;
  /** Stands level above a vertical axis, and at the right under a horizontal one. */
  readonly name: string;
}

/** Where a panel's axes lie, in pixels of its own; y grows downwards. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly across: Axis;
  readonly up: Axis;
  /** True on the lowest panel, which names and numbers the shared axis. */
  readonly last: boolean;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** A frame and what is drawn in it, the lowest layer first. */
export interface Panel {
  readonly frame: Frame;
  /** From state to state a panel has the same layers in the same order; one with nothing to show has no rows. */
  readonly layers: readonly Layer[];
}

/** One kind of mark with its rows; `x` and `y` are values of the axes unless a comment says otherwise. */
export type Layer = LineLayer | DotLayer | TextLayer | UprightLayer | LevelLayer | AreaLayer | FillLayer;

interface Common {
  /** Class names of figure.css: 'curve one', 'tick'. */
  readonly look: string;
}

/** One line through all rows. */
export interface LineLayer extends Common {
  readonly kind: "line";
  readonly x: readonly number[];
  readonly y: readonly number[];
}

export interface DotLayer extends Common {
  readonly kind: "dot";
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Radius, px. */
  readonly r: number;
}

/** Words at places in pixels of the panel; `y` is the middle of their height. */
export interface TextLayer extends Common {
  readonly kind: "text";
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly words: readonly string[];
  readonly anchor: "start" | "middle" | "end";
}

/** Upright lines through the frame, longer by so many pixels above and below. */
export interface UprightLayer extends Common {
  readonly kind: "upright";
  readonly x: readonly number[];
  readonly above?: number;
  /** Where given, the line runs from the frame's foot downwards by so much and no more: a tick. */
  readonly tick?: number;
}

/** Level lines across the frame. */
export interface LevelLayer extends Common {
  readonly kind: "level";
  readonly y: readonly number[];
}

/** An area: the whole height where `y1` is left out, the whole width where `x1` is. */
export interface AreaLayer extends Common {
  readonly kind: "area";
  readonly x1?: readonly number[];
  readonly x2?: readonly number[];
  readonly y1?: readonly number[];
  readonly y2?: readonly number[];
  readonly hatched?: true;
}

/** The ground between two lines. */
export interface FillLayer extends Common {
  readonly kind: "fill";
  readonly x: readonly number[];
  readonly y1: readonly number[];
  readonly y2: readonly number[];
}
