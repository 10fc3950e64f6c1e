import type { PropertyValues } from "lit";
import { OutOfRange } from "../calc/limits.ts";
import type { PredictCell } from "../cells/chapter.ts";
import { evaluate, parseExpression } from "../cells/expressions/index.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import { LightElement } from "./light-element.ts";
import { answerWords } from "./predict-cell.ts";
import { readAloud } from "./read-aloud.ts";

/** What a `predicted` event carries; the page keeps the figure that follows and sets these values. */
export interface Predicted {
  readonly id: string;
  /** The letter chosen. */
  readonly chosen: string;
  readonly right: boolean;
  readonly values: Readonly<Record<string, number>>;
}

/** What an `ask-again` event carries: the values as they were before the reveal. */
export type AskedAgain = Pick<Predicted, "id" | "values">;

/**
 * A question for the room. Choosing a row fires `predicted`, says which letter is right and shows what to see;
 * 'Ask again' fires `ask-again` and puts the question back. Both bubble.
 */
export class PredictCellElement extends LightElement {
  static override properties = { worksheet: { attribute: false } };
  declare worksheet: Worksheet | undefined;
  #before: Record<string, number> = {};
  #thaw: (() => void)[] = [];

  protected override firstUpdated(changed: PropertyValues): void {
    super.firstUpdated(changed);
    for (const row of this.#rows) row.addEventListener("click", () => this.#choose(row));
    this.partNamed("again").addEventListener("click", () => this.#again());
  }

  get #rows(): HTMLButtonElement[] {
    return [...this.querySelectorAll<HTMLButtonElement>("button[data-key]")];
  }

  #choose(row: HTMLButtonElement): void {
    const reveal = this.partNamed("reveal");
    if (!reveal.hidden) return;
    const chosen = row.dataset["key"]!;
    const right = reveal.dataset["right"]!.split(" ");
    for (const other of this.#rows) {
      other.setAttribute("aria-pressed", String(other === row));
      other.setAttribute("aria-disabled", "true");
    }
    // What was asked stays as it was asked, whatever the reveal changes.
    this.#thaw = [...this.querySelectorAll<HTMLElement>('[data-part="words"]')].map(freeze);
    const values = this.#valuesThen();
    this.#before = Object.fromEntries(Object.keys(values).map((name) => [name, this.worksheet?.value(name) as number]));
    this.partNamed("answer").textContent = answerWords(right, chosen);
    reveal.hidden = false;
    this.#fire<Predicted>("predicted", { id: this.id, chosen, right: right.includes(chosen), values });
    // The sentence is read once, with the values of the reveal in it; it must not be read again as a slider moves.
    requestAnimationFrame(() => {
      this.partNamed("status").textContent =
        `${this.partNamed("answer").textContent} ${readAloud(this.partNamed("say"))}`;
    });
  }

  /** The values of the change, all or none: a change that leaves a formula's range is not made. */
  #valuesThen(): Record<string, number> {
    const then = JSON.parse(this.dataset["then"] ?? "[]") as PredictCell["then"];
    try {
      const values = then.map(({ name, is }) => [
        name,
        evaluate(parseExpression(is), (one) => this.worksheet?.value(one)),
      ]);
      return values.every(([, value]) => Number.isFinite(value)) ? Object.fromEntries(values) : {};
    } catch (error) {
      if (error instanceof OutOfRange) return {};
      throw error;
    }
  }

  #again(): void {
    const rows = this.#rows;
    for (const row of rows) {
      row.setAttribute("aria-pressed", "false");
      row.removeAttribute("aria-disabled");
    }
    for (const thaw of this.#thaw) thaw();
    this.partNamed("reveal").hidden = true;
    this.partNamed("status").textContent = "";
    rows[0]?.focus();
    this.#fire<AskedAgain>("ask-again", { id: this.id, values: this.#before });
  }

  #fire<Detail>(name: string, detail: Detail): void {
    this.dispatchEvent(new CustomEvent<Detail>(name, { bubbles: true, detail }));
  }
}

/** Puts plain text in the place of an element's live values; returns what brings them back. */
function freeze(element: HTMLElement): () => void {
  const living = [...element.childNodes];
  const still = element.cloneNode(true) as HTMLElement;
  for (const value of still.querySelectorAll(".given, .live")) value.replaceWith(value.textContent ?? "");
  element.replaceChildren(...still.childNodes);
  return () => element.replaceChildren(...living);
}
