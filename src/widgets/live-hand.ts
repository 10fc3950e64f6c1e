import type { Given, Work } from "../cells/chapter.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import { openField } from "./live-field.ts";
import { dragged, keyed, type Scale } from "./live-steps.ts";

/** The events that hands hear; all bubble to the root they are bound to. */
export const KINDS = [
  "keydown",
  "keyup",
  "dblclick",
  "pointerdown",
  "pointermove",
  "pointerup",
  "pointercancel",
] as const;

/** A given under a finger or a mouse button. */
interface Hold {
  readonly span: HTMLElement;
  readonly name: string;
  readonly pointer: number;
  readonly x: number;
  readonly value: number;
  moved: boolean;
}

/** Pixels before a press becomes a drag, so that a double-click stays one. */
const SLACK = 3;

/** What a reader's hands do to the givens of a page. */
export class Hands implements EventListenerObject {
  #hold: Hold | undefined;
  #stepping: HTMLElement | undefined;
  readonly #worksheet: Worksheet;
  readonly #measures: ReadonlyMap<string, Given | Work>;

  constructor(worksheet: Worksheet, measures: ReadonlyMap<string, Given | Work>) {
    this.#worksheet = worksheet;
    this.#measures = measures;
  }

  handleEvent(event: Event): void {
    if (event.type === "pointermove") this.#drag(event as PointerEvent);
    else if (event.type === "pointerup" || event.type === "pointercancel") this.#letGo(event as PointerEvent);
    else if (event.type === "keyup") this.#keyUp();
    else this.#begin(event);
  }

  /** What begins on a given: a key, a press or a double-click. */
  #begin(event: Event): void {
    const span = (event.target as Element).closest<HTMLElement>(".given[data-given]");
    const name = span?.dataset["given"];
    if (!span || name === undefined) return;
    if (event.type === "keydown") this.#key(event as KeyboardEvent, span, name);
    else if (event.type === "dblclick") this.#type(span, name);
    else this.#press(event as PointerEvent, span, name);
  }

  #scale(name: string): Scale {
    const measure = this.#measures.get(name);
    const step = measure && "step" in measure ? measure.step : 1;
    return { ...this.#worksheet.range(name), step, circle: measure?.circle ?? false };
  }

  #key(event: KeyboardEvent, span: HTMLElement, name: string): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = keyed(event.key, this.#value(name), this.#scale(name));
    if (next === undefined && event.key !== "Enter") return;
    event.preventDefault();
    if (next === undefined) {
      this.#type(span, name);
    } else {
      this.#stepping = span;
      this.#worksheet.set(name, next);
    }
  }

  #keyUp(): void {
    if (this.#stepping) release(this.#stepping);
    this.#stepping = undefined;
  }

  #press(event: PointerEvent, span: HTMLElement, name: string): void {
    if (event.button !== 0) return;
    this.#hold = { span, name, pointer: event.pointerId, x: event.clientX, value: this.#value(name), moved: false };
  }

  #drag(event: PointerEvent): void {
    const hold = this.#hold;
    if (hold?.pointer !== event.pointerId) return;
    const pixels = event.clientX - hold.x;
    if (!hold.moved && Math.abs(pixels) < SLACK) return;
    if (!hold.moved) hold.span.setPointerCapture(event.pointerId);
    hold.moved = true;
    this.#worksheet.set(hold.name, dragged(hold.value, pixels, this.#scale(hold.name)));
  }

  #letGo(event: PointerEvent): void {
    const hold = this.#hold;
    if (hold?.pointer !== event.pointerId) return;
    this.#hold = undefined;
    if (hold.moved) release(hold.span);
  }

  #type(span: HTMLElement, name: string): void {
    const commit = (value: number): void => {
      this.#worksheet.set(name, value);
      release(span);
    };
    openField(span, { label: this.#measures.get(name)?.label ?? name, value: this.#value(name), commit });
  }

  #value(name: string): number {
    const value = this.#worksheet.value(name);
    return typeof value === "number" ? value : this.#scale(name).from;
  }
}

const release = (span: HTMLElement): boolean => span.dispatchEvent(new Event("release", { bubbles: true }));
