import { plot } from "@observablehq/plot";
import { type Drawn, markOf, rowsOf, sameRows } from "./marks.ts";
import type { Frame, Layer, Panel } from "./panel.ts";

/** A panel plotted once; while its frame stays, only the layers that change are drawn again. */
export class PlottedPanel {
  readonly svg: SVGSVGElement;
  readonly #frame: Frame;
  readonly #layers: Layer[];
  readonly #drawn: (Drawn | undefined)[] = [];

  constructor({ frame, layers }: Panel, pattern: string, document: Document) {
    this.#frame = frame;
    this.#layers = [...layers];
    const marks = layers.map((layer, i) =>
      rowsOf(layer) === 0
        ? null
        : markOf(layer, frame, pattern, (drawn) => {
            this.#drawn[i] = drawn;
          }),
    );
    this.svg = plot({ ...plotOptions(frame), document, marks }) as SVGSVGElement;
    this.svg.querySelector("style")?.remove(); // its rules stand in figure.css once
  }

  /** Whether the panel can take another state without being plotted again. */
  takes({ frame, layers }: Panel): boolean {
    return (
      sameFrame(this.#frame, frame) &&
      layers.length === this.#layers.length &&
      layers.every((layer, i) => sameMark(layer, this.#layers[i]!))
    );
  }

  /** Shows the layers whose rows differ, each in the place of its former self. */
  take({ layers }: Panel): void {
    layers.forEach((layer, i) => {
      const former = this.#layers[i]!;
      if (layer === former || rowsOf(layer) === 0 || sameRows(layer, former)) return;
      this.#drawn[i]!.take(layer);
      this.#layers[i] = layer;
    });
  }
}

function plotOptions({ width, height, left, right, top, bottom, across, up }: Frame) {
  return {
    width,
    height,
    marginLeft: left,
    marginRight: width - right,
    marginTop: top,
    marginBottom: height - bottom,
    x: { type: "linear", domain: [across.from, across.to], axis: null },
    y: { type: "linear", domain: [up.from, up.to], axis: null },
  } as const;
}

const sameFrame = (one: Frame, other: Frame): boolean =>
  one === other ||
  (one.width === other.width &&
    one.height === other.height &&
    one.left === other.left &&
    one.right === other.right &&
    one.bottom === other.bottom &&
    one.across.from === other.across.from &&
    one.across.to === other.across.to &&
    one.up.from === other.up.from &&
    one.up.to === other.up.to);

/** Plot leaves out a mark without rows, and fixes a mark's look and anchor: where these change it is plotted again. */
const sameMark = (one: Layer, other: Layer): boolean =>
  one === other ||
  (one.kind === other.kind &&
    one.look === other.look &&
    (rowsOf(one) === 0) === (rowsOf(other) === 0) &&
    (one.kind !== "text" || other.kind !== "text" || one.anchor === other.anchor));
