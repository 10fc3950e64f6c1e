import { html, nothing, type TemplateResult } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import { live } from "lit/directives/live.js";
import { unitSign, unitWords } from "../../cells/printed.ts";
import { typedText } from "../figure-scale.ts";
import type { Field } from "./fields.ts";
import type { CalculatorState } from "./view.ts";
import { capital, optionWords } from "./wording.ts";

/** A field with its label, how it was read, and what is wrong with it. */
export function fieldView(field: Field, state: CalculatorState): TemplateResult {
  const { key, label, argument, follows } = field;
  const { calculator, calculation, texts } = state;
  const box: Box = {
    id: `${calculator.formula.name}-${key}`,
    text: texts.get(key) ?? (follows ? typedText(Number(calculation.values.get(key))) : field.start),
    trouble: calculation.notices.get(key),
    input: (text) => state.input(field, text),
  };
  const read = follows && !texts.has(key) ? follows.say : calculation.read.get(key);
  const unit = argument.options ? "" : `, ${unitWords(argument.unit) || "a plain number"}`;
  return html`<div class="field">
    <label for=${box.id}>${capital(label)}<span class="hidden-words">${unit}</span></label>
    ${argument.options ? choiceBox(argument.options, box) : numberBox(argument.unit, box)}
    <p class="read" id="${box.id}-read">${read ?? nothing}</p>
    <p class="trouble" id="${box.id}-trouble">${box.trouble ?? nothing}</p>
  </div>`;
}

interface Box {
  readonly id: string;
  readonly text: string;
  readonly trouble: string | undefined;
  readonly input: (text: string) => void;
}

function numberBox(unit: string, { id, text, trouble, input }: Box): TemplateResult {
  return html`<span class="box"><input
      id=${id}
      type="text"
      autocapitalize="off"
      spellcheck="false"
      enterkeyhint="done"
      aria-invalid=${ifDefined(trouble && "true")}
      aria-describedby="${id}-read ${id}-trouble"
      .value=${live(text)}
      @input=${(event: Event) => input((event.target as HTMLInputElement).value)}
    /><span class="unit" aria-hidden="true">${unitSign(unit)}</span></span>`;
}

function choiceBox(options: readonly string[], { id, text, trouble, input }: Box): TemplateResult {
  return html`<span class="box"><select
      id=${id}
      aria-invalid=${ifDefined(trouble && "true")}
      aria-describedby="${id}-trouble"
      @input=${(event: Event) => input((event.target as HTMLSelectElement).value)}
    >
      ${options.map((option) => html`<option value=${option} .selected=${option === text}>${choiceText(option)}</option>`)}
    </select></span>`;
}

/** A unit stands with its words: 'kt, knots'. */
function choiceText(option: string): string {
  const [sign, words] = [unitSign(option), unitWords(option)];
  return words === option ? optionWords(option) : `${sign}, ${words}`;
}
