import type { Axis, Frame, Size } from "./panel.ts";

/** Under this width a drawing is set for a narrow column: shorter labels, a smaller right margin. */
const NARROW = 480;

export const isNarrow = ({ width }: Size): boolean => width < NARROW;

/** A panel's upright axis and the height of its frame, px, in a wide and in a narrow drawing. */
export interface PanelPlan {
  readonly up: Axis;
  readonly high: readonly [wide: number, narrow: number];
}

/** Above a frame stands the name of its axis; below it ticks and, on the last, their numbers and the axis name. */
const HEAD = 34;
const GAP = 24;
const FOOT = 46;
const LEFT = 34;
const RIGHT = [88, 58] as const;
const LEAST_HIGH = 40;

/**
 * Frames for a figure's panels, one under another on one shared axis: the very same ones as long as the size and the
 * ends of the axes stay, since what hangs on them need not be worked out again while a slider moves.
 *
 * @param plan makes the shared axis and the panels' plans from the ends
 */
export function framesOf<Ends extends object>(
  plan: (ends: Ends) => {
    readonly across: Axis;
    readonly panels: readonly PanelPlan[];
    /** Room for the numbers of the upright axes, px, where they take more than usual. */
    readonly left?: number;
  },
): (size: Size, ends: Ends) => readonly Frame[] {
  let key = "";
  let frames: readonly Frame[] = [];
  return (size, ends) => {
    const asked = JSON.stringify([size.width, size.height, ends]);
    if (asked !== key) {
      const { across, panels, left = LEFT } = plan(ends);
      frames = stacked(size, across, panels, left);
      key = asked;
    }
    return frames;
  };
}

function stacked(size: Size, across: Axis, plans: readonly PanelPlan[], left: number): readonly Frame[] {
  const narrow = isNarrow(size) ? 1 : 0;
  const natural = plans.map(({ high }) => high[narrow]!);
  const highs = size.height === undefined ? natural : fitted(natural, size.height);
  return plans.map(({ up }, i) =>
    frameOf(
      { width: size.width, left, right: size.width - RIGHT[narrow]! },
      across,
      up,
      highs[i]!,
      i === plans.length - 1,
    ),
  );
}

function fitted(natural: readonly number[], height: number): number[] {
  const around = natural.length * HEAD + (natural.length - 1) * GAP + FOOT;
  const share = (height - around) / natural.reduce((sum, high) => sum + high, 0);
  return natural.map((high) => Math.max(LEAST_HIGH, Math.round(high * share)));
}

function frameOf(
  { width, left, right }: Pick<Frame, "width" | "left" | "right">,
  across: Axis,
  up: Axis,
  high: number,
  last: boolean,
): Frame {
  const bottom = HEAD + high;
  return {
    width,
    height: bottom + (last ? FOOT : GAP),
    left,
    right,
    top: HEAD,
    bottom,
    across,
    up,
    last,
    x: (value) => left + ((value - across.from) / (across.to - across.from)) * (right - left),
    y: (value) => bottom + ((value - up.from) / (up.to - up.from)) * (HEAD - bottom),
  };
}

/** The first of the steps in a ladder that reaches a value; beyond the last, its multiples. */
export function reaching(value: number, ladder: readonly number[]): number {
  const last = ladder.at(-1)!;
  return ladder.find((step) => value <= step) ?? Math.ceil(value / last) * last;
}

/** Numbers from one to another in even steps, both ends included. */
export function evenly(from: number, to: number, parts: number): number[] {
  return Array.from({ length: parts + 1 }, (_, i) => (i === parts ? to : from + ((to - from) * i) / parts));
}
