import { type FormulaCellElement, isFoundBy } from "../widgets/formula-cell/index.ts";

const LONGEST = 100;

/** Shows the formulas that have every word typed, says how many, and keeps the words in the address. */
export function bindFormulaSearch(cells: readonly FormulaCellElement[]): void {
  const form = part<HTMLFormElement>("search");
  const field = form.querySelector("input")!;
  const seek = (find: string): void => {
    field.value = find;
    show(cells, find);
    write(find);
  };
  field.addEventListener("input", () => {
    show(cells, field.value);
    backToTop(form);
  });
  field.addEventListener("change", () => write(field.value));
  field.addEventListener("keydown", (event) => event.key === "Escape" && seek(""));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    write(field.value);
    cells
      .find((cell) => !cell.hidden)
      ?.querySelector<HTMLElement>("h3 a")
      ?.focus();
  });
  part("all").addEventListener("click", () => {
    seek("");
    field.focus();
  });
  // A link to what the search has put out of sight ends the search.
  document.addEventListener("click", (event) => {
    const link = (event.target as Element).closest<HTMLAnchorElement>('main a[href^="#"]');
    if (link && isOutOfSight(link.hash)) seek("");
  });
  window.addEventListener("hashchange", () => isOutOfSight(location.hash) && seek(""));
  const asked = new URLSearchParams(location.search).get("find")?.slice(0, LONGEST) ?? "";
  if (asked) seek(asked);
  if (isOutOfSight(location.hash)) seek("");
}

/** Filters the sheet; a topic with nothing to show goes with its formulas, here and in the list of topics. */
function show(cells: readonly FormulaCellElement[], find: string): void {
  for (const cell of cells) cell.hidden = !isFoundBy(cell.formula, find);
  const shown = cells.filter((cell) => !cell.hidden).length;
  for (const topic of document.querySelectorAll<HTMLElement>(".topic")) {
    topic.hidden = !topic.querySelector("formula-cell:not([hidden])");
    for (const link of document.querySelectorAll(`a[href="#${topic.id}"]`)) link.parentElement!.hidden = topic.hidden;
  }
  part("found").textContent = shown === cells.length ? `${shown} formulas` : `${shown} of ${cells.length} formulas`;
  part("none").hidden = shown > 0;
  part("sought").textContent = find.trim();
}

/** What was found begins under the field, however far down the sheet a reader was. */
function backToTop(form: HTMLElement): void {
  const passed = form.previousElementSibling!.getBoundingClientRect().bottom;
  if (passed < 0) scrollBy({ top: passed, behavior: "instant" });
}

function isOutOfSight(hash: string): boolean {
  const target = hash.length > 1 ? document.getElementById(hash.slice(1)) : null;
  return target?.closest("[hidden]") != null;
}

/** Puts the words into the address bar; no step back is added. */
function write(find: string): void {
  const search = find.trim() ? `?${new URLSearchParams({ find: find.trim() })}` : "";
  if (search !== location.search) history.replaceState(history.state, "", location.pathname + search + location.hash);
}

const part = <E extends HTMLElement = HTMLElement>(name: string): E =>
  document.querySelector<E>(`main [data-part="${name}"]`)!;
