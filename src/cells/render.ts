import type { Token } from "marked";
import type {
  CalloutCell,
  Cell,
  Chapter,
  ExerciseCell,
  FigureCell,
  PredictCell,
  ProseCell,
  WorkingCell,
} from "./chapter.ts";
import { escapeHtml, inlineHtml, notesIn, type ProseContext, proseHtml } from "./prose.ts";

/** What the chapter's HTML is made with: how prose is set, and the shell of each thing a reader touches. */
export interface Shells {
  readonly prose: ProseContext;
  readonly figure: (cell: FigureCell) => string;
  readonly exercise: (cell: ExerciseCell, number: number) => string;
  readonly working: (cell: WorkingCell) => string;
  readonly predict: (cell: PredictCell) => string;
}

/** A stop on the place ruler. */
export interface Place {
  readonly id: string;
  readonly label: string;
  /** True for a part of the section above it. */
  readonly part: boolean;
}

export interface Rendered {
  readonly html: string;
  readonly places: readonly Place[];
}

/** The reader's HTML of a chapter, from its first section to its last cell; notes and briefs are not in it. */
export function renderChapter(chapter: Chapter, shells: Shells): Rendered {
  const places: Place[] = [];
  let exercises = 0;
  const html = chapter.cells.map((cell) => {
    if (cell.kind === "exercise") exercises++;
    const place = placeOf(cell, exercises);
    if (place) places.push(place);
    return cellHtml(cell, exercises, shells);
  });
  return { html: html.filter(Boolean).join("\n"), places };
}

/** The instructor's notes, section by section, with the brief each section shows when projected. */
export function renderNotes(chapter: Chapter, prose: ProseContext): string {
  return chapter.cells
    .map((cell) => {
      if (cell.kind === "section")
        return `<h2 id="${cell.id}"><span class="no">${cell.number}</span>${inlineHtml(cell.tokens, prose)}</h2>`;
      if (cell.kind === "brief")
        return `<p class="brief"><span class="label">Brief</span> ${inlineHtml(cell.tokens, prose)}</p>`;
      if (cell.kind === "notes") return `<div class="prose">${proseHtml(cell.tokens, prose)}</div>`;
      return "";
    })
    .filter(Boolean)
    .join("\n");
}

function cellHtml(cell: Cell, exerciseNumber: number, shells: Shells): string {
  switch (cell.kind) {
    case "section":
      return `<h2 id="${cell.id}"><span class="no">${cell.number}</span>${inlineHtml(cell.tokens, shells.prose)}</h2>`;
    case "prose":
      return proseCell(cell, shells.prose);
    case "callout":
      return callout(cell, shells.prose);
    case "figure":
      return shells.figure(cell);
    case "exercise":
      return shells.exercise(cell, exerciseNumber);
    case "working":
      return shells.working(cell);
    case "predict":
      return shells.predict(cell);
    case "brief":
    case "notes":
      return "";
  }
}

/** Prose, block by block: a block whose sentences carry notes has them beside it, in the margin. */
function proseCell(cell: ProseCell, prose: ProseContext): string {
  return cell.tokens
    .filter((token) => token.type !== "space")
    .map((token) => noted(token, prose))
    .join("\n");
}

function noted(token: Token, prose: ProseContext): string {
  const html = proseHtml([token], prose);
  const notes = notesIn([token]);
  if (notes.length === 0)
    return token.type === "paragraph" || token.type === "math" ? html : `<div class="prose">${html}</div>`;
  const asides = notes.map(
    ({ number, tokens }) => `<p class="source"><b>${number}</b>${inlineHtml(tokens, prose)}</p>`,
  );
  return `<div class="noted"><div class="prose">${html}</div><div class="sources" role="note" aria-label="Sources">${asides.join("")}</div></div>`;
}

const triangle =
  '<svg viewBox="0 0 26 24" aria-hidden="true"><path d="M13 2 24.5 22H1.5z"/><path d="M13 9v6"/><circle class="dotmark" cx="13" cy="18.4" r="1.5"/></svg>';

function callout({ tone, title, tokens }: CalloutCell, prose: ProseContext): string {
  const word = tone === "caution" ? "Caution" : "Note";
  const label = title ? `${word}: ${escapeHtml(title)}` : word;
  const mark = tone === "caution" ? triangle : "";
  return `<aside class="caution${tone === "note" ? " note" : ""}" aria-label="${label}">${mark}<span class="label sans">${label}</span>${proseHtml(tokens, prose)}</aside>`;
}

function placeOf(cell: Cell, exercises: number): Place | undefined {
  if (cell.kind === "section") return { id: cell.id, label: cell.text, part: false };
  if (cell.kind === "figure") return { id: cell.id, label: `Figure ${cell.number}`, part: true };
  if (cell.kind === "predict") return { id: cell.id, label: "Predict", part: true };
  if (cell.kind === "working") return { id: cell.id, label: "Worked example", part: true };
  if (cell.kind === "exercise") return { id: cell.exercise.id, label: `Exercise ${exercises}`, part: true };
  return undefined;
}
