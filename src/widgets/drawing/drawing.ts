import type { Figure, FigureState } from "../figure.ts";
import type { Panel, Size } from "./panel.ts";
import { PlottedPanel } from "./plotted-panel.ts";

const SVG = "http://www.w3.org/2000/svg";

export interface DrawingOptions extends Size {
  /** Begins every id in the drawing: 'figure-1-wide'. */
  readonly id: string;
  /** A browser's, or one of linkedom's. */
  readonly document: Document;
}

/** A figure's drawing at one state: panels under one another in one SVG, so that it saves as one file. */
export function drawFigure(figure: Figure, state: FigureState, options: DrawingOptions): SVGSVGElement {
  return new Drawing(figure.show(state).panels(options), options).svg;
}

/** How many plots of a panel with other axes are held ready. */
const SPARES = 6;

/** A drawing that follows its figure: panels are plotted once, then their changed layers alone are drawn. */
export class Drawing {
  readonly svg: SVGSVGElement;
  readonly #document: Document;
  readonly #pattern: string;
  readonly #panels: PlottedPanel[];
  readonly #spares: PlottedPanel[][];

  constructor(panels: readonly Panel[], { id, width, document }: DrawingOptions) {
    this.#document = document;
    this.#pattern = `${id}-hatch`;
    this.svg = document.createElementNS(SVG, "svg") as SVGSVGElement;
    const height = panels.reduce((sum, { frame }) => sum + frame.height, 0);
    set(this.svg, { class: "drawing", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" });
    this.svg.append(this.#hatch());
    this.#panels = panels.map((panel) => this.#plotted(panel));
    this.#spares = panels.map(() => []);
    let y = 0;
    this.#panels.forEach(({ svg }, i) => {
      set(svg, { x: 0, y });
      y += panels[i]!.frame.height;
      this.svg.append(svg);
    });
  }

  /** Shows another state of the same figure in the same room. */
  take(panels: readonly Panel[]): void {
    panels.forEach((panel, i) => {
      const plotted = this.#panels[i]!;
      if (plotted.takes(panel)) {
        plotted.take(panel);
        return;
      }
      const next = this.#spareFor(panel, i) ?? this.#plotted(panel);
      set(next.svg, { x: 0, y: plotted.svg.getAttribute("y")! });
      plotted.svg.replaceWith(next.svg);
      this.#panels[i] = next;
      this.#spares[i]!.push(plotted);
      if (this.#spares[i]!.length > SPARES) this.#spares[i]!.shift();
    });
  }

  /** A panel plotted before that can take this state: a slider that comes back finds its axes as it left them. */
  #spareFor(panel: Panel, i: number): PlottedPanel | undefined {
    const spares = this.#spares[i]!;
    const at = spares.findIndex((spare) => spare.takes(panel));
    if (at < 0) return undefined;
    const [spare] = spares.splice(at, 1);
    spare!.take(panel);
    return spare;
  }

  #plotted(panel: Panel): PlottedPanel {
    return new PlottedPanel(panel, this.#pattern, this.#document);
  }

  #hatch(): SVGElement {
    const stroke = this.#element("line", { x1: 0, y1: 0, x2: 0, y2: 7, class: "hatch-line" });
    const pattern = this.#element("pattern", {
      id: this.#pattern,
      width: 7,
      height: 7,
      patternUnits: "userSpaceOnUse",
      patternTransform: "rotate(45)",
    });
    const defs = this.#element("defs", {});
    pattern.append(stroke);
    defs.append(pattern);
    return defs;
  }

  #element(name: string, attributes: Record<string, string | number>): SVGElement {
    const element = this.#document.createElementNS(SVG, name) as SVGElement;
    set(element, attributes);
    return element;
  }
}

function set(element: Element, attributes: Record<string, string | number>): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}
