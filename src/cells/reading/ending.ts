import type { Draft } from "./draft.ts";
import { didYouMean } from "./near.ts";

/** What can be checked only when the whole chapter has been read. */
export function checkEnding(draft: Draft): void {
  draft.problems.push(...draft.notes.problems, ...draft.notes.unused());
  checkServed(draft);
  const sections = draft.cells.flatMap((cell) => (cell.kind === "section" ? [cell.id] : []));
  for (const { section, position } of draft.anchors) {
    if (!sections.includes(section))
      draft.add(position, `This chapter has no section '#${section}'.`, didYouMean(section, sections));
  }
}

/** In a chapter that has exercises, each objective has one. */
function checkServed(draft: Draft): void {
  if (draft.served.size === 0) return;
  for (const [code, position] of draft.sheet.objectivesAt) {
    if (draft.served.has(code)) continue;
    const mend = `Give an exercise 'objective: ${code}', or delete the objective.`;
    draft.add(position, `No exercise serves the objective ${code}.`, mend);
  }
}
