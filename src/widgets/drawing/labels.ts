import type { Frame, TextLayer } from "./panel.ts";

/** A name for the right-hand end of a line. */
export interface EndName {
  /** The line's height at its end, as a value of the upright axis. */
  readonly at: number;
  readonly words: string;
  /** 'one', 'two', 'three', 'soft', 'ink': the tone of the name. */
  readonly tone: string;
}

/** A rectangle in pixels of a panel. */
interface Box {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

export type Point = readonly [x: number, y: number];

/** Least distance between the middles of two names, px. */
const LEADING = 16;

/**
 * Names beside the right-hand ends of their lines, in the order of those ends and never over one another.
 * An empty name keeps its layer and takes no room.
 */
export function endNames(frame: Frame, ends: readonly EndName[]): TextLayer[] {
  const shown = ends.filter(({ words }) => words !== "");
  const places = spread(
    shown.map(({ at }) => frame.y(at)),
    frame.top + 4,
    frame.bottom - 4,
  );
  return ends.map((end) => {
    const i = shown.indexOf(end);
    return textLayer(`name ${end.tone}`, "start", i < 0 ? [] : [[frame.right + 8, places[i]!, end.words]]);
  });
}

/**
 * Heights as near the wanted ones as a least distance between them allows, in the same order, within bounds
 * where they fit.
 */
export function spread(wanted: readonly number[], from: number, to: number, apart = LEADING): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const groups: { places: number[]; middle: number }[] = [];
  for (const i of order) {
    let group = { places: [i], middle: held(wanted[i]!, from, to) };
    for (let before = groups.at(-1); before && overlaps(before, group, apart); before = groups.at(-1)) {
      groups.pop();
      group = joined([...before.places, ...group.places], wanted, from, to, apart);
    }
    groups.push(group);
  }
  const result: number[] = [];
  for (const { places, middle } of groups)
    places.forEach((i, k) => {
      result[i] = middle + (k - (places.length - 1) / 2) * apart;
    });
  return result;
}

const half = (group: { places: number[] }, apart: number): number => ((group.places.length - 1) / 2) * apart;

const overlaps = (above: { places: number[]; middle: number }, below: typeof above, apart: number): boolean =>
  below.middle - half(below, apart) - (above.middle + half(above, apart)) < apart - 1e-9;

function joined(places: number[], wanted: readonly number[], from: number, to: number, apart: number) {
  const mean = places.reduce((sum, i) => sum + wanted[i]!, 0) / places.length;
  const reach = half({ places }, apart);
  return { places, middle: held(mean, Math.min(from + reach, to - reach), to - reach) };
}

const held = (value: number, from: number, to: number): number => Math.max(from, Math.min(to, value));

/** Beside a point: above right, below right, above left, below left, then the same further off. */
const AROUND: readonly Point[] = [1, 2, 3].flatMap((times): Point[] => [
  [10, -14 * times],
  [10, 14 * times],
  [-10, -14 * times],
  [-10, 14 * times],
]);

/**
 * A value beside a point of the drawing: the first place around it that is clear of all lines, with none
 * between, and inside the frame; or else the one that meets the fewest. It is anchored at its start on either side,
 * so that a change of side is a move.
 */
export function valueBeside(
  frame: Frame,
  [x, y]: Point,
  said: string,
  lines: readonly (readonly Point[])[],
): TextLayer {
  const width = widthOf(said, 15);
  let best: { place: Point; cost: number } | undefined;
  for (const [dx, dy] of AROUND) {
    const start = dx < 0 ? x + dx - width : x + dx;
    const box = { x1: start - 3, x2: start + width + 3, y1: y + dy - 10, y2: y + dy + 10 };
    const [y1, y2] = dy < 0 ? [y + dy, y - 8] : [y + 8, y + dy];
    const between = { x1: x - 1, x2: x + 1, y1, y2 };
    const met = lines.reduce((sum, line) => sum + hits(box, line) + hits(between, line), 0);
    const cost = met + outside(box, frame);
    if (best && cost >= best.cost) continue;
    best = { place: [start, y + dy], cost };
    if (cost === 0) break;
  }
  return textLayer("value halo", "start", [[...best!.place, said]]);
}

/** Width of words in the drawing's bold face, px: within some three of the truth in the faces of tokens.css. */
export function widthOf(words: string, size: number): number {
  let ems = 0;
  for (const letter of words)
    ems += /[ .,:/’ijl\u00a0]/.test(letter) ? 0.29 : /[mMNw%]/.test(letter) ? 0.82 : letter === "°" ? 0.4 : 0.57;
  return ems * size;
}

const outside = ({ x1, x2, y1, y2 }: Box, frame: Frame): number =>
  (x1 < frame.left ? 50 : 0) +
  (x2 > frame.right ? 50 : 0) +
  (y1 < frame.top - 4 ? 50 : 0) +
  (y2 > frame.bottom + 2 ? 50 : 0);

/** How many stretches of a line run through a box. */
function hits(box: Box, line: readonly Point[]): number {
  let count = 0;
  for (let i = 1; i < line.length; i++) if (meets(box, line[i - 1]!, line[i]!)) count++;
  return count;
}

/** Whether a stretch enters a box, by cutting it at each side in turn. */
function meets({ x1, x2, y1, y2 }: Box, [ax, ay]: Point, [bx, by]: Point): boolean {
  if (Math.max(ax, bx) < x1 || Math.min(ax, bx) > x2) return false;
  let from = 0;
  let to = 1;
  for (const [start, step, low, high] of [
    [ax, bx - ax, x1, x2],
    [ay, by - ay, y1, y2],
  ] as const) {
    if (step === 0) {
      if (start < low || start > high) return false;
      continue;
    }
    const ends = [(low - start) / step, (high - start) / step];
    from = Math.max(from, Math.min(...ends));
    to = Math.min(to, Math.max(...ends));
  }
  return from <= to;
}

/** A text layer from rows of place and words. */
export function textLayer(
  look: string,
  anchor: TextLayer["anchor"],
  rows: readonly (readonly [x: number, y: number, words: string])[],
): TextLayer {
  const tenth = (pixels: number): number => Math.round(pixels * 10) / 10;
  return {
    kind: "text",
    look,
    anchor,
    x: rows.map(([x]) => tenth(x)),
    y: rows.map(([, y]) => tenth(y)),
    words: rows.map(([, , said]) => said),
  };
}
