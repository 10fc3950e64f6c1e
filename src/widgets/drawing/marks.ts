import {
  areaY,
  type ChannelValues,
  dot,
  line,
  type Markish,
  type MarkOptions,
  type RenderFunction,
  rect,
  ruleX,
  ruleY,
  type ScaleFunctions,
  text,
} from "@observablehq/plot";
import { type Channels, moved } from "./moved.ts";
import type { AreaLayer, Frame, Layer } from "./panel.ts";

/** A mark as plotted. */
export interface Drawn {
  /** The group that shows it; another one after a `take` that had to draw it again. */
  group: SVGElement;
  /** Shows other rows with the scales of that plot, in the place of the former ones. */
  readonly take: (layer: Layer) => void;
}

/**
 * The mark of a layer. `keep` receives what Plot drew. To show other rows, lone elements take new attributes; the rest
 * is drawn again by Plot's own render function with new values, so that nothing else of the plot is computed twice.
 */
export function markOf(layer: Layer, frame: Frame, pattern: string, keep: (drawn: Drawn) => void): Markish {
  const render: RenderFunction = (index, scales, values, dimensions, context, next) => {
    const drawn: Drawn = {
      group: next!(index, scales, values, dimensions, context)!,
      take: (rows) => {
        const channels = scaled(rows, scales);
        if (moved(rows, channels, drawn.group)) return;
        const again = next!(indexOf(rows), scales, { ...values, ...channels } as ChannelValues, dimensions, context)!;
        drawn.group.replaceWith(again);
        drawn.group = again;
      },
    };
    keep(drawn);
    return drawn.group;
  };
  return make(layer, frame, pattern, { className: layer.look, render });
}

/** How many rows a layer has. */
export const rowsOf = (layer: Layer): number =>
  layer.kind === "level" ? layer.y.length : layer.kind === "area" ? edges(layer)[0]!.length : layer.x.length;

/** Whether two layers of one mark have the same rows. */
export function sameRows(one: Layer, other: Layer): boolean {
  const [mine, theirs] = [columns(one), columns(other)];
  return mine.every((column, i) => same(column, theirs[i]!));
}

const same = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one === other || (one.length === other.length && one.every((value, i) => value === other[i]));

function columns(layer: Layer): readonly (readonly unknown[])[] {
  if (layer.kind === "area") return edges(layer);
  if (layer.kind === "upright") return [layer.x];
  if (layer.kind === "level") return [layer.y];
  if (layer.kind === "fill") return [layer.x, layer.y1, layer.y2];
  return layer.kind === "text" ? [layer.x, layer.y, layer.words] : [layer.x, layer.y];
}

const edges = ({ x1, x2, y1, y2 }: AreaLayer): (readonly number[])[] =>
  [x1, x2, y1, y2].filter((edge) => edge !== undefined);

/** Plot sets marks half a pixel off on screens of one device pixel a pixel; built and live drawings must agree. */
const off = typeof window === "undefined" || window.devicePixelRatio > 1 ? 0 : -0.5;

function make(layer: Layer, frame: Frame, pattern: string, options: MarkOptions): Markish {
  const rows = { length: rowsOf(layer) };
  const crisp = { ...options, dx: off, dy: off };
  switch (layer.kind) {
    case "line":
      return line(rows, { ...crisp, x: layer.x, y: layer.y });
    case "dot":
      return dot(rows, { ...crisp, x: layer.x, y: layer.y, r: layer.r });
    case "text": {
      const [x, y] = [layer.x, layer.y].map((value) => ({ value, scale: null }));
      return text(rows, { ...crisp, x: x!, y: y!, text: layer.words, textAnchor: layer.anchor });
    }
    case "upright": {
      const high = frame.bottom - frame.top;
      const inset =
        layer.tick === undefined ? { insetTop: -(layer.above ?? 0) } : { insetTop: high, insetBottom: -layer.tick };
      return ruleX(rows, { ...options, ...inset, dx: off, x: layer.x });
    }
    case "level":
      return ruleY(rows, { ...options, dy: off, y: layer.y });
    case "fill":
      return areaY(rows, { ...crisp, x: layer.x, y1: layer.y1, y2: layer.y2 });
    case "area": {
      const { x1, x2, y1, y2 } = layer;
      const fill = layer.hatched ? { fill: `url(#${pattern})` } : {};
      return rect(rows, { ...options, ...fill, ...(x1 && { x1, x2 }), ...(y1 && { y1, y2 }) });
    }
  }
}

const indexOf = (layer: Layer): number[] => Array.from({ length: rowsOf(layer) }, (_, i) => i);

/** A layer's rows through the scales of the plot, as the channels of its mark. */
function scaled(layer: Layer, { x: across, y: up }: ScaleFunctions): Channels {
  const [x, y] = [across!, up!];
  switch (layer.kind) {
    case "text":
      return { x: layer.x, y: layer.y, text: layer.words };
    case "upright":
      return { x: layer.x.map(x) };
    case "level":
      return { y: layer.y.map(y) };
    case "fill":
      return { x1: layer.x.map(x), y1: layer.y1.map(y), y2: layer.y2.map(y) };
    case "area": {
      const { x1, x2, y1, y2 } = layer;
      return {
        ...(x1 && x2 && { x1: x1.map(x), x2: x2.map(x) }),
        ...(y1 && y2 && { y1: y1.map(y), y2: y2.map(y) }),
      };
    }
    default:
      return { x: layer.x.map(x), y: layer.y.map(y) };
  }
}
