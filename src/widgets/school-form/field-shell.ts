import { unitSign, unitWords } from "../../cells/printed.ts";
import { type Field, rangeWords } from "../../cells/school/index.ts";
import { escaped } from "../escaped.ts";

/** The id of a field's control on the page. */
export const controlId = (id: string): string => `of-${id.replaceAll(".", "-")}`;

/** A field of the form: what it is, its control, its unit and range, and room for what is wrong with it. */
export function fieldShell(field: Field, entry: string): string {
  const id = controlId(field.id);
  const note = field.note ? `<span class="note">${escaped(field.note)}</span>` : "";
  return `<div class="entry ${field.kind}" data-field="${field.id}"><label for="${id}">${escaped(field.label)}${unitToHear(field)}${note}</label>${controlShell(field, entry)}<p class="range" id="${id}-range"><span>${rangeOf(field)}</span><span data-part="base"></span></p>${troubleShell(field)}</div>`;
}

/** The control alone, with its unit; `named` where no label of its own stands before it. */
export function controlShell(field: Field, entry: string, named = false): string {
  const id = controlId(field.id);
  const name = named ? ` aria-label="${escaped(field.label + spokenUnit(field))}"` : "";
  const described = named ? `${id}-trouble` : `${id}-range ${id}-trouble`;
  const common = `id="${id}" name="${field.id}" data-part="control" aria-describedby="${described}"${name}`;
  if (field.kind === "choice") {
    const options = Object.entries(field.choices).map(
      ([value, words]) =>
        `<option value="${escaped(value)}"${value === entry ? " selected" : ""}>${escaped(words)}</option>`,
    );
    return `<span class="box"><select ${common}>${options.join("")}</select></span>`;
  }
  if (field.kind === "list")
    return `<span class="box"><textarea ${common} rows="${entry.split("\n").length}" spellcheck="false">${escaped(entry)}</textarea></span>`;
  const mode = field.kind === "number" ? ' inputmode="text" class="figures"' : ` maxlength="${field.longest * 2}"`;
  const unit = field.kind === "number" && field.unit !== "plain" ? escaped(unitSign(field.unit)) : "";
  return `<span class="box"><input type="text" ${common}${mode} value="${escaped(entry)}"><span class="unit" aria-hidden="true">${unit}</span></span>`;
}

/** Room for what is wrong with a field's entry. */
export const troubleShell = ({ id }: Field): string =>
  `<p class="trouble" id="${controlId(id)}-trouble" data-trouble="${id}"></p>`;

const spokenUnit = (field: Field): string => {
  const words = field.kind === "number" ? unitWords(field.unit) : "";
  return words && `, ${words}`;
};

const unitToHear = (field: Field): string => {
  const words = spokenUnit(field);
  return words && `<span class="hidden-words">${escaped(words)}</span>`;
};

function rangeOf(field: Field): string {
  if (field.kind === "number") return escaped(rangeWords(field));
  return field.optional ? "may be left out" : "";
}
