import type { RoomsOfFacts } from "../cells/facts.ts";
import { answersFor } from "../cells/school/kept.ts";
import type { School } from "../cells/school/school.ts";
import { keptSchool, onSchoolElsewhere } from "../records/school.ts";

/**
 * The reader's own school, where she has one that answers for every fact the page was built with. The inline script
 * has marked the page `data-own` before the first paint, and what shows the Dunlin's numbers is hidden until `shown`.
 *
 * @param page the facts that the page was built with; none for a page that shows none
 */
export function ownSchool(page: RoomsOfFacts = {}): School | undefined {
  const kept = keptSchool();
  return kept !== undefined && kept !== "unreadable" && answersFor(kept.school, page) ? kept.school : undefined;
}

/** A sentence where something is kept that this edition can't use, so that the built-in numbers stand in. */
export const ownTrouble = (page: RoomsOfFacts): string[] =>
  keptSchool() === undefined || ownSchool(page)
    ? []
    : [
        "Your school’s numbers were kept by another edition of the workbook, or are damaged: the Dunlin’s stand here. The page Aircraft puts them right.",
      ];

/** Says that every value of the page is true now, whosever it is: nothing is hidden any more. */
export function shown(own: School | undefined): void {
  if (own) document.documentElement.dataset["own"] = "shown";
  else delete document.documentElement.dataset["own"];
}

/**
 * Fills the lines that say whose numbers the page shows, now and whenever another tab changes them.
 *
 * @param page the facts that the page was built with
 * @param changed told after another tab's change
 */
export function bindWhose(page: RoomsOfFacts = {}, changed: () => void = () => shown(ownSchool(page))): void {
  const lines = [...document.querySelectorAll('[data-part="whose"]')].map((line) => ({
    line,
    built: line.textContent,
  }));
  const tell = (): void => {
    const own = ownSchool(page);
    for (const { line, built } of lines) line.textContent = own ? own.aircraft.owner : built;
    changed();
  };
  onSchoolElsewhere(tell);
  tell();
}
