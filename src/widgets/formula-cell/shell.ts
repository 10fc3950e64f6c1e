import { type Argument, catalogue, type Formula } from "../../calc/index.ts";
import { unitSign } from "../../cells/printed.ts";
import { escaped } from "../escaped.ts";
import type { Typeset } from "../working-rows.ts";
import { comparedWith } from "./fields.ts";
import { kindSample, kindWords } from "./kind.ts";
import { isNarrow, rangeWords } from "./limits.ts";
import { capital, choiceWords, isChoice, labelsOf, optionWords, spaced, withUnit } from "./wording.ts";

const FEW = 3;

/** What a formula's place on the sheet says of it. */
export interface OnSheet {
  /** The number of its source in the list that the printed sheet ends with. */
  readonly source: number;
  /** The formulas that stand before it under the same topic: on paper they have explained their letters. */
  readonly before: readonly Formula[];
  /** All formulas of the sheet. */
  readonly formulas?: readonly Formula[];
}

/** A formula of the sheet as built: it reads without scripts, and its calculator opens beneath. */
export function formulaShell(formula: Formula, typeset: Typeset, place: OnSheet): string {
  const { source, before, formulas = catalogue } = place;
  const { name, words, kind, assumes } = formula;
  return `<formula-cell class="formula noted" id="${name}" style="--letters:${formula.args.length};--length:${assumes.length}"><div class="said-of"><h3><a href="#${name}">${escaped(capital(words))}</a><span class="kind ${kind}">${kindSample(kind)}${kindWords[kind]}</span><span class="numbered">${source}</span></h3><div class="set-in" data-part="maths">${mathsHtml(formula, typeset)} ${givesHtml(formula)}</div><p class="assumes">${proseHtml(assumes)}</p>${relationHtml(formula, formulas)}</div><div class="beside"><dl class="letters" aria-label="Letters">${formula.args.map((_, at) => letterHtml(formula, at, typeset, { before, formulas })).join("")}</dl>
<p class="from">Source: ${proseHtml(formula.source)}.</p>
<p class="call"><span class="hidden-words">In a chapter: </span><code>${escaped(signature(formula))}</code></p>
</div><button type="button" class="said needs-script" data-part="open" aria-expanded="false" aria-label="Calculate ${escaped(words)}">Calculate</button><div class="calculator-slot" data-part="calculator"></div></formula-cell>`;
}

/** A sentence of the catalogue: letters with a mark below, curly quotation marks. */
export const proseHtml = (text: string): string =>
  escaped(text.replace(/(^|[\s(])'/g, "$1‘").replaceAll("'", "’")).replace(
    /(\p{L})_(\p{L})/gu,
    "<i>$1</i><sub>$2</sub>",
  );

/** The equation in pieces that a line may break between; its fractions are set large, to be read on paper. */
const mathsHtml = ({ symbol, tex }: Formula, typeset: Typeset): string =>
  piecesOf(`${symbol} = ${tex}`)
    .map((piece) => `<span class="piece">${typeset(`\\displaystyle ${piece.replaceAll("\\tfrac", "\\dfrac")}`)}</span>`)
    .join(" ");

/** TeX parted at wide spaces: after a comma, and before a word. */
export const piecesOf = (tex: string): string[] => tex.split(/(?<=,)\\q?quad|\\quad(?=\\text)/);

function givesHtml({ name, result }: Formula): string {
  if (name === "convert") return '<span class="gives">in the unit wanted</span>';
  const none = result.nullable ? " or no solution" : "";
  if ("fields" in result) {
    const fields = Object.entries(result.fields).map(([name, { unit }]) => withSign(spaced(name), unit));
    return `<span class="gives">gives ${escaped(fields.join(", "))}${none}</span>`;
  }
  if (result.options) return `<span class="gives">gives ${escaped(choiceWords(result.options))}</span>`;
  const sign = unitSign(result.unit);
  return `<span class="gives${sign ? "" : " bare"}">${sign ? `in ${escaped(sign)}` : "a plain number"}${none}</span>`;
}

const withSign = (words: string, unit: string): string =>
  `${words} ${unitSign(unit)}`.trim().replace(/ (?=\S+$)/, "\u00a0");

type Among = Required<Pick<OnSheet, "before" | "formulas">>;

function letterHtml(formula: Formula, at: number, typeset: Typeset, { before, formulas }: Among): string {
  const argument = formula.args[at]!;
  const inFull = matters(argument, formulas);
  const range = `<span class="range${inFull ? " matters" : ""}"> ${escaped(rangeWords(formula, at))}${defaultWords(argument)}</span>`;
  const sign = isChoice(argument) ? "" : unitSign(argument.unit);
  const unit = sign && `<span class="brief-unit"> ${escaped(sign)}</span>`;
  const again = isExplained(argument, before, inFull);
  return `<div${again ? ' class="again"' : ""}><dt>${typeset(argument.symbol)}</dt> <dd>${escaped(labelsOf(formula)[at]!)}${unit}${range}</dd></div>`;
}

/** On paper a choice of a few is printed in full, and a range that is this formula's own. */
const matters = (argument: Argument, formulas: readonly Formula[]): boolean =>
  isChoice(argument) ? argument.options.length <= FEW : isNarrow(argument, formulas);

/** Whether the letter last stood for the same thing, within the same range where that is printed. */
function isExplained(
  { symbol, words, unit, from, to }: Argument,
  before: readonly Formula[],
  inFull: boolean,
): boolean {
  const last = before.flatMap(({ args }) => args).findLast((other) => other.symbol === symbol);
  const alike = last?.words === words && last.unit === unit;
  return alike && (!inFull || (last.from === from && last.to === to));
}

function defaultWords({ default: left, unit }: Formula["args"][number]): string {
  if (left === undefined) return "";
  const value = typeof left === "string" ? optionWords(left) : left === Infinity ? "no end" : withUnit(`${left}`, unit);
  return `<span class="left-out">; ${escaped(value)} if left out</span>`;
}

/** A rule names what it stands for, and that names its rules. */
function relationHtml(formula: Formula, formulas: readonly Formula[]): string {
  const others = comparedWith(formula, formulas);
  if (others.length === 0) return "";
  const links = others.map(({ name, words }) => `<a href="#${name}">${escaped(words)}</a>`).join("; ");
  const lead = formula.kind === "rule" ? "Stands for the" : others.length > 1 ? "Rules of thumb:" : "Rule of thumb:";
  return `<p class="relation">${lead} ${links}</p>`;
}

/** How an expression in a chapter calls it: 'bankForRate(tas, rate = 3)'. */
const signature = ({ name, args }: Formula): string =>
  `${name}(${args.map((each) => `${each.name}${each.default === undefined ? "" : ` = ${each.default}`}`).join(", ")})`;
