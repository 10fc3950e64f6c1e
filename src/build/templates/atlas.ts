import { catalogue, type Formula, type Topic, topics } from "../../calc/index.ts";
import { atlasRules } from "../../cells/atlas-rules.ts";
import type { FigureCell, Given } from "../../cells/chapter.ts";
import { escapeHtml } from "../../cells/escape-html.ts";
import type { Known } from "../../cells/known.ts";
import { unbroken } from "../../cells/printed.ts";
import { answerOf, kindOf, rangeWords, safeWords } from "../../widgets/error-atlas/answer.ts";
import { atlasGivens } from "../../widgets/error-atlas/givens.ts";
import { needsOf } from "../../widgets/error-atlas/model.ts";
import type { AtlasRule, Values } from "../../widgets/error-atlas/rule.ts";
import { rules } from "../../widgets/error-atlas/rules.ts";
import { type ToleranceName, tolerances } from "../../widgets/error-atlas/tolerances.ts";
import { figureShell } from "../../widgets/figure-shell.ts";
import { asSet } from "../../widgets/figure-words.ts";
import { kindSample } from "../../widgets/formula-cell/kind.ts";
import { topicTitles } from "../../widgets/formula-cell/topics.ts";
import { liveShell } from "../../widgets/shells.ts";
import { domOf } from "../drawing-document.ts";
import { type Page, page } from "../page.ts";

/** What the atlas is built with: every quantity at the aircraft's and the place's numbers. */
interface Sheet extends Pick<Known, "aircraft" | "place"> {
  readonly given: readonly Given[];
  readonly values: Values;
}

/** The error atlas: every rule of thumb by topic, where it holds in a sentence, and its figure folded beneath. */
export function atlasPage({ aircraft, place }: Known, version: string): Page {
  const given = atlasGivens(aircraft, place);
  const sheet: Sheet = {
    given,
    values: Object.fromEntries(given.map(({ name, value }) => [name, value])),
    aircraft,
    place,
  };
  const groups = topics
    .map((topic) => ({ topic, of: rules.filter((rule) => formulaNamed(rule.name).topic === topic) }))
    .filter(({ of }) => of.length > 0);
  const main = `<main class="sheet" id="main">
<nav class="place" aria-label="Rules">${ruler(groups)}</nav>
<article class="chapter atlas">
${head(sheet)}
<div data-part="notices" role="status"></div>
${tolerancesHtml(sheet)}
<details class="only-narrow in-chapter"><summary>Rules</summary>${ruler(groups)}</details>
<p class="columns on-paper" aria-hidden="true"><span>Rule</span><span>Where it works</span><span>Safe side and tolerance</span></p>
${groups.map((group) => topicHtml(group, sheet)).join("\n")}
</article>
</main>`;
  return page(
    {
      path: "atlas.html",
      title: "Error atlas · Hoodwork",
      description: "Every rule of thumb against the exact value or a named model, over the aeroplane’s own range.",
      entry: "atlas",
      style: "atlas-page",
      current: "Error atlas",
      main,
      sheet: { aircraft, place },
    },
    version,
  );
}

interface Group {
  readonly topic: Topic;
  readonly of: readonly AtlasRule[];
}

const formulaNamed = (name: string): Formula => catalogue.find((formula) => formula.name === name)!;

const ruler = (groups: readonly Group[]): string =>
  `<ol><li><a href="#tolerances">Tolerances</a></li>${groups
    .map(
      ({ topic, of }) =>
        `<li><a href="#topic-${topic}">${topicTitles[topic]}</a></li>${of.map(({ key }) => `<li class="part"><a href="#${key}">${escapeHtml(unbroken(atlasRules[key].title))}</a></li>`).join("")}`,
    )
    .join("")}</ol>`;

const head = ({ aircraft }: Sheet): string => `<header class="title wide">
<h1>Error atlas</h1>
<p class="standfirst">Every rule of thumb against the exact value, or against a named model: where it holds, by how much it misses, and which way it had better miss.</p>
<dl class="facts"><dt>Aeroplane</dt><dd class="of-aircraft" data-part="whose">${escapeHtml(aircraft.owner)}</dd><dt>Rules</dt><dd>${rules.length}</dd><dt class="needs-script">On paper</dt><dd class="needs-script"><button type="button" class="said" data-part="print">Print the table</button></dd></dl>
</header>`;

const limitOf = (name: string, { given }: Sheet): string => {
  const one = given.find((each) => each.name === name)!;
  return liveShell(name, { given: one }, asSet(one.value, one.unit));
};

function tolerancesHtml(sheet: Sheet): string {
  const all = Object.entries(tolerances) as [ToleranceName, (typeof tolerances)[ToleranceName]][];
  const row = ([name, { of, from }]: (typeof all)[number]): string =>
    `<div><dt>${of}${from === "flight test" ? "" : `<span class="soft">${from}</span>`}</dt> <dd>±&nbsp;${limitOf(name, sheet)}</dd></div>`;
  const tests = all.filter(([, { from }]) => from === "flight test");
  const own = all.filter(([, { from }]) => from !== "flight test");
  return `<section class="tolerances" id="tolerances" aria-labelledby="tolerances-title">
<h2 id="tolerances-title">Tolerances</h2>
<p>An error counts as too large where it is beyond these. Change one, here or in a figure, and every rule is judged by it.</p>
<div class="two"><div><h3>As in a flight test</h3><p class="note"><b>Examples: check your authority’s current standard.</b> <span>A test’s tolerance is there for all your errors together; a rule that uses it up leaves none for flying.</span></p> <dl>${tests.map(row).join("")}</dl></div>
<div><h3>The workbook’s own</h3><dl>${own.map(row).join("")}</dl></div></div>
</section>`;
}

const topicHtml = ({ topic, of }: Group, sheet: Sheet): string =>
  `<section class="topic" id="topic-${topic}" aria-labelledby="of-${topic}"><h2 id="of-${topic}">${topicTitles[topic]}</h2>
${of.map((rule) => ruleHtml(rule, sheet)).join("\n")}</section>`;

function ruleHtml(rule: AtlasRule, sheet: Sheet): string {
  const { key, name } = rule;
  const { standsFor } = formulaNamed(name);
  const kind = kindOf(rule);
  const reference = `<a href="formulas.html#${standsFor}">${escapeHtml(formulaNamed(standsFor!).words)}</a>`;
  return `<section class="atlas-rule" id="${key}" aria-labelledby="${key}-title">
<h3 id="${key}-title"><a href="#${key}">${escapeHtml(unbroken(atlasRules[key].title))}</a></h3>
<p class="against">${kindSample(kind)}<span>Against the ${kind === "exact" ? "exact value" : "model"}: ${reference}. <span class="rule-of">Rule: <a href="formulas.html#${name}">${escapeHtml(formulaNamed(name).words)}</a>.</span> <span class="over-range">Range: <span class="of-aircraft" data-part="judged">${escapeHtml(rangeWords(rule, sheet.aircraft))}</span>.</span></span></p>
<p class="sentence of-aircraft" data-part="sentence">${escapeHtml(answerOf(rule, sheet.values, sheet.aircraft))}</p>
<p class="safe">${escapeHtml(safeWords(rule))} <span class="tolerance">Tolerance ±&nbsp;${limitOf(needsOf(rule).tolerance, sheet)}.</span></p>
${rule.caution ? `<aside class="caution" aria-label="Caution: ${escapeHtml(atlasRules[key].title)}"><span class="label sans">${triangle}Caution</span><p>${escapeHtml(rule.caution)}</p></aside>` : ""}
<details class="fold" name="atlas-figure"><summary><span class="when-shut">Show the figure</span><span class="when-open">Put the figure away</span></summary>
${figureShell(cellOf(rule), { given: sheet.given, aircraft: sheet.aircraft, see: "", document: domOf() })}
</details>
</section>`;
}

const triangle =
  '<svg viewBox="0 0 26 24" aria-hidden="true"><path d="M13 2 24.5 22H1.5Z"/><path d="M13 9v6"/><circle class="dotmark" cx="13" cy="18.6" r="1.2"/></svg>';

const cellOf = ({ key }: AtlasRule): FigureCell => ({
  kind: "figure",
  name: "error-atlas",
  id: `figure-${rules.findIndex((rule) => rule.key === key) + 1}`,
  number: rules.findIndex((rule) => rule.key === key) + 1,
  see: "",
  seeTokens: [],
  options: { rule: key },
});
