import { readAloud } from "../read-aloud.ts";
import { fillHtml } from "./fill-html.ts";
import type { ReplyControl } from "./reply.ts";

/**
 * Rows to be put in order: by their buttons, by Alt and an arrow, or dragged by the grip.
 *
 * @param changed called when a reader moved a row
 * @param announce says a row's new place to assistive technology
 */
export function orderReply(
  form: HTMLFormElement,
  changed: () => void,
  announce: (words: string) => void,
): ReplyControl {
  const list = form.querySelector<HTMLElement>('[data-part="rows"]')!;
  const moved = (row: HTMLElement): void => {
    number(list);
    const rows = rowsOf(list);
    announce(`${readAloud(textOf(row))}: now ${rows.indexOf(row) + 1} of ${rows.length}`);
    changed();
  };
  bindButtons(list, moved);
  bindKeys(list, moved);
  bindDrag(list, moved);
  number(list);
  return {
    read: () => rowsOf(list).map((row) => row.dataset["key"]!),
    ask: (question, { html }) => {
      if (question.kind !== "order") return;
      const rows = rowsOf(list);
      for (const key of question.options) {
        const row = rows.find((one) => one.dataset["key"] === key);
        if (!row) continue;
        textOf(row).innerHTML = fillHtml(html.options[key] ?? "", question.printed);
        list.append(row);
      }
      number(list);
    },
    note: () => {},
    focus: () => rowsOf(list)[0]?.querySelector<HTMLElement>('[data-move="1"]')?.focus(),
  };
}

const rowsOf = (list: HTMLElement): HTMLElement[] => [...list.querySelectorAll<HTMLElement>("[data-key]")];
const textOf = (row: HTMLElement): HTMLElement => row.querySelector<HTMLElement>('[data-part="text"]')!;

/** Writes each row's place beside it; the first can't go up, the last can't go down. */
function number(list: HTMLElement): void {
  const rows = rowsOf(list);
  for (const [at, row] of rows.entries()) {
    row.querySelector('[data-part="no"]')!.textContent = `${at + 1}`;
    row.querySelector('[data-move="-1"]')!.setAttribute("aria-disabled", String(at === 0));
    row.querySelector('[data-move="1"]')!.setAttribute("aria-disabled", String(at === rows.length - 1));
  }
}

/** Moves a row one place, if there is one; true where it moved. */
function shift(list: HTMLElement, row: HTMLElement, by: number): boolean {
  const rows = rowsOf(list);
  const other = rows[rows.indexOf(row) + by];
  if (!other) return false;
  // The row that is focused stays where it is in the document, so that its focus isn't lost: its neighbour moves.
  if (by < 0) row.after(other);
  else row.before(other);
  return true;
}

function bindButtons(list: HTMLElement, moved: (row: HTMLElement) => void): void {
  list.addEventListener("click", (event) => {
    const button = (event.target as Element).closest<HTMLElement>("[data-move]");
    const row = button?.closest<HTMLElement>("[data-key]");
    if (button && row && shift(list, row, Number(button.dataset["move"]))) moved(row);
  });
}

function bindKeys(list: HTMLElement, moved: (row: HTMLElement) => void): void {
  list.addEventListener("keydown", (event) => {
    const row = (event.target as Element).closest<HTMLElement>("[data-key]");
    if (!row || !event.altKey || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
    event.preventDefault();
    if (shift(list, row, event.key === "ArrowUp" ? -1 : 1)) moved(row);
  });
}

function bindDrag(list: HTMLElement, moved: (row: HTMLElement) => void): void {
  let held: { row: HTMLElement; pointer: number; moved: boolean } | undefined;
  list.addEventListener("pointerdown", (event) => {
    const row = (event.target as Element).closest('[data-part="grip"]')?.closest<HTMLElement>("[data-key]");
    if (!row || event.button !== 0) return;
    event.preventDefault();
    held = { row, pointer: event.pointerId, moved: false };
    row.classList.add("held");
    // The list holds the pointer: a row that moves in the document would let go of it.
    list.setPointerCapture(event.pointerId);
  });
  list.addEventListener("pointermove", (event) => {
    if (held?.pointer !== event.pointerId) return;
    const by = passed(rowsOf(list), held.row, event.clientY);
    if (by !== 0 && shift(list, held.row, by)) {
      held.moved = true;
      number(list);
    }
  });
  const letGo = (event: PointerEvent): void => {
    if (held?.pointer !== event.pointerId) return;
    held.row.classList.remove("held");
    if (held.moved) moved(held.row);
    held = undefined;
  };
  list.addEventListener("pointerup", letGo);
  list.addEventListener("pointercancel", letGo);
}

/** −1 or 1 where a pointer has gone beyond the middle of the row above or below, else 0. */
function passed(rows: readonly HTMLElement[], row: HTMLElement, y: number): number {
  const at = rows.indexOf(row);
  const middle = (one: HTMLElement): number => {
    const { top, height } = one.getBoundingClientRect();
    return top + height / 2;
  };
  if (at > 0 && y < middle(rows[at - 1]!)) return -1;
  return at < rows.length - 1 && y > middle(rows[at + 1]!) ? 1 : 0;
}
