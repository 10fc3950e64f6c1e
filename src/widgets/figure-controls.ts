import { unitWords } from "../cells/printed.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import { rangeTicks, typedText } from "./figure-scale.ts";
import { asSet } from "./figure-words.ts";
import { keyed, type Scale, stepped, typedNumber } from "./live-steps.ts";

/** One quantity's slider and number field, as built; each hand on them changes the worksheet. */
export class FigureControl {
  readonly need: string;
  readonly name: string;
  readonly #worksheet: Worksheet;
  readonly #start: number;
  readonly #step: number;
  readonly #circle: boolean;
  readonly #unit: string;
  readonly #box: HTMLElement;
  readonly #range: HTMLInputElement;
  readonly #field: HTMLInputElement;
  readonly #trouble: HTMLElement;
  #dragging = false;
  #keyed = false;
  #written = "";

  /** @param box the built `.set` of the quantity */
  constructor(box: HTMLElement, worksheet: Worksheet, left: AbortSignal) {
    this.need = box.dataset["need"]!;
    this.name = box.dataset["given"]!;
    this.#unit = box.dataset["unit"]!;
    this.#worksheet = worksheet;
    const given = worksheet.given.find(({ name }) => name === this.name)!;
    this.#start = given.from;
    this.#step = given.step;
    this.#circle = given.circle;
    this.#box = box;
    this.#range = part(box, "range");
    this.#field = part(box, "field");
    this.#trouble = part(box, "trouble");
    this.#written = this.#field.value;
    this.#listen(left);
  }

  get value(): number {
    return this.#worksheet.value(this.name) as number;
  }

  /** Shows the present value and range; what someone is typing stays. */
  show(): void {
    const { value } = this;
    const text = typedText(value);
    if (text === this.#written && Number(this.#range.value) === value) return;
    this.#written = text;
    const { from, to } = this.#worksheet.range(this.name);
    if (this.#range.min !== String(from) || this.#range.max !== String(to)) this.#widen(from, to);
    this.#range.value = String(value);
    this.#range.setAttribute("aria-valuetext", `${text} ${unitWords(this.#unit)}`);
    this.#field.value = text;
    this.#say("");
  }

  /** Puts an entry that couldn't be read back to the present value. */
  restore(): void {
    this.#written = typedText(this.value);
    this.#field.value = this.#written;
    this.#say("");
  }

  #widen(from: number, to: number): void {
    Object.assign(this.#range, { min: String(from), max: String(to) });
    this.#range.parentElement!.style.setProperty("--parts", String(rangeTicks(from, to, this.#step)));
    part(this.#box, "from").textContent = typedText(from);
    part(this.#box, "to").textContent = typedText(to);
  }

  #listen(left: AbortSignal): void {
    const on = <K extends keyof HTMLElementEventMap>(
      of: HTMLElement,
      kind: K,
      run: (e: HTMLElementEventMap[K]) => void,
    ) => of.addEventListener(kind, run, { signal: left });
    on(this.#range, "pointerdown", () => {
      this.#dragging = true;
    });
    for (const kind of ["pointerup", "pointercancel"] as const)
      on(this.#range, kind, () => {
        this.#dragging = false;
      });
    on(this.#range, "input", () => this.#slide(Number(this.#range.value)));
    on(this.#range, "change", () => this.#release());
    on(this.#range, "keydown", (event) => this.#key(event));
    on(this.#range, "keyup", () => {
      if (this.#keyed) this.#release();
      this.#keyed = false;
    });
    on(this.#field, "change", () => this.#type());
  }

  get #scale(): Scale {
    return { ...this.#worksheet.range(this.name), step: this.#step, circle: this.#circle };
  }

  /** A pointer goes by whole steps from the range's start; a push by other means moves one step at least. */
  #slide(at: number): void {
    const scale = this.#scale;
    const atEnd = at === scale.from || at === scale.to;
    const snapped = atEnd ? at : onGrid(at, this.#start, this.#step);
    const now = this.value;
    const next = snapped === now && at !== now && !this.#dragging ? stepped(now, Math.sign(at - now), scale) : snapped;
    this.#set(next);
  }

  #key(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = keyed(event.key, this.value, this.#scale);
    if (next === undefined) return;
    event.preventDefault();
    this.#keyed = true;
    this.#set(next);
  }

  #type(): void {
    const typed = typedNumber(this.#field.value);
    if (typed === undefined) {
      this.#say(`“${this.#field.value.trim()}” is not a number; the figure stays at ${asSet(this.value, this.#unit)}.`);
      return;
    }
    this.#say("");
    this.#written = this.#field.value;
    this.#set(typed);
    this.#release();
  }

  #set(value: number): void {
    if (value !== this.value) this.#worksheet.set(this.name, value);
    this.#range.value = String(value);
  }

  #say(words: string): void {
    if (this.#trouble.textContent === words) return;
    this.#trouble.textContent = words;
    if (words) this.#field.setAttribute("aria-invalid", "true");
    else this.#field.removeAttribute("aria-invalid");
  }

  #release(): void {
    this.#box.dispatchEvent(new Event("release", { bubbles: true }));
  }
}

/** The nearest whole step from a start, without the dust of binary fractions. */
const onGrid = (value: number, start: number, step: number): number =>
  Math.round((start + Math.round((value - start) / step) * step) * 1e9) / 1e9;

function part<E extends HTMLElement>(box: HTMLElement, name: string): E {
  return box.querySelector<E>(`[data-part="${name}"]`)!;
}
