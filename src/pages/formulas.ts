import { FormulaCellElement } from "../widgets/formula-cell/index.ts";
import type { Typeset } from "../widgets/working-rows.ts";
import { bindFormulaSearch } from "./formula-search.ts";
import { bindPlaceRuler } from "./place-ruler.ts";
import { bindShade } from "./shade.ts";

const sheet: { typeset: Readonly<Record<string, string>> } = JSON.parse(document.getElementById("sheet")!.textContent);
const typeset: Typeset = (tex) => (Object.hasOwn(sheet.typeset, tex) ? sheet.typeset[tex]! : "");
const numbers = new Map<string, string>();

bindShade();
bindPlaceRuler();
customElements.define("formula-cell", FormulaCellElement);
const cells = [...document.querySelectorAll<FormulaCellElement>("formula-cell")];
for (const cell of cells) Object.assign(cell, { typeset, numbers });
bindFormulaSearch(cells);
document.querySelector('[data-part="print"]')?.addEventListener("click", () => print());
letScroll();

/** A formula wider than its column can be moved by the keys, too. */
function letScroll(): void {
  const watcher = new ResizeObserver((entries) => {
    for (const { target } of entries) {
      if (target.scrollWidth > target.clientWidth) target.setAttribute("tabindex", "0");
      else target.removeAttribute("tabindex");
    }
  });
  for (const maths of document.querySelectorAll('[data-part="maths"]')) watcher.observe(maths);
}
