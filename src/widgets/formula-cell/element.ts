import { render } from "lit";
import { catalogue, type Formula } from "../../calc/index.ts";
import type { Row } from "../../cells/workings.ts";
import { LightElement } from "../light-element.ts";
import { fillRow, rowHtml, type Typeset } from "../working-rows.ts";
import { type Calculation, calculate } from "./calculation.ts";
import { type Calculator, calculatorOf, type Field } from "./fields.ts";
import { readField } from "./reading.ts";
import { calculatorView } from "./view.ts";
import { workingFor } from "./working.ts";

/** A formula of the sheet, whose calculator opens in place: its fields are in the page only while it is open. */
export class FormulaCellElement extends LightElement {
  /** Formulas of the workings, typeset at build. */
  typeset: Typeset = () => "";
  /** What the reader typed for each quantity, shared by all calculators of a page. */
  numbers: Map<string, string> = new Map();

  #calculator: Calculator | undefined;
  #texts = new Map<string, string>();
  #said = "";
  #shape = "";

  protected override firstUpdated(): void {
    this.partNamed("open").addEventListener("click", () => (this.isOpen ? this.close() : this.open()));
  }

  get isOpen(): boolean {
    return this.#calculator !== undefined;
  }

  get formula(): Formula {
    const formula = catalogue.find(({ name }) => name === this.id);
    if (!formula) throw new Error(`no formula is named "${this.id}"`);
    return formula;
  }

  /** Opens the calculator with the reader's own numbers where there are any, and goes to its first field. */
  open(): void {
    this.#calculator = calculatorOf(this.formula);
    this.#texts = new Map(this.#calculator.fields.flatMap((field) => this.#known(field)));
    this.#offer("Close");
    this.#show();
    const first = this.querySelector<HTMLInputElement | HTMLSelectElement>("input, select");
    first?.focus();
    if (first?.localName === "input") (first as HTMLInputElement).select();
  }

  close(): void {
    this.#calculator = undefined;
    this.#said = "";
    this.#shape = "";
    render("", this.partNamed("calculator"));
    this.#offer("Calculate");
  }

  #offer(words: "Calculate" | "Close"): void {
    const button = this.partNamed("open");
    button.textContent = words;
    button.setAttribute("aria-label", `${words} ${words === "Close" ? "the calculator: " : ""}${this.formula.words}`);
    button.setAttribute("aria-expanded", String(words === "Close"));
  }

  /** What was typed for the same quantity elsewhere, where this field of the formula's own can take it. */
  #known({ key, label, argument, of }: Field): [key: string, text: string][] {
    const text = this.numbers.get(quantity(label, argument.unit));
    if (text === undefined || of !== this.formula) return [];
    const reading = readField(text, argument);
    if ("unreadable" in reading || !holds(argument, reading.value)) return [];
    return [[key, text]];
  }

  #show(): void {
    const calculator = this.#calculator!;
    const calculation = calculate(calculator, this.#texts);
    const state = {
      ...{ calculator, calculation, texts: this.#texts, said: this.#said },
      input: (field: Field, text: string) => this.#input(field, text),
      changed: () => this.#tell(calculation),
      reset: () => this.#reset(),
      toggled: () => this.#showWorking(calculation),
    };
    render(calculatorView(state), this.partNamed("calculator"));
    this.#showWorking(calculation);
  }

  #input({ key, label, argument }: Field, text: string): void {
    this.#texts.set(key, text);
    this.numbers.set(quantity(label, argument.unit), text);
    this.#said = "";
    this.#show();
  }

  #reset(): void {
    for (const { label, argument } of this.#calculator!.fields) this.numbers.delete(quantity(label, argument.unit));
    this.#texts.clear();
    this.#said = "Example values.";
    this.#show();
  }

  /** To a listener, once a change is made: what has come of it. */
  #tell({ results, noSolution, notices, comparisons }: Calculation): void {
    const compared = comparisons.flatMap(({ lines }) => lines.map(({ label, difference }) => `${label} ${difference}`));
    const none = noSolution ? [`No solution: ${noSolution}`] : [];
    const words = [...notices.values(), ...none, ...results.map(({ spoken }) => spoken), ...compared];
    this.#said = words
      .map((each) => each.trim().replace(/\.$/, ""))
      .filter(Boolean)
      .join(". ");
    this.#show();
  }

  /** Numbers are filled in place while the rows stay the same, so that nothing a reader looks at is made anew. */
  #showWorking({ results, values }: Calculation): void {
    if (!this.partNamed<HTMLDetailsElement>("working").open) return;
    const rows = results.length > 0 ? workingFor(this.formula, values) : [];
    const list = this.partNamed("rows");
    const shape = JSON.stringify(rows.map(({ what, symbol, tex }: Row) => [what, symbol, tex]));
    if (shape !== this.#shape) list.innerHTML = rows.map((row) => rowHtml(row, this.typeset)).join("");
    else [...list.children].forEach((item, at) => void fillRow(item as HTMLElement, rows[at]!));
    this.#shape = shape;
  }
}

const quantity = (label: string, unit: string): string => `${label}|${unit}`;

function holds({ options, from = -Infinity, to = Infinity }: Field["argument"], value: number | string): boolean {
  if (options) return options.includes(String(value));
  return Number(value) >= from && Number(value) <= to;
}
