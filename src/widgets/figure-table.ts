import { html, type TemplateResult } from "lit";
import { unitSign } from "../cells/printed.ts";
import type { Column, FigureTable } from "./figure.ts";
import { rounded, signed } from "./figure-words.ts";

/** The figure's numbers as a table; the row nearest the present values is marked, and so is the kept one. */
export function tableTemplate({ caption, columns, rows, here, was }: FigureTable): TemplateResult {
  return html`<div class="scroller" tabindex="0" role="region" aria-label=${caption}>
    <table>
      <caption>${caption}</caption>
      <thead><tr>${columns.map((column) => html`<th scope="col">${headOf(column)}</th>`)}</tr></thead>
      <tbody>${rows.map((row, i) => rowTemplate(row, columns, i === here, i === was))}</tbody>
    </table>
    <p class="table-note">▸ nearest the present values${was === undefined ? "" : "; ⋯ nearest the kept ones"}</p>
  </div>`;
}

function rowTemplate(row: readonly (number | null)[], columns: readonly Column[], here: boolean, was: boolean) {
  const mark = `${here ? "▸" : ""}${was ? "⋯" : ""}`;
  const cells = row.map((value, i) => {
    const text = value === null ? "—" : cellText(value, columns[i]!);
    return i === 0
      ? html`<th scope="row"><span class="row-mark" aria-hidden="true">${mark}</span>${text}</th>`
      : html`<td>${text}</td>`;
  });
  return html`<tr class=${here ? "here" : ""} aria-current=${here ? "true" : "false"}>${cells}</tr>`;
}

/** 'Rate at 95 kt, °/s': the unit stands in the header, once. */
export const headOf = ({ name, unit }: Column): string => (unit === "plain" ? name : `${name}, ${unitSign(unit)}`);

/** A cell without its unit. */
export const cellText = (value: number, { digits, signed: withSign }: Column): string =>
  withSign ? signed(value, "plain", digits) : rounded(value, "plain", digits);
