import { unitSign, unitWords } from "../../cells/printed.ts";
import { escaped } from "../escaped.ts";
import { type Fitting, fittings, type Noted, ROWS } from "./fits.ts";

/** The panel that finds an aeroplane's constants from readings noted in flight. */
export const fitPanelShell = (): string =>
  `<fit-panel class="needs-script">${fittings.map(fittingShell).join("")}</fit-panel>`;

function fittingShell(fitting: Fitting): string {
  const { key, title, how, columns, shared } = fitting;
  const heads = columns.map((column) => `<th scope="col">${escaped(column.label)}${unitOf(column)}</th>`);
  const rows = Array.from({ length: ROWS }, (_, row) => rowShell(fitting, row));
  const steady = shared
    ? `<p class="shared"><label for="fit-${key}-shared">${escaped(shared.label)}</label><span class="box"><input type="text" class="figures" id="fit-${key}-shared" data-part="shared" autocomplete="off"><span class="unit" aria-hidden="true">${escaped(unitSign(shared.unit))}</span></span></p>`
    : "";
  const buttons = Object.entries(fitting.into).map(
    ([id, words]) => `<button type="button" class="said" data-into="${id}" disabled>${escaped(words)}</button>`,
  );
  return `<section class="fitting" data-fitting="${key}" aria-labelledby="fit-${key}"><h3 id="fit-${key}">${escaped(title)}</h3><p class="about">${escaped(how)}</p>${steady}<table class="noted-readings"><thead><tr><th scope="col"><span class="hidden-words">Reading</span></th>${heads.join("")}</tr></thead><tbody>${rows.join("")}</tbody></table><p class="fitted" role="status" data-part="fitted"></p><p class="uses">${buttons.join("")}</p></section>`;
}

function rowShell({ key, columns }: Fitting, row: number): string {
  const cells = columns.map(({ label, unit }, column) => {
    const name = escaped(`Reading ${row + 1}: ${label.toLowerCase()}, ${unitWords(unit)}`);
    return `<td><input type="text" class="figures" id="fit-${key}-${row}-${column}" aria-label="${name}" data-row="${row}" autocomplete="off"></td>`;
  });
  return `<tr><th scope="row">${row + 1}</th>${cells.join("")}</tr>`;
}

const unitOf = ({ unit }: Noted): string => `<span class="soft">${escaped(unitSign(unit))}</span>`;
