import type { Question } from "../../cells/exercises/index.ts";
import type { BuiltExercise } from "./built.ts";
import { fillHtml } from "./fill-html.ts";
import type { ReplyControl } from "./reply.ts";
import { letter } from "./verdict.ts";

/** Lettered rows, one or several of them to be ticked. */
export function choiceReply(form: HTMLFormElement): ReplyControl {
  const rows = [...form.querySelectorAll<HTMLElement>("[data-key]")];
  const tick = (row: HTMLElement): HTMLInputElement => row.querySelector("input")!;
  const inOrder = (): HTMLElement[] => [...form.querySelectorAll<HTMLElement>("[data-key]")];
  return {
    read: () => rows.filter((row) => tick(row).checked).map((row) => row.dataset["key"]!),
    ask: (question, built) => {
      arrange(rows, question, built);
      for (const row of rows) {
        tick(row).checked = false;
        row.querySelector('[data-part="note"]')!.textContent = "";
      }
    },
    note: (question) => {
      for (const row of rows) {
        const right = question.kind === "choice" && question.answer.includes(row.dataset["key"]!);
        row.querySelector('[data-part="note"]')!.textContent = right ? "right" : tick(row).checked ? "not right" : "";
      }
    },
    focus: () => tick(inOrder()[0]!).focus(),
  };
}

function arrange(rows: readonly HTMLElement[], question: Question, { html }: BuiltExercise): void {
  if (question.kind !== "choice") return;
  for (const [at, key] of question.options.entries()) {
    const row = rows.find((one) => one.dataset["key"] === key);
    if (!row) continue;
    row.querySelector('[data-part="letter"]')!.textContent = letter(at);
    row.querySelector('[data-part="text"]')!.innerHTML = fillHtml(html.options[key] ?? "", question.printed);
    row.parentElement!.append(row);
  }
}
