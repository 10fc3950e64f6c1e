import type { Chapter } from "../../cells/chapter.ts";
import { escapeHtml } from "../../cells/escape-html.ts";
import type { Known } from "../../cells/known.ts";
import { type Place, renderChapter } from "../../cells/render.ts";
import type { Course } from "../chapters-folder.ts";
import { type Page, page } from "../page.ts";
import { proseContext, sentenceHtml } from "../prose-context.ts";
import { shellsOf } from "../shells.ts";
import { fontsFor } from "../typeset.ts";

/** A chapter's page: its text reads without scripts; the sheet it carries brings figures and exercises to life. */
export function chapterPage(chapter: Chapter, number: number, course: Course, known: Known, version: string): Page {
  const { meta } = chapter;
  const { shells, sheet, frontispiece } = shellsOf(chapter, known, course);
  const { html, places } = renderChapter(chapter, shells);
  const all = [{ id: "aims", label: "Aims", part: false }, ...places, { id: "sources", label: "Sources", part: false }];
  const main = `<main class="sheet" id="main">
<nav class="place" aria-label="In this chapter">${ruler(all)}</nav>
<article class="chapter">
<header class="title wide">
<p class="label">Chapter ${number}</p>
<h1>${escapeHtml(meta.title)}</h1>
<p class="standfirst">${escapeHtml(meta.summary)}</p>
${frontispiece}
</header>
<details class="only-narrow in-chapter"><summary>In this chapter: ${sectionsInWords(places)}</summary>${ruler(all.filter(({ part }) => !part))}</details>
<div data-part="notices" role="status"></div>
${aimsOf(chapter, known)}
${html}
${sourcesOf(chapter, course)}
${nextOf(chapter, course)}
</article>
</main>`;
  return page(
    {
      path: `chapters/${meta.name}.html`,
      title: `${meta.title} · Hoodwork`,
      description: meta.summary,
      entry: "chapter",
      style: "chapter-page",
      tools: `<a class="only-wide" href="../notes/${meta.name}.html">Instructor’s notes</a>`,
      mathFonts: fontsFor(main),
      main,
      sheet,
    },
    version,
  );
}

const ruler = (places: readonly Place[]): string =>
  `<ol>${places.map(({ id, label, part }) => `<li${part ? ' class="part"' : ""}><a href="#${id}">${escapeHtml(label)}</a></li>`).join("")}</ol>`;

function sectionsInWords(places: readonly Place[]): string {
  const count = places.filter(({ part }) => !part).length;
  const words = [
    "no",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
  ];
  return `${words[count] ?? count} section${count === 1 ? "" : "s"}`;
}

function aimsOf({ meta }: Chapter, { aircraft }: Known): string {
  const aims = meta.objectives.map(
    ({ code, text }) => `<li><span class="code">${code}</span><span>${escapeHtml(text)}</span></li>`,
  );
  return `<section class="aims wide" id="aims" aria-label="Aims">
<ul>${aims.join("")}</ul>
<dl class="facts"><dt>Time</dt><dd>${meta.minutes} minutes</dd><dt>Aeroplane</dt><dd data-part="whose">${escapeHtml(aircraft.owner)}</dd><dt>Words</dt><dd><span class="british">rate one, balance, QNH</span><span class="american">standard rate, coordination, altimeter setting</span></dd></dl>
</section>`;
}

function sourcesOf({ meta }: Chapter, course: Course): string {
  const prose = proseContext(course, "../");
  const items = meta.sources.map((source) => `<li>${sentenceHtml(source, prose)}</li>`);
  return `<h2 id="sources">Sources</h2><ul class="sources-list">${items.join("")}</ul>`;
}

/** The next chapter that is written; after the last one, the contents. */
function nextOf({ meta }: Chapter, { chapters }: Course): string {
  const next = chapters[chapters.findIndex((one) => one.meta.name === meta.name) + 1];
  return next
    ? `<p class="next"><a href="${next.meta.name}.html">Next: ${escapeHtml(next.meta.title)}</a></p>`
    : `<p class="next"><a href="../index.html">Back to the contents</a></p>`;
}
