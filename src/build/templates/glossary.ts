import { escapeHtml } from "../../cells/escape-html.ts";
import type { Course } from "../chapters-folder.ts";
import { type Page, page } from "../page.ts";
import { proseContext, sentenceHtml } from "../prose-context.ts";

/** Every term with its regional words side by side. */
export function glossaryPage(course: Course, version: string): Page {
  const terms = course.terms.toSorted((a, b) => a.british.localeCompare(b.british, "en"));
  const prose = proseContext(course, "./");
  const entries = terms.map(({ key, british, american, meaning }) => {
    const both = british === american ? "" : `<span class="soft"> ${escapeHtml(american)} in American use</span>`;
    return `<div id="${key}"><dt>${escapeHtml(british)}${both}</dt><dd>${sentenceHtml(meaning, prose)}</dd></div>`;
  });
  const main = `<main class="sheet contents" id="main">
<header class="head"><h1>Glossary</h1><p class="standfirst">The trade’s words, and what this workbook means by them.</p></header>
<aside class="sheet-tally needs-script" aria-label="Words">
<p class="label">Words in the chapters</p>
<fieldset class="words-choice"><legend class="hidden-words">Regional words</legend>
<label><input type="radio" name="words" value="british"> rate one, balance, QNH</label>
<label><input type="radio" name="words" value="american"> standard rate, coordination, altimeter setting</label>
</fieldset>
</aside>
<dl id="parts" class="glossary">${entries.join("\n")}</dl>
</main>`;
  return page(
    {
      path: "glossary.html",
      title: "Glossary · Hoodwork",
      description: "The words of instrument flying as this workbook uses them, British and American side by side.",
      entry: "glossary",
      style: "contents-page",
      current: "Glossary",
      main,
    },
    version,
  );
}
