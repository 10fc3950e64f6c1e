import { catalogue, type Formula, topics } from "../../calc/index.ts";
import { type Kind, kindSample, kindWords } from "../../widgets/formula-cell/kind.ts";
import { formulaShell, proseHtml } from "../../widgets/formula-cell/shell.ts";
import { topicTitles } from "../../widgets/formula-cell/topics.ts";
import { workingTex } from "../../widgets/formula-cell/working-tex.ts";
import { type Page, page } from "../page.ts";
import { fontsFor, typeset } from "../typeset.ts";

/** The formula sheet: every formula of the catalogue by topic, its range and source beside it. */
export function formulasPage(version: string, formulas: readonly Formula[] = catalogue): Page {
  const sources = [...new Set(formulas.map(({ source }) => source))];
  const sections = topics.map((topic) => {
    const entries = formulas
      .filter((formula) => formula.topic === topic)
      .map((formula, at, alike) => {
        const source = sources.indexOf(formula.source) + 1;
        return formulaShell(formula, inLine, { source, before: alike.slice(0, at), formulas });
      });
    return `<section class="topic" id="topic-${topic}" aria-labelledby="of-${topic}"><h2 id="of-${topic}">${topicTitles[topic]}</h2>\n${entries.join("\n")}</section>`;
  });
  const main = `<main class="sheet" id="main">
<nav class="place" aria-label="Topics">${topicList()}</nav>
<article class="chapter formulas">
${head(formulas.length)}
${search(formulas.length)}
<details class="only-narrow in-chapter"><summary>Topics</summary>${topicList()}</details>
<div class="all">${sections.join("\n")}
<section class="numbered-sources" aria-label="Sources"><h2>Sources</h2><p>${sources.map((source, at) => `<b>${at + 1}</b> ${proseHtml(source)}`).join("; ")}.</p><p><b>Ground study only.</b> Not for flight planning or use in flight. The flight manual, local rules and a licensed instructor decide. Hoodwork ${version}.</p></section></div>
</article>
</main>`;
  return page(
    {
      path: "formulas.html",
      title: "Formulas · Hoodwork",
      description:
        "Every formula of the workbook by topic, with its range, its source and a calculator; rules of thumb beside the exact value.",
      entry: "formulas",
      style: "formulas-page",
      current: "Formulas",
      mathFonts: fontsFor(main),
      main,
      sheet: { typeset: Object.fromEntries(workingTex(formulas).map((tex) => [tex, onSight(tex)])) },
    },
    version,
  );
}

const inLine = (tex: string): string => typeset(tex, false);

/** For a working, whose numbers are read aloud in words: the formula is for the eye. */
const onSight = (tex: string): string =>
  inLine(`\\displaystyle ${tex}`).replace(/<span class="katex-mathml">.*?<\/math><\/span>/s, "");

const topicList = (): string =>
  `<ol>${topics.map((topic) => `<li><a href="#topic-${topic}">${topicTitles[topic]}</a></li>`).join("")}</ol>`;

const meanings: Readonly<Record<Kind, string>> = {
  exact: "geometry or kinematics, under what is assumed",
  model: "a named physical model, within the range stated",
  rule: "reckoned in the head; the calculator shows its error",
};

const head = (count: number): string => `<header class="title wide">
<h1>Formulas</h1>
<p class="standfirst">The formula sheet by topic: ${count} formulas with their range and source. Put your own numbers in; each rule of thumb shows its error there.</p>
<ul class="kinds" aria-label="Kinds of formula">${(Object.keys(meanings) as Kind[]).map((kind) => `<li class="kind ${kind}">${kindSample(kind)}<b>${kindWords[kind]}</b> <span>${meanings[kind]}</span></li>`).join("")}</ul>
<p class="conventions">Letters stand for quantities with their units, and each working shows its conversions. Rules of thumb take plain numbers in the units named. <i>g</i> is 9.80665&nbsp;m/s².<span class="on-paper"> A letter is explained where it first stands under its topic.</span></p>
</header>`;

const search = (
  count: number,
): string => `<form class="find needs-script" role="search" data-part="search" autocomplete="off">
<label for="find">Find</label><input id="find" name="find" type="search" placeholder="words, a name, a topic or a quantity" aria-describedby="found" autocapitalize="off" spellcheck="false" enterkeyhint="search">
<p id="found" data-part="found" role="status">${count} formulas</p>
<button type="button" class="said" data-part="print">Print</button>
</form>
<div class="none" data-part="none" hidden><p>Nothing on the sheet has all of <b data-part="sought"></b>. Try fewer or shorter words: a part of a word will do, such as “drift” or “vert”.</p><button type="button" class="said" data-part="all">Show all formulas</button></div>`;
