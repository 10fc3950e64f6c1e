import type { PropertyValues } from "lit";
import type { Facts } from "../cells/known.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import type { Figure, FigureState, Shown } from "./figure.ts";
import { FigureControl } from "./figure-controls.ts";
import { LiveDrawing, loadDrawing } from "./figure-live.ts";
import { closeBehind } from "./figure-menu.ts";
import { writeNumber, writeReadout } from "./figure-readout.ts";
import type { Origin } from "./figure-save.ts";
import { FigureScreen } from "./figure-screen.ts";
import { clearTable, writeTable } from "./figure-table.ts";
import { asSet } from "./figure-words.ts";
import { figureNamed, loadFigure } from "./figures.ts";
import { LightElement } from "./light-element.ts";
import { say } from "./said.ts";
import { whileNear } from "./while-near.ts";

/**
 * A figure come to life over its built HTML. Everything shown follows from the worksheet, the aircraft and what is
 * kept; out of view it waits. A bubbling `release` says that a hand has let go of a control.
 */
export class FigureCellElement extends LightElement {
  static override properties = { worksheet: { attribute: false }, facts: { attribute: false } };
  declare worksheet: Worksheet | undefined;
  /** The aircraft whose numbers bound the figure. */
  declare facts: Facts | undefined;
  /** What day it is, for files. */
  clock: () => Date = () => new Date();
  /** Fetches what draws. */
  loadDrawing: typeof loadDrawing = loadDrawing;

  #left = new AbortController();
  #figure: Figure | undefined;
  #coming: Promise<void> | undefined;
  #controls: FigureControl[] = [];
  #live: LiveDrawing | undefined;
  #kept: Readonly<Record<string, number>> | undefined;
  #shown: Shown | undefined;
  #outside: string | undefined;
  #followed = "";
  #inView = false;
  #later: ReturnType<typeof setTimeout> | undefined;
  #failed = false;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#later);
    this.#left.abort();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.#left.signal.aborted) this.#start();
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.get("facts")) this.#followed = "another aircraft";
    this.#start();
  }

  /** Keeps the present state as a ghost to compare with. */
  keep(): void {
    if (!this.#figure || outsideOf(this.#figure, this.#values())) return;
    this.#kept = this.#values();
    this.#follow();
  }

  letGo(): void {
    this.#kept = undefined;
    this.#follow();
  }

  #start(): void {
    const { worksheet, facts } = this;
    if (!worksheet || !facts) return;
    this.#figure ??= figureNamed(this.dataset["figure"] ?? "");
    if (!this.#figure) {
      this.#coming ??= this.#fetch();
      return;
    }
    this.#left.abort();
    this.#left = new AbortController();
    const { signal } = this.#left;
    const boxes = [...this.querySelectorAll<HTMLElement>(".set[data-given]")];
    this.#controls = boxes.map((box) => new FigureControl(box, worksheet, signal));
    this.#live ??= new LiveDrawing(this.partNamed("plot"), this.id);
    this.#followed = this.#followed || this.#asBuilt(boxes);
    this.partNamed("model").textContent = this.#figure.model(facts);
    const unsubscribe = worksheet.subscribe(() => this.#follow());
    signal.addEventListener("abort", unsubscribe);
    this.#listen(signal);
    whileNear(this, 600, signal, (near) => near && void this.#load());
    whileNear(this, 100, signal, (near) => {
      this.#inView = near;
      this.#follow();
    });
    // The built drawing and readings are another aircraft's: nothing of them may be seen, in view or not.
    if (this.dataset["owner"] === undefined) this.#catchUp();
    this.#follow();
  }

  /** A figure whose options choose what it shows comes in a chunk of its own. */
  async #fetch(): Promise<void> {
    const { figure = "", options = "{}" } = this.dataset;
    try {
      this.#figure = await loadFigure(figure, JSON.parse(options));
      if (this.#figure && this.isConnected) this.#start();
    } catch {
      say(this.partNamed("notice"), "The figure could not be loaded: it still shows the first values.");
    }
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    await this.#coming;
    return done;
  }

  #listen(signal: AbortSignal): void {
    const press = (name: string, run: () => void): void =>
      this.partNamed(name).addEventListener("click", run, { signal });
    press("keep", () => this.keep());
    press("let-go", () => {
      this.letGo();
      this.partNamed("keep").focus();
    });
    press("show-table", () => this.#toggleTable());
    press("reset", () => this.#reset());
    this.partNamed("save").addEventListener("click", (event) => this.#save(event), { signal });
    closeBehind(this.partNamed<HTMLDetailsElement>("save"), signal);
    new FigureScreen(this.partNamed("figure"), this.partNamed("full"), () => this.#refit(), signal);
    this.addEventListener("release", () => this.#tell(), { signal });
    window.addEventListener("beforeprint", () => this.#catchUp(), { signal });
    if (typeof ResizeObserver === "undefined") return;
    const sizes = new ResizeObserver(() => this.#live!.fit(this.#shown));
    sizes.observe(this.partNamed("plot"));
    signal.addEventListener("abort", () => sizes.disconnect());
  }

  async #load(): Promise<void> {
    if (this.#live!.ready) return;
    try {
      await this.#live!.load(this.loadDrawing, () => this.#shownNow());
      this.#failed = false;
      if (this.#shown) this.#live!.show(this.#shown);
    } catch {
      this.#failed = true;
    }
    this.#writeNotice();
  }

  #values(): Record<string, number> {
    return Object.fromEntries(this.#controls.map(({ need, value }) => [need, value]));
  }

  #state(): FigureState {
    return { values: this.#values(), kept: this.#kept, aircraft: this.facts! };
  }

  #shownNow(): Shown | undefined {
    return outsideOf(this.#figure!, this.#values()) ? undefined : this.#figure!.show(this.#state());
  }

  /** The state of the built drawing, as a key to compare later states with. */
  #asBuilt(boxes: readonly HTMLElement[]): string {
    const values = Object.fromEntries(boxes.map(({ dataset }) => [dataset["need"], Number(dataset["value"])]));
    return stateKey({ values, kept: undefined, owner: this.dataset["owner"] });
  }

  /** Controls follow at once; the rest too where it is seen, else as soon as the hand rests. */
  #follow(): void {
    for (const control of this.#controls) control.show();
    clearTimeout(this.#later);
    if (this.#inView) this.#catchUp();
    else this.#later = setTimeout(() => this.#catchUp(), 300);
  }

  #catchUp(): void {
    if (!this.#figure || !this.facts) return;
    const key = stateKey({ values: this.#values(), kept: this.#kept, owner: this.facts.owner });
    if (key === this.#followed) return;
    this.#followed = key;
    this.#outside = outsideOf(this.#figure, this.#values());
    this.#shown = this.#outside ? undefined : this.#figure.show(this.#state());
    this.partNamed("plot").toggleAttribute("data-outside", !this.#shown);
    this.#writeNotice();
    if (this.#shown) {
      this.#write(this.#shown);
      this.#live!.show(this.#shown);
    } else this.#writeNothing();
  }

  #writeNothing(): void {
    for (const now of this.querySelectorAll(".readings .now")) writeNumber(now, { number: "—", unit: "" });
    this.querySelector('[data-part="answer"]')?.replaceChildren();
  }

  #write({ readouts, description, kept, answer }: Shown): void {
    if (answer !== undefined) say(this.partNamed("answer"), answer);
    say(this.partNamed("description"), description);
    this.partNamed("kept").hidden = !kept;
    say(this.partNamed("kept-words"), kept);
    [...this.partNamed("readings").children].forEach((row, i) => {
      writeReadout(row, readouts[i]!);
    });
    this.#writeTable();
  }

  #writeNotice(): void {
    // Under another owner's numbers the built drawing stays out of sight.
    const stands = this.dataset["owner"] === undefined ? "" : ": it still shows the first values";
    const built = this.#failed && this.#shown ? `The live drawing could not be loaded${stands}.` : "";
    const words = [this.#outside ?? this.#shown?.notice ?? this.partNamed("notice").textContent, built]
      .filter(Boolean)
      .join(" ");
    say(this.partNamed("notice"), words);
  }

  /** To a listener, once a hand lets go: what has come of it. */
  #tell(): void {
    requestAnimationFrame(() => {
      const readouts = this.#shown?.readouts.map(({ label, number, spokenUnit }) => `${label} ${number} ${spokenUnit}`);
      const told = [readouts?.join(", "), this.#shown?.answer, this.partNamed("notice").textContent];
      this.partNamed("said").textContent = told.filter(Boolean).join(" ");
    });
  }

  get #tableOpen(): boolean {
    return this.partNamed("show-table").getAttribute("aria-expanded") === "true";
  }

  #toggleTable(): void {
    this.partNamed("show-table").setAttribute("aria-expanded", String(!this.#tableOpen));
    this.#shown ??= this.#shownNow();
    this.#writeTable();
  }

  #writeTable(): void {
    const slot = this.partNamed("table");
    if (this.#tableOpen && this.#shown) writeTable(slot, this.#shown.table());
    else if (slot.firstChild) clearTable(slot);
  }

  #reset(): void {
    for (const control of this.#controls) {
      this.worksheet!.reset(control.name);
      control.restore();
    }
    this.partNamed("reset").dispatchEvent(new Event("release", { bubbles: true }));
  }

  #refit(): void {
    this.#shown ??= this.#shownNow();
    this.#live!.fit(this.#shown);
    if (this.#shown) this.#live!.show(this.#shown);
  }

  async #save(event: Event): Promise<void> {
    const kind = (event.target as Element).closest<HTMLElement>("[data-save]")?.dataset["save"];
    const shown = this.#shown ?? this.#shownNow();
    if (!kind || !shown) return;
    const menu = this.partNamed<HTMLDetailsElement>("save");
    menu.open = false;
    menu.querySelector("summary")!.focus();
    const origin = this.#origin();
    const name = `${this.#figure!.name}.${kind}`;
    // Fetched when it is asked for: most readers save nothing.
    const { csvFile, csvOf, download, pictureOf, standalone, svgFile } = await import("./figure-save.ts");
    if (kind === "csv") return download(csvFile(csvOf(shown.table(), origin)), name);
    const whole = standalone(this.#live!.svg, origin);
    download(kind === "png" ? await pictureOf(whole) : svgFile(whole), name);
  }

  #origin(): Origin {
    const given = (name: string) => this.worksheet!.given.find((one) => one.name === name)!;
    const values = this.#controls.map(({ name, value }) => `${given(name).label} ${asSet(value, given(name).unit)}`);
    return {
      title: `Figure ${this.dataset["number"]}: ${this.partNamed("title").textContent}`,
      values: values.join(", ") + (this.#shown?.kept ? `; kept: ${this.#shown.kept}` : ""),
      aircraft: this.facts!.owner,
      model: [this.#shown?.answer, this.#figure!.model(this.facts!)].filter(Boolean).join(" "),
      date: this.clock().toISOString().slice(0, 10),
    };
  }
}

const stateKey = (state: { values: object; kept: object | undefined; owner: string | undefined }): string =>
  JSON.stringify(state);

/** A sentence where a value is one the figure's model doesn't answer for. */
export function outsideOf({ holds }: Figure, values: Readonly<Record<string, number>>): string | undefined {
  for (const [need, [from, to]] of Object.entries(holds)) {
    const value = values[need]!;
    if (!(value >= from && value <= to))
      return `${value} is outside what this figure’s model answers for: ${from} to ${to}.`;
  }
  return undefined;
}
