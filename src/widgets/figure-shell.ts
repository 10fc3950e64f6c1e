import type { FigureCell, Given } from "../cells/chapter.ts";
import { chosenOf, type FigureSignature, figures } from "../cells/figures.ts";
import type { Facts } from "../cells/known.ts";
import { unitSign, unitWords } from "../cells/printed.ts";
import { drawFigure } from "./drawing/index.ts";
import { atlasFigure } from "./error-atlas/figure.ts";
import { escaped } from "./escaped.ts";
import type { Figure, FigureState, Readout } from "./figure.ts";
import { rangeTicks, typedText } from "./figure-scale.ts";
import { figureNamed } from "./figures.ts";

/** Widths of the two first drawings, px; a container query shows one. */
export const DRAWN = { wide: 580, narrow: 350 } as const;

export interface FigureParts {
  /** The chapter's givens; the figure's needs are among them. */
  readonly given: readonly Given[];
  readonly aircraft: Facts;
  /** What to see, as HTML. */
  readonly see: string;
  /** A document of linkedom's to draw in. */
  readonly document: Document;
}

/** The whole figure at the chapter's own values: it reads without scripts, and the element brings it to life. */
export function figureShell(cell: FigureCell, { given, aircraft, see, document }: FigureParts): string {
  const figure: Figure = figureNamed(cell.name) ?? atlasFigure(cell.options["rule"])!;
  const { title } = chosenOf(signatureOf(cell.name), cell.options);
  const needed = figure.needs.map((need) => ({ need, given: givenFor(need, given) }));
  const values = Object.fromEntries(needed.map(({ need, given: { value } }) => [need, value]));
  const state: FigureState = { values, aircraft };
  const shown = figure.show(state);
  const id = escaped(cell.id);
  const drawing = (which: keyof typeof DRAWN): string => {
    const svg = drawFigure(figure, state, { width: DRAWN[which], id: `${cell.id}-${which}`, document });
    return `<div class="drawn-${which}">${svg.outerHTML}</div>`;
  };
  return `<figure-cell id="${id}" data-figure="${escaped(cell.name)}" ${optionsHtml(cell)}data-number="${cell.number}" data-owner="${escaped(aircraft.owner)}">
<figure class="figure wide" data-part="figure" aria-labelledby="${id}-title">
<p class="head label" id="${id}-title"><b>Figure ${cell.number}</b><span class="soft" data-part="title">${escaped(title)}</span></p>
<div class="plot" data-part="plot" role="img" aria-labelledby="${id}-title" aria-describedby="${id}-shows">${drawing("wide")}${drawing("narrow")}</div>
<p class="hidden-words" id="${id}-shows" data-part="description">${escaped(shown.description)}</p>
<div class="rail">
<dl class="readings" data-part="readings">${shown.readouts.map(readingHtml).join("")}</dl>
${needed.map((one) => controlHtml(id, one.need, one.given)).join("\n")}
<p class="kept needs-script" data-part="kept" hidden><span class="dots">kept: <span data-part="kept-words"></span></span><button type="button" class="said" data-part="let-go">Let go</button></p>
</div>
<div class="under">
${shown.answer === undefined ? "" : `<p class="answer of-aircraft" data-part="answer">${escaped(shown.answer)}</p>\n`}<p class="notice-line" data-part="notice">${escaped(shown.notice)}</p>
<p class="hidden-words" role="status" data-part="said"></p>
${toolsHtml(id)}
<div class="table-slot" data-part="table"></div>
<figcaption>${see}<span class="model" data-part="model">${escaped(figure.model(aircraft))}</span></figcaption>
</div>
</figure>
</figure-cell>`;
}

const signatureOf = (name: string): FigureSignature => figures.find((one) => one.name === name)!;

/** What the element must know of the cell's options, so that it finds the same figure. */
const optionsHtml = ({ options }: FigureCell): string =>
  Object.keys(options).length === 0 ? "" : `data-options="${escaped(JSON.stringify(options))}" `;

/** The given a figure takes for one of its needs: of that name, or else the first of that quantity. */
export function givenFor(need: string, given: readonly Given[]): Given {
  const found = given.find(({ name }) => name === need) ?? given.find(({ quantity }) => quantity === need);
  if (!found) throw new Error(`the chapter gives no ${need}, which the figure needs`);
  return found;
}

function readingHtml({ label, number, unit, aside, line }: Readout): string {
  const sample = line
    ? `<svg class="sample" viewBox="0 0 32 6" aria-hidden="true"><line x1="0" y1="3" x2="30" y2="3" class="curve ${line}"/></svg>`
    : "";
  return `<div><dt>${sample}${escaped(label)}</dt><dd class="now">${numberHtml(number, unit)}</dd><dd class="was" hidden></dd>${aside === undefined ? "" : `<dd class="aside">${escaped(aside)}</dd>`}</div>`;
}

/** A degree sign belongs to its number; another unit stands small beside it. */
const numberHtml = (number: string, unit: string): string =>
  unit === "°"
    ? `<span>${escaped(number)}°</span><small></small>`
    : `<span>${escaped(number)}</span><small>${escaped(unit)}</small>`;

function controlHtml(id: string, need: string, given: Given): string {
  const { name, label, unit, value, from, to, step } = given;
  const [range, field, trouble] = [`${id}-${need}`, `${id}-${need}-field`, `${id}-${need}-trouble`];
  const sign = escaped(unitSign(unit));
  const words = escaped(`${label}, ${unitWords(unit)}`);
  return `<div class="set needs-script" data-given="${escaped(name)}" data-need="${escaped(need)}" data-unit="${escaped(unit)}" data-value="${value}">
<label for="${range}">${escaped(label)}</label><span class="box"><input id="${field}" data-part="field" inputmode="decimal" autocomplete="off" value="${typedText(value)}" aria-label="${words}" aria-describedby="${trouble}"> ${sign}</span>
<div class="range" style="--parts:${rangeTicks(from, to, step)}"><input type="range" id="${range}" name="${escaped(name)}" data-part="range" min="${from}" max="${to}" step="any" value="${value}" aria-valuetext="${escaped(`${typedText(value)} ${unitWords(unit)}`)}"></div>
<div class="ends" aria-hidden="true"><span data-part="from">${typedText(from)}</span><span data-part="to">${typedText(to)}</span></div>
<p class="trouble" id="${trouble}" data-part="trouble"></p></div>`;
}

const icons = {
  keep: '<path d="M1 14h.1M5 12h.1M9 9h.1M13 5.5h.1M16.5 2h.1" stroke-width="2.6"/>',
  table: '<path d="M1.5 3.5h15M1.5 8.5h15M1.5 13.5h15M7 3.5v10"/>',
  save: '<path d="M9 2v9M5.5 8 9 11.5 12.5 8M2 15.5h14"/>',
  full: '<path d="M2 6V2h4M12 2h4v4M16 12v4h-4M6 16H2v-4"/>',
  reset: '<path d="M3 9a6 6 0 1 0 2-4.5M5 1v3.7h3.7"/>',
};

const icon = (name: keyof typeof icons): string => `<svg viewBox="0 0 18 18" aria-hidden="true">${icons[name]}</svg>`;

function toolsHtml(id: string): string {
  const button = (part: "keep" | "table" | "full" | "reset", words: string, more = ""): string =>
    `<button type="button" data-part="${part === "table" ? "show-table" : part}"${more}>${icon(part)}${words}</button>`;
  return `<div class="tools needs-script" role="group" aria-labelledby="${id}-title">${button("keep", "Keep")}${button("table", "Table", ' aria-expanded="false"')}<details class="save" data-part="save"><summary>${icon("save")}Save</summary><div class="save-as"><button type="button" data-save="svg">Drawing, SVG</button><button type="button" data-save="png">Picture, PNG</button><button type="button" data-save="csv">Table, CSV</button></div></details>${button("full", "Full screen", ' aria-pressed="false"')}${button("reset", "Reset")}</div>`;
}
