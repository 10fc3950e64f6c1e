import { textLayer, widthOf } from "./labels.ts";
import type { Frame, Layer } from "./panel.ts";

/** Hatched outside a range of the level axis, with a boundary line at each of its ends that falls within; an end left out bounds nothing. */
export function outsideLayers(
  { across: { from, to } }: Frame,
  low: number | undefined,
  high: number | undefined,
): Layer[] {
  const out = [
    ...(low !== undefined && low > from ? [[from, low] as const] : []),
    ...(high !== undefined && high < to ? [[high, to] as const] : []),
  ];
  return [
    { kind: "area", look: "beyond", hatched: true, x1: out.map(([start]) => start), x2: out.map(([, end]) => end) },
    { kind: "upright", look: "limit", x: out.map(([start, end]) => (start === from ? end : start)) },
  ];
}

/** What is kept, at the foot of its upright line, where no curve runs; on the side that has room and where the present line isn't. */
export function keptName(frame: Frame, words: string, kept: number | undefined, now: number): Layer {
  const [x, cursor] = [kept === undefined ? 0 : frame.x(kept), frame.x(now)];
  const width = 8 + 0.92 * widthOf(words, 13);
  const rightFree = x + width < frame.right && !(cursor > x && cursor < x + width);
  const start = rightFree || x - width < frame.left - 4 ? x + 8 : x - width;
  return textLayer("name soft halo", "start", kept === undefined ? [] : [[start, frame.bottom - 12, words]]);
}

/** One line through rows of places and values. */
export const lineThrough = (look: string, x: readonly number[], y: readonly number[]): Layer => ({
  kind: "line",
  look,
  x,
  y,
});
