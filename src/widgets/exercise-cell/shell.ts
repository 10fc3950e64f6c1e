import type { ChoiceQuestion, NumberQuestion, OrderQuestion, Question } from "../../cells/exercises/index.ts";
import { printedParts, unitWords } from "../../cells/printed.ts";
import { escaped } from "../escaped.ts";
import type { BuiltExercise } from "./built.ts";
import { fillHtml } from "./fill-html.ts";
import { letter } from "./verdict.ts";

/**
 * An exercise as built, with the numbers of seed 'first': the question and its hints read without scripts.
 *
 * @param number its place among the chapter's exercises, counted from 1
 */
export function exerciseShell(built: BuiltExercise, question: Question, number: number): string {
  const { id, objective } = built.exercise;
  return `<exercise-cell class="marked wide" id="${id}" role="group" aria-labelledby="${id}-name"><p class="label"><span id="${id}-name">Exercise ${number}</span><span class="soft">${escaped(objective)}</span><span class="soft" data-part="head"></span></p><p class="ask" id="${id}-ask" data-part="ask">${fillHtml(built.html.ask, question.printed)}</p>${replyHtml(built, question)}${hintsHtml(built, question)}<div class="verdict" role="status" data-part="verdict"></div><figure class="aside" data-part="drawing" hidden></figure><div class="shown" data-part="working"></div><div class="own" data-part="own"></div><div class="tools" data-part="tools" hidden>${built.exercise.draws.length > 0 ? '<button type="button" class="main" data-do="fresh">Fresh numbers</button>' : ""}<button type="button" class="said" data-do="again">${built.exercise.draws.length > 0 ? "These numbers again" : "Ask again"}</button></div><p class="hidden-words" role="status" data-part="status"></p></exercise-cell>`;
}

function replyHtml(built: BuiltExercise, question: Question): string {
  if (question.kind === "number") return numberReply(question);
  if (question.kind === "choice") return choiceReply(built, question);
  return orderReply(built, question);
}

// A form of the method 'dialog' that stands in no dialog goes nowhere: Enter before the script has come does no harm.
const markButton = '<button type="submit" class="main" data-part="mark">Mark</button>';

function numberReply(question: NumberQuestion): string {
  const { id, label, unit } = question.exercise;
  const words = unitWords(unit);
  const shown = printedParts(question.answer, question.exercise).unit.trim();
  return `<form class="reply needs-script" method="dialog" data-part="form" novalidate><label for="${id}-reply">${escaped(label)}${
    words ? `<span class="hidden-words">, ${escaped(words)}</span>` : ""
  }</label><span class="field"><input id="${id}-reply" data-part="reply" type="text" inputmode="${keyboardOf(question)}" autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="done"><span class="unit" aria-hidden="true">${escaped(shown)}</span></span>${markButton}</form>`;
}

/** A number pad where digits are all a reply can need; letters and signs where it may need 'left', a minus or '1:30'. */
function keyboardOf({ answer, slips, exercise }: NumberQuestion): "decimal" | "text" {
  const signed = exercise.signIgnored || answer < 0 || slips.some(({ value }) => value < 0);
  return signed || ["s", "min", "h"].includes(exercise.unit) ? "text" : "decimal";
}

function choiceReply(built: BuiltExercise, question: ChoiceQuestion): string {
  const { id, several } = question.exercise;
  const kind = several ? "checkbox" : "radio";
  const rows = question.options.map((key, at) => ({
    key,
    inner: rowInner(letter(at), optionHtml(built, question, key)),
  }));
  const inputs = rows.map(
    ({ key, inner }) =>
      `<label data-key="${escaped(key)}"><input type="${kind}" name="${id}-reply" value="${escaped(key)}">${inner}<span class="row-note" data-part="note"></span></label>`,
  );
  const wanted = several ? '<p class="soft label">All that are right</p>' : "";
  return `<form class="needs-script" method="dialog" data-part="form" novalidate><fieldset class="lettered" aria-labelledby="${id}-ask" data-part="rows">${wanted}${inputs.join("")}</fieldset><p class="tools">${markButton}</p></form><noscript><ul class="lettered">${rows
    .map(({ inner }) => `<li>${inner}</li>`)
    .join("")}</ul></noscript>`;
}

const rowInner = (mark: string, html: string): string =>
  `<kbd data-part="letter">${mark}</kbd><span data-part="text">${html}</span>`;

function orderReply(built: BuiltExercise, question: OrderQuestion): string {
  const { id } = question.exercise;
  const items = question.options.map((key, at) => {
    const text = optionHtml(built, question, key);
    const row = `${id}-row-${at + 1}`;
    const button = (by: number, word: string): string =>
      `<button type="button" data-move="${by}" id="${row}-${word}" aria-labelledby="${row}-${word} ${row}">${word}</button>`;
    return `<li data-key="${escaped(key)}" tabindex="-1"><span class="grip" data-part="grip" aria-hidden="true"><svg viewBox="0 0 18 18"><path d="M3 6h12M3 12h12"/></svg></span><span class="no" data-part="no">${at + 1}</span><span class="text" id="${row}" data-part="text">${text}</span>${button(-1, "Up")}${button(1, "Down")}</li>`;
  });
  const plain = question.options.map((key) => `<li>${optionHtml(built, question, key)}</li>`);
  return `<form class="needs-script" method="dialog" data-part="form" novalidate><ol class="ordering" aria-labelledby="${id}-ask" data-part="rows">${items.join("")}</ol><p class="tools">${markButton}</p></form><noscript><ul class="ordered">${plain.join("")}</ul></noscript>`;
}

const optionHtml = ({ html }: BuiltExercise, { printed }: Question, key: string): string =>
  fillHtml(html.options[key] ?? "", printed);

/** A hint a fold; style keeps each out of sight until the one before it is open. */
function hintsHtml({ html }: BuiltExercise, { printed }: Question): string {
  const folds = html.hints.map(
    (hint, at) =>
      `<details><summary>${html.hints.length > 1 ? `Hint ${at + 1} of ${html.hints.length}` : "Hint"}</summary><p data-part="hint">${fillHtml(hint, printed)}</p></details>`,
  );
  return folds.length > 0 ? `<div class="hints" data-part="hints">${folds.join("")}</div>` : "";
}
