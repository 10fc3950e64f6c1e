import type { Question, Verdict } from "../../cells/exercises/index.ts";
import { escaped } from "../escaped.ts";
import { rowHtml, type Typeset } from "../working-rows.ts";
import type { BuiltExercise } from "./built.ts";
import { fillHtml } from "./fill-html.ts";

type Kind = Verdict["kind"];

const words: Record<Kind, string> = {
  right: "Right",
  close: "Close",
  slip: "Slip",
  wrong: "Wrong",
  unreadable: "Unreadable",
};

/** A tick, two waves, a path that forks, a cross, broken lines. */
const marks: Record<Kind, string> = {
  right: '<svg viewBox="0 0 28 28" aria-hidden="true"><path d="M3 15l7.5 8L25 5"/></svg>',
  close:
    '<svg viewBox="0 0 28 28" aria-hidden="true"><path d="M3 11c5-5 8-4 11-1.5s7 3.5 11-1.5M3 20c5-5 8-4 11-1.5s7 3.5 11-1.5"/></svg>',
  slip: '<svg viewBox="2.5 0 25 28" aria-hidden="true"><path d="M4 27v-9c0-6 4-10 12-10h6M17 3l5.5 5L17 13"/><path d="M4 10.500v.1M4 6v.1M4 1.500v.1" stroke-width="3"/></svg>',
  wrong: '<svg viewBox="0 0 28 28" aria-hidden="true"><path d="M5 5l18 18M23 5L5 23"/></svg>',
  unreadable:
    '<svg viewBox="0 0 28 28" aria-hidden="true"><path d="M3 20h22" stroke-dasharray="5 5"/><path d="M3 9h22" stroke-dasharray="1 6"/></svg>',
};

/** The drawn mark and the word of a verdict, then why, in a sentence. */
export function verdictHtml(verdict: Verdict, question: Question, built: BuiltExercise): string {
  const { kind } = verdict;
  return `<p class="word ${kind}">${marks[kind]}<span>${words[kind]}</span></p>${sayHtml(verdict, question, built)}`;
}

function sayHtml({ because, say }: Verdict, question: Question, { html }: BuiltExercise): string {
  const told = because.flatMap((key) => {
    const template = html.say[key];
    return template ? [`<p>${letterOf(key, question)}${fillHtml(template, question.printed)}</p>`] : [];
  });
  if (told.length > 0) return told.join("");
  return say ? `<p>${escaped(say)}</p>` : "";
}

/** A choice's sentences stand beside the letter of the row they speak of. */
function letterOf(key: string, question: Question): string {
  const at = question.kind === "choice" ? question.options.indexOf(key) : -1;
  return at < 0 ? "" : `<kbd>${letter(at)}</kbd> `;
}

/** A, B, C … for a row's place, counted from 0. */
export const letter = (at: number): string => String.fromCharCode(65 + at);

/** The working with the reader's numbers; nothing after a reply that could not be read. */
export function workingHtml(verdict: Verdict, question: Question, built: BuiltExercise): string {
  if (verdict.kind === "unreadable") return "";
  const rows = verdict.working.map((row) => rowHtml(row, typesetter(built))).join("");
  const steps = rows && `<ol class="steps" aria-label="The working">${rows}</ol>`;
  return steps + (verdict.kind === "right" ? "" : orderHtml(question, built)) + whyHtml(verdict, question, built);
}

function orderHtml(question: Question, { html }: BuiltExercise): string {
  if (question.kind !== "order") return "";
  const items = question.answer.map((key) => `<li>${fillHtml(html.options[key] ?? "", question.printed)}</li>`);
  return `<p class="label">The order</p><ol class="ordered">${items.join("")}</ol>`;
}

const whyHtml = ({ why }: Verdict, question: Question, { html }: BuiltExercise): string =>
  why && `<p class="label">Why</p><p class="why">${fillHtml(html.why, question.printed)}</p>`;

/** Typeset at build; a single letter that wasn't is set plainly, and a formula that wasn't is left out. */
const typesetter =
  ({ formulas }: BuiltExercise): Typeset =>
  (tex) =>
    Object.hasOwn(formulas, tex) ? formulas[tex]! : /^[A-Za-z]$/.test(tex) ? `<i>${tex}</i>` : "";
