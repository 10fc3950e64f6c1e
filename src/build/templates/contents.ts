import type { Chapter } from "../../cells/chapter.ts";
import { escapeHtml } from "../../cells/escape-html.ts";
import type { Facts } from "../../cells/known.ts";
import type { Course } from "../chapters-folder.ts";
import { type Page, page } from "../page.ts";

/** The list of chapters, part by part, with the objectives of those that are written. */
export function contentsPage(course: Course, aircraft: Facts, version: string): Page {
  const numbers = new Map(course.parts.flatMap((part) => part.chapters).map(({ name }, i) => [name, i + 1]));
  const parts = course.parts.map(({ title, chapters }) => {
    const entries = chapters.map((entry) => chapterEntry(entry, numbers.get(entry.name)!, course));
    return `<section class="part-of"><h2>${escapeHtml(title)}</h2>${entries.join("")}</section>`;
  });
  const exercises = course.chapters.flatMap((chapter) => chapter.exercises).length;
  const main = `<main class="sheet contents" id="main">
<header class="head">
<h1>A workbook of instrument-flying theory</h1>
<p class="standfirst">Change the speed or the bank and see what becomes of the turn. Every rule of thumb stands beside the exact figure, for the aeroplane you fly.</p>
</header>
<aside class="sheet-tally" aria-label="What is in it">
<p class="label">In this edition</p>
<ul class="tally"><li>chapters<b>${course.chapters.length}</b></li><li>objectives<b>${objectivesIn(course)}</b></li><li>exercises<b>${exercises}</b></li></ul>
<dl class="facts"><dt>Aeroplane</dt><dd data-part="whose">${escapeHtml(aircraft.owner)}</dd></dl>
</aside>
<div id="parts">${parts.join("\n")}</div>
</main>`;
  return page(
    {
      path: "index.html",
      title: "Hoodwork: a workbook of instrument-flying theory",
      description:
        "Chapters with live figures, rules of thumb beside exact mechanics, and exercises that mark themselves. Ground study only.",
      entry: "contents",
      style: "contents-page",
      current: "Contents",
      main,
    },
    version,
  );
}

const objectivesIn = (course: Course): number => course.chapters.flatMap(({ meta }) => meta.objectives).length;

function chapterEntry({ name, title }: { name: string; title: string }, number: number, course: Course): string {
  const chapter = course.chapters.find(({ meta }) => meta.name === name);
  const head = chapter
    ? `<a href="chapters/${name}.html">${escapeHtml(title)}</a>${sizeOf(chapter)}`
    : `<span class="unwritten">${escapeHtml(title)}</span><span class="words">not yet written</span>`;
  return `<div class="entry"><span class="no">${number}</span>${head}${chapter ? aims(chapter) : ""}</div>`;
}

const sizeOf = ({ meta, exercises }: Chapter): string =>
  `<span class="words">${meta.minutes} minutes, ${exercises.length} exercises</span>`;

const aims = ({ meta }: Chapter): string =>
  meta.objectives
    .map(
      ({ code, text }) => `<span class="aim"><span><span class="code">${code}</span>${escapeHtml(text)}</span></span>`,
    )
    .join("");
