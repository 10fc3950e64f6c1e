import { textLayer } from "./labels.ts";
import type { Axis, Frame, Layer } from "./panel.ts";

/** Least distance between the numbers of an axis, px. */
const BETWEEN_LEVELS = 22;
const BETWEEN_UPRIGHTS = 36;

/**
 * Graticule, ticks, numbers and names: what lies under everything else in a frame. The same layers for the same frame.
 *
 * @param base where the level axis stands
 */
export function axisLayers(frame: Frame, base = frame.up.from): readonly Layer[] {
  const known = made.get(frame);
  if (known?.base === base) return known.layers;
  const layers = layersOf(frame, base);
  made.set(frame, { base, layers });
  return layers;
}

const made = new WeakMap<Frame, { base: number; layers: readonly Layer[] }>();

function layersOf(frame: Frame, base: number): Layer[] {
  const { across, up, left, right, top, bottom, last } = frame;
  const uprights = ticksOf(across, right - left, BETWEEN_UPRIGHTS);
  const levels = ticksOf(up, bottom - top, BETWEEN_LEVELS);
  const numbers = last ? uprights : [];
  return [
    { kind: "upright", look: "grid", x: uprights },
    { kind: "level", look: "grid", y: levels },
    textLayer(
      "tick",
      "end",
      levels.map((at) => [left - 10, frame.y(at), up.text(at)]),
    ),
    { kind: "level", look: "axis", y: base === up.from ? [base] : [up.from, base] },
    { kind: "upright", look: "axis", x: uprights, tick: 5 },
    textLayer(
      "tick",
      "middle",
      numbers.map((at) => [frame.x(at), bottom + 16, across.text(at)]),
    ),
    textLayer("axis-name", "start", [[0, top - 17, up.name]]),
    textLayer("axis-name", "end", last ? [[right, bottom + 37, across.name]] : []),
  ];
}

/** Words level with the name of a frame's upright axis, at the frame's right. */
export const headWords = (frame: Frame, said: string): Layer =>
  textLayer("tick", "end", said ? [[frame.right, frame.top - 17, said]] : []);

/** Multiples of the first step that leaves room for the numbers. */
export function ticksOf({ from, to, steps }: Axis, pixels: number, room: number): number[] {
  const step = steps.find((size) => (pixels * size) / (to - from) >= room) ?? steps.at(-1)!;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => tidy((first + i) * step));
}

const tidy = (value: number): number => Math.round(value * 1e9) / 1e9 + 0;
