import { unitSign } from "../cells/printed.ts";
import { escaped } from "./escaped.ts";
import type { Column, FigureTable } from "./figure.ts";
import { rounded, signed } from "./figure-words.ts";
import { say } from "./said.ts";

/**
 * Shows a figure's numbers as a table in an empty slot; a table of the same shape that is there already takes the new
 * numbers. The row nearest the present values is marked, and so is the kept one.
 */
export function writeTable(slot: HTMLElement, table: FigureTable): void {
  const { columns, rows } = table;
  const shape = `${columns.length} ${rows.length}`;
  if (slot.dataset["shape"] !== shape) {
    slot.dataset["shape"] = shape;
    slot.innerHTML = skeleton(table);
  }
  slot.querySelectorAll("thead th").forEach((head, i) => {
    say(head, headOf(columns[i]!));
  });
  slot.querySelectorAll("tbody tr").forEach((row, i) => {
    writeRow(row, table, i);
  });
  const kept = table.was === undefined ? "" : "; ⋯ nearest the kept ones";
  say(slot.querySelector(".table-note")!, `▸ nearest the present values${kept}`);
}

export function clearTable(slot: HTMLElement): void {
  delete slot.dataset["shape"];
  slot.replaceChildren();
}

function skeleton({ caption, columns, rows }: FigureTable): string {
  const words = escaped(caption);
  const heads = columns.map(() => '<th scope="col"></th>').join("");
  const cells = columns
    .map((_, i) => (i === 0 ? '<th scope="row"><i aria-hidden="true"></i><span></span></th>' : "<td></td>"))
    .join("");
  const row = `<tr>${cells}</tr>`;
  return `<div class="scroller" tabindex="0" role="region" aria-label="${words}"><table><caption>${words}</caption><thead><tr>${heads}</tr></thead><tbody>${row.repeat(rows.length)}</tbody></table><p class="table-note"></p></div>`;
}

function writeRow(row: Element, { columns, rows, here, was }: FigureTable, i: number): void {
  if (i === here) row.setAttribute("aria-current", "true");
  else row.removeAttribute("aria-current");
  say(row.querySelector("i")!, `${i === here ? "▸" : ""}${i === was ? "⋯" : ""}`);
  [row.querySelector("span")!, ...row.querySelectorAll("td")].forEach((cell, k) => {
    const value = rows[i]![k]!;
    say(cell, value === null ? "—" : cellText(value, columns[k]!));
  });
}

/** 'Rate at 95 kt, °/s': the unit stands in the header, once. */
export const headOf = ({ name, unit }: Column): string => (unit === "plain" ? name : `${name}, ${unitSign(unit)}`);

/** A cell without its unit. */
const cellText = (value: number, { digits, signed: withSign }: Column): string =>
  withSign ? signed(value, "plain", digits) : rounded(value, "plain", digits);
