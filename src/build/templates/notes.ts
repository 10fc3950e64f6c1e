import type { Chapter } from "../../cells/chapter.ts";
import { escapeHtml } from "../../cells/escape-html.ts";
import type { Known } from "../../cells/known.ts";
import { renderNotes } from "../../cells/render.ts";
import type { Course } from "../chapters-folder.ts";
import { type Page, page } from "../page.ts";
import { proseContext } from "../prose-context.ts";
import { shellsOf } from "../shells.ts";
import { fontsFor } from "../typeset.ts";

/** The instructor's notes to a chapter, on a page of their own. */
export function notesPage(chapter: Chapter, course: Course, known: Known, version: string): Page {
  const { name, title, code } = chapter.meta;
  const { live, sheet } = shellsOf(chapter, known, course);
  const { exercises: _, ...quantities } = sheet;
  const notes = renderNotes(chapter, proseContext(course, "../", live));
  const main = `<main class="sheet notes-page" id="main">
<article class="chapter">
<header class="title wide"><p class="label">Instructor’s notes</p><h1>${escapeHtml(title)}</h1>
<p class="standfirst">For the briefing: what each section is to leave behind, and what students get wrong.</p>
<p><a href="../chapters/${name}.html">The chapter itself</a></p></header>
${notes}
</article>
</main>`;
  return page(
    {
      path: `notes/${name}.html`,
      title: `Notes to ${title} · Hoodwork`,
      description: `Instructor’s notes to the chapter ${code}.`,
      entry: "notes",
      style: "chapter-page",
      mathFonts: fontsFor(notes),
      main,
      sheet: quantities,
    },
    version,
  );
}
