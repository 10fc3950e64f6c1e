import type { BriefCell, CalloutCell, NotesCell, SectionCell } from "../chapter.ts";
import { plainText } from "../plain-text.ts";
import type { Block, Fence } from "./blocks.ts";
import type { Draft } from "./draft.ts";
import { readBlocks, readInline } from "./inline.ts";
import { didYouMean, quoted } from "./near.ts";
import { texMistake } from "./tex.ts";

type Of<Kind extends Block["kind"]> = Extract<Block, { kind: Kind }>;

const LONGEST_BRIEF = 240;

/** The one sentence that a projected section shows. */
export function readBrief({ at, body, bodyAt }: Fence, draft: Draft): BriefCell | undefined {
  const text = body.trim();
  if (text === "") {
    draft.addAt(at, "The brief is empty.", "Write the one sentence that the projected section shows.");
    return undefined;
  }
  if (text.includes("\n\n") || text.length > LONGEST_BRIEF)
    draft.addAt(
      bodyAt,
      "A brief is one short sentence, or two.",
      `Keep it in one paragraph of ${LONGEST_BRIEF} characters at most.`,
    );
  const { tokens, problems } = readInline(text, draft.prose(bodyAt + body.length - body.trimStart().length));
  draft.problems.push(...problems);
  return { kind: "brief", text, tokens };
}

/** The instructor's notes. */
export function readNotes({ at, body, bodyAt }: Fence, draft: Draft): NotesCell | undefined {
  if (body.trim() === "") {
    draft.addAt(at, "The notes are empty.", "Write something for the instructor, or delete the fence.");
    return undefined;
  }
  const { tokens, problems } = readBlocks(body, draft.prose(bodyAt));
  draft.problems.push(...problems);
  return { kind: "notes", tokens };
}

/** `> [!CAUTION] title` and the quote beneath it. */
export function readCallout(
  { at, tone, title, titleAt, body, bodyAt }: Of<"callout">,
  draft: Draft,
): CalloutCell | undefined {
  const known = ["CAUTION", "NOTE"];
  if (!known.includes(tone)) {
    draft.addAt(at, `There is no callout ${quoted(tone)}.`, didYouMean(tone.toUpperCase(), known));
    return undefined;
  }
  if (/[{}$]/.test(title))
    draft.addAt(titleAt, "A callout's title is plain words.", "Put values and maths into its text.");
  if (body.trim().replace(/^[>\s]*$/, "") === "")
    draft.addAt(at, "The callout has no text.", "Write it on the lines beneath, each after '> '.");
  const markdown = body.replace(/^>[ \t]?/gm, "");
  const scope = draft.prose(bodyAt, { notes: draft.notes });
  const { tokens, problems } = readBlocks(markdown, scope, body);
  draft.problems.push(...problems);
  return { kind: "callout", tone: tone === "CAUTION" ? "caution" : "note", title, tokens };
}

/** A `##` heading; its id is made of its words. */
export function readHeading(
  { at, depth, text, textAt }: Of<"heading">,
  number: number,
  draft: Draft,
): SectionCell | undefined {
  if (depth === 1) {
    draft.addAt(
      at,
      "A single '#' opens no section: the title stands in the front matter.",
      "Write '## ' for a section.",
    );
    return undefined;
  }
  if (text === "") {
    draft.addAt(at, "The heading has no words.", "Write the section's heading after '## '.");
    return undefined;
  }
  const { tokens, problems } = readInline(text, draft.prose(textAt, { withoutLive: "a heading" }));
  draft.problems.push(...problems);
  const words = plainText(tokens);
  const wish = slug(words) || `section-${number}`;
  const id = draft.id(wish);
  if (id !== wish)
    draft.addAt(
      at,
      `Another heading or cell has the address '#${wish}' already.`,
      "Word one of the headings otherwise.",
    );
  return { kind: "section", id, number, tokens, text: words };
}

/** A heading's words as an address: small letters and digits, joined by hyphens. */
const slug = (words: string): string =>
  words
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

/** `$$` on lines of its own, as a token of the prose around it. */
export function readMaths({ at, tex, texAt, closed }: Of<"maths">, draft: Draft) {
  if (!closed) draft.addAt(at, "This formula isn't closed.", "Put '$$' on a line of its own after it.");
  else if (tex.trim() === "")
    draft.addAt(at, "The formula is empty.", "Write it between the two '$$', or delete them.");
  else if (/\n[ \t]*\n/.test(tex))
    draft.addAt(
      at,
      "A blank line parts this formula.",
      "Close it with '$$' before the blank line, or delete the line.",
    );
  else if (draft.budget.spend("formulas", 1)) {
    const mistake = texMistake(tex.trimEnd(), true);
    if (mistake) draft.addAt(texAt + mistake.at, mistake.message, mistake.mend);
  }
  return { type: "math", raw: `$$${tex}$$`, tex: tex.trim(), display: true } as const;
}
