import type { PredictCell } from "../cells/chapter.ts";
import { escaped } from "./escaped.ts";

/** The inline HTML of a question for the room, options in the order of the cell's. */
export interface PredictHtml {
  readonly ask: string;
  readonly options: readonly string[];
  readonly say: string;
}

/** A question to answer before the figure does; without scripts its answer stands in a fold. */
export function predictShell(cell: PredictCell, html: PredictHtml): string {
  const { id } = cell;
  const right = cell.options.filter((option) => option.right).map((option) => option.key);
  const rows = cell.options.map(({ key }, at) => lettered(key, html.options[at] ?? ""));
  const then = escaped(JSON.stringify(cell.then));
  return `<predict-cell class="predict" id="${id}" data-then="${then}"><p class="label sans">Predict</p><p class="asked" id="${id}-ask" data-part="words">${html.ask}</p><div class="choices needs-script" role="group" aria-labelledby="${id}-ask">${rows
    .map(({ key, inner }) => `<button type="button" aria-pressed="false" data-key="${key}">${inner}</button>`)
    .join(
      "",
    )}</div><noscript><ul class="choices">${rows.map(({ inner }) => `<li>${inner}</li>`).join("")}</ul><details><summary>The answer</summary><p class="reveal"><b>${answerWords(right)}</b> ${html.say}</p></details></noscript><p class="reveal" data-part="reveal" data-right="${right.join(" ")}" hidden><b data-part="answer"></b> <span data-part="say">${html.say}</span> <button type="button" class="said" data-part="again">Ask again</button></p><p class="hidden-words" role="status" data-part="status"></p></predict-cell>`;
}

/** The right letter in words: 'D is right.', and after a choice 'D is right, not B.' */
export function answerWords(right: readonly string[], chosen?: string): string {
  const letters = right.length > 1 ? `${right.slice(0, -1).join(", ")} and ${right.at(-1)} are` : `${right[0]} is`;
  return `${letters} right${chosen === undefined || right.includes(chosen) ? "" : `, not ${chosen}`}.`;
}

const lettered = (key: string, html: string) => ({
  key,
  inner: `<kbd>${key}</kbd><span data-part="words">${html.replace(HANDLE, '<span class="live" data-is="$1">')}</span>`,
});

/** A given in a row that is itself pressed: it follows there, and can't be changed. */
const HANDLE = /<span class="given"[^>]*? data-given="([^"]*)"[^>]*>/g;
