import { html, nothing, type TemplateResult } from "lit";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { Formula } from "../../calc/index.ts";
import type { Calculation, ResultLine } from "./calculation.ts";
import type { ComparedLine, Comparison } from "./comparison.ts";
import { fieldView } from "./field-view.ts";
import type { Calculator, Field } from "./fields.ts";
import { kindSample, kindWords } from "./kind.ts";
import { capital } from "./wording.ts";

/** What a calculator shows, and whom it tells of a hand on it. */
export interface CalculatorState {
  readonly calculator: Calculator;
  readonly calculation: Calculation;
  /** What was typed, by key. */
  readonly texts: ReadonlyMap<string, string>;
  /** A sentence for a listener, after a change was made. */
  readonly said: string;
  readonly input: (field: Field, text: string) => void;
  readonly changed: () => void;
  readonly reset: () => void;
  readonly toggled: () => void;
}

/** Fields, results, what they are compared with, and a place for the working. */
export function calculatorView(state: CalculatorState): TemplateResult {
  const { formula, fields } = state.calculator;
  const [own, others] = [true, false].map((is) => fields.filter((field) => (field.of === formula) === is));
  return html`<form
    class="calculator"
    aria-label="Calculator: ${formula.words}"
    autocomplete="off"
    novalidate
    @submit=${(event: Event) => event.preventDefault()}
    @change=${state.changed}
  >
    <div class="fields">
      ${own!.map((field) => fieldView(field, state))}
      ${others!.length > 0 ? html`<p class="group">${groupWords(state.calculator)}</p>` : nothing}
      ${others!.map((field) => fieldView(field, state))}
    </div>
    <div class="outcome">${resultsView(formula, state.calculation)} ${state.calculation.comparisons.map(comparisonView)}</div>
    <div class="beneath">
      <details class="working-of" data-part="working" @toggle=${state.toggled}>
        <summary>Working</summary>
        <ol class="steps" aria-label="Working" data-part="rows"></ol>
      </details>
      <button type="button" class="said" @click=${state.reset}>Example values</button>
    </div>
    <p class="hidden-words" role="status">${state.said}</p>
  </form>`;
}

/** What the fields are for that the formula itself doesn't take. */
function groupWords({ formula, compared }: Calculator): string {
  if (formula.kind !== "rule") return "For the rule of thumb";
  return compared[0]?.kind === "model" ? "For the model" : "For the exact value";
}

function resultsView(formula: Formula, { results, noSolution, notices }: Calculation): TemplateResult {
  const label = capital(formula.words);
  const none: ResultLine = { label, number: "—", unit: "", spoken: "" };
  const whole = notices.get("");
  return html`<dl class="readings">
      ${
        noSolution
          ? html`<div><dt>${label}</dt><dd class="none">No solution: ${noSolution}.</dd></div>`
          : (results.length > 0 ? results : [none]).map(readingView)
      }
    </dl>
    ${whole ? html`<p class="trouble">${whole}</p>` : nothing}`;
}

const readingView = ({ label, number, unit }: ResultLine): TemplateResult =>
  html`<div><dt>${label}</dt><dd class="now${number.length > 9 ? " long" : ""}">${number}${unit === "°" ? unit : html`<small>${unit}</small>`}</dd></div>`;

function comparisonView({ formula, lines, note }: Comparison): TemplateResult {
  const { kind, name, words } = formula;
  return html`<div class="against">
    <p class="other">${unsafeHTML(kindSample(kind))}<a href="#${name}">${capital(kind === "rule" ? words : `${kindWords[kind]}: ${words}`)}</a></p>
    ${lines.map(lineView)} ${note ? html`<p class="caveat">${capital(note)}.</p>` : nothing}
  </div>`;
}

const lineView = ({ label, value, difference }: ComparedLine): TemplateResult =>
  html`<p class="line"><span>${label}</span> <b>${value}</b> <span class="difference">${difference}</span></p>`;
