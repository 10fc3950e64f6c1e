import type { Row } from "../cells/workings.ts";
import { escaped } from "./escaped.ts";

/** TeX as HTML for a line of text; '' where there is none for it. */
export type Typeset = (tex: string) => string;

/** A row of a working: what, formula, the numbers beneath the formula's equals sign, what they come to. */
export function rowHtml(row: Row, typeset: Typeset, step?: number): string {
  const formula = row.tex ? typeset(row.tex) : "";
  const of = step === undefined ? "" : ` data-step="${step}" data-tex="${escaped(row.tex ?? "")}"`;
  return `<li${formula && ' class="formed"'}${of}${row.idle ? " hidden" : ""}><span class="what">${escaped(row.what)}</span><span class="sign">${row.symbol ? typeset(row.symbol) : ""}</span><span class="sum">${
    formula ? `<span class="line" data-part="formula">= ${formula}</span>` : ""
  }${numbersHtml(row)}</span><b class="comes" data-part="comes">${escaped(row.comes)}</b></li>`;
}

/** Numbers to look at, and a sentence in their place for whoever listens. */
const numbersHtml = ({ numbers, spoken }: Row): string =>
  `<span class="line"><span data-part="numbers" aria-hidden="true">${sumHtml(numbers)}</span><span class="hidden-words" data-part="spoken">${escaped(spoken)}</span></span>`;

/** Powers stand raised: what follows '^' is a number, or one pair of brackets without others in it. */
const sumHtml = (numbers: string): string =>
  numbers &&
  `= ${escaped(numbers).replace(/\^(?:\(([^()]*)\)|([−\d.]+))/g, (_, inner, bare) => `<sup>${inner ?? bare}</sup>`)}`;

/** Puts other numbers into a row that stands; its formula stays. A row of a branch not taken is out of sight. */
export function fillRow(item: HTMLElement, row: Pick<Row, "numbers" | "spoken" | "comes" | "idle" | "tex">): void {
  const { numbers, spoken, comes, tex = "", idle = false } = row;
  item.hidden = idle;
  // A few formulas read otherwise beyond a boundary: what was typeset for this side of it is not shown for that one.
  item.querySelector('[data-part="formula"]')?.toggleAttribute("hidden", tex !== item.dataset["tex"]);
  const htmls = { numbers: sumHtml(numbers), spoken: escaped(spoken), comes: escaped(comes) };
  for (const [name, html] of Object.entries(htmls)) {
    const part = item.querySelector(`[data-part="${name}"]`);
    if (part && part.innerHTML !== html) part.innerHTML = html;
  }
}
