import { catalogue, type Formula } from "../../calc/index.ts";
import { unitSign } from "../../cells/printed.ts";
import { escaped } from "../escaped.ts";
import type { Typeset } from "../working-rows.ts";
import { comparedWith } from "./fields.ts";
import { kindSample, kindWords } from "./kind.ts";
import { isNarrow, rangeWords } from "./limits.ts";
import { capital, choiceWords, labelsOf, optionWords, spaced, withUnit } from "./wording.ts";

/**
 * A formula of the sheet as built: it reads without scripts, and its calculator opens beneath.
 *
 * @param source the number of its source in the list that the printed sheet ends with
 */
export function formulaShell(formula: Formula, typeset: Typeset, source: number, formulas = catalogue): string {
  const { name, words, kind, assumes } = formula;
  return `<formula-cell class="formula noted" id="${name}"><div class="said-of">
<h3><a href="#${name}">${escaped(capital(words))}</a><span class="kind ${kind}">${kindSample(kind)}${kindWords[kind]}</span></h3>
<div class="set-in" data-part="maths">${mathsHtml(formula, typeset)}${givesHtml(formula)}</div>
<p class="assumes">${proseHtml(assumes)}</p>
${relationHtml(formula, formulas)}</div><div class="beside">
<dl class="letters" aria-label="Letters">${formula.args.map((_, at) => letterHtml(formula, at, typeset, formulas)).join("")}</dl>
<p class="from"><span class="origin">Source: ${escaped(formula.source)}.</span><span class="numbered">${source}</span></p>
<p class="call"><span class="hidden-words">In a chapter: </span><code>${escaped(signature(formula))}</code></p>
</div><button type="button" class="said needs-script" data-part="open" aria-expanded="false" aria-label="Calculate ${escaped(words)}">Calculate</button><div class="calculator-slot" data-part="calculator"></div></formula-cell>`;
}

/** A sentence of the catalogue: letters with a mark below, curly quotation marks. */
const proseHtml = (text: string): string =>
  escaped(text.replace(/(^|[\s(])'/g, "$1‘").replaceAll("'", "’")).replace(
    /(\p{L})_(\p{L})/gu,
    "<i>$1</i><sub>$2</sub>",
  );

/** The equation in pieces that a line may break between. */
const mathsHtml = ({ symbol, tex }: Formula, typeset: Typeset): string =>
  piecesOf(`${symbol} = ${tex}`)
    .map((piece) => `<span class="piece">${typeset(`\\displaystyle ${piece}`)}</span>`)
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
  return `<span class="gives">${sign ? `in ${escaped(sign)}` : "a plain number"}${none}</span>`;
}

const withSign = (words: string, unit: string): string =>
  `${words} ${unitSign(unit)}`.trim().replace(/ (?=\S+$)/, "\u00a0");

function letterHtml(formula: Formula, at: number, typeset: Typeset, formulas: readonly Formula[]): string {
  const argument = formula.args[at]!;
  const { unit, symbol, options } = argument;
  const matters = options !== undefined || isNarrow(argument, formulas);
  const range = `<span class="range${matters ? " matters" : ""}">${escaped(rangeWords(formula, at))}${defaultWords(argument)}</span>`;
  const brief = options ? "" : `<span class="brief-unit">${escaped(unitSign(unit))}</span>`;
  return `<div><dt>${typeset(symbol)}</dt> <dd>${escaped(labelsOf(formula)[at]!)} ${brief} ${range}</dd></div>`;
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
  return `<p class="relation">${lead} ${links}</p>\n`;
}

/** How an expression in a chapter calls it: 'bankForRate(tas, rate = 3)'. */
const signature = ({ name, args }: Formula): string =>
  `${name}(${args.map((each) => `${each.name}${each.default === undefined ? "" : ` = ${each.default}`}`).join(", ")})`;
