import type { Drawing } from "./drawing/index.ts";
import type { Size } from "./drawing/panel.ts";
import type { Shown } from "./figure.ts";

type DrawingModule = typeof import("./drawing/index.ts");

/** Under this width of its container a figure shows its narrow drawing, px; figure.css says the same. */
const NARROW_UNDER = 520;
const WIDE = 580;
const NARROW = 350;

/** Loads what draws, Plot included: a chunk of its own. */
export const loadDrawing = (): Promise<DrawingModule> => import("./drawing/index.ts");

/**
 * The one live drawing of a figure, in the width that shows. It is made apart when its code has come, and takes the
 * place of the built drawings, in the same room, at the first change.
 */
export class LiveDrawing {
  readonly #host: HTMLElement;
  readonly #id: string;
  #room: Size | undefined;
  #code: DrawingModule | undefined;
  #drawing: Drawing | undefined;
  #drawn = "";

  constructor(host: HTMLElement, id: string) {
    this.#host = host;
    this.#id = `${id}-live`;
  }

  get ready(): boolean {
    return this.#code !== undefined;
  }

  /** The drawing that shows: the live one, or the built one of the present width. */
  get svg(): SVGSVGElement {
    const built = this.#size.width === WIDE ? ".drawn-wide > svg" : ".drawn-narrow > svg";
    return this.#shows ? this.#drawing!.svg : this.#host.querySelector<SVGSVGElement>(built)!;
  }

  get #shows(): boolean {
    return this.#drawing?.svg.parentNode === this.#host;
  }

  /** The room of the drawing in its own pixels: measured once until `fit`, as to measure is to lay out the page. */
  get #size(): Size {
    this.#room ??= measured(this.#host);
    return this.#room;
  }

  /** @throws whatever the import throws */
  async load(load: () => Promise<DrawingModule>, shown: () => Shown | undefined): Promise<void> {
    this.#code ??= await load();
    const first = shown();
    if (first && !this.#drawing) this.#draw(first);
  }

  /** Shows the drawing of this state; does nothing before its code has come. */
  show(shown: Shown): void {
    if (!this.#code) return;
    this.#draw(shown);
    if (this.#shows) return;
    this.#host.querySelector(":scope > .drawing")?.remove();
    this.#host.append(this.#drawing!.svg);
    this.#host.dataset["live"] = "";
  }

  /** Takes note that the room may have changed, and draws anew where it has. */
  fit(shown: Shown | undefined): void {
    this.#room = undefined;
    if (shown && this.#shows && this.#drawn !== key(this.#size)) this.show(shown);
  }

  #draw(shown: Shown): void {
    const size = this.#size;
    const panels = shown.panels(size);
    if (this.#drawing && this.#drawn === key(size)) {
      this.#drawing.take(panels);
      return;
    }
    this.#drawn = key(size);
    this.#drawing = new this.#code!.Drawing(panels, { ...size, id: this.#id, document: this.#host.ownerDocument });
  }
}

function measured(host: HTMLElement): Size {
  const { clientWidth: width, clientHeight: height } = host;
  if (host.closest("[data-full]")) return fullSize(width, height);
  return { width: width < NARROW_UNDER ? NARROW : WIDE };
}

const key = ({ width, height = 0 }: Size): string => `${width} ${height}`;

/** Label size on a full screen, px, where the room allows it. */
const LABEL = 13;
const LARGE = 28;
const LEAST = { width: 340, height: 260 };

/** The whole screen with labels as large as leave room for the drawing. */
function fullSize(width: number, height: number): Size {
  const times = Math.min(LARGE / LABEL, width / LEAST.width, height / LEAST.height);
  const scale = Math.max(times, 0.5);
  return { width: Math.round(width / scale), height: Math.round(height / scale) };
}
