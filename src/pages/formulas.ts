import { FormulaCellElement } from "../widgets/formula-cell/index.ts";
import type { Typeset } from "../widgets/working-rows.ts";
import { bindFormulaSearch } from "./formula-search.ts";
import { bindPlaceRuler } from "./place-ruler.ts";
import { bindWhose } from "./school.ts";
import { bindShade } from "./shade.ts";

const numbers = new Map<string, string>();
let formulas: Readonly<Record<string, string>> | undefined;

/** The maths of the workings as built; it is read when a working is first looked at. */
const typeset: Typeset = (tex) => {
  formulas ??= JSON.parse(document.getElementById("sheet")!.textContent).typeset as Record<string, string>;
  return Object.hasOwn(formulas, tex) ? formulas[tex]! : "";
};

bindShade();
bindWhose();
bindPlaceRuler();
customElements.define("formula-cell", FormulaCellElement);
const cells = [...document.querySelectorAll<FormulaCellElement>("formula-cell")];
for (const cell of cells) Object.assign(cell, { typeset, numbers });
bindFormulaSearch(cells);
document.querySelector('[data-part="print"]')!.addEventListener("click", () => print());
letScroll([...document.querySelectorAll<HTMLElement>('[data-part="maths"]')]);

/** A formula wider than its column can be moved by the keys, too. */
function letScroll(all: readonly HTMLElement[]): void {
  const letKeysIn = (maths: Element): void => {
    if (maths.scrollWidth > maths.clientWidth) maths.setAttribute("tabindex", "0");
    else maths.removeAttribute("tabindex");
  };
  const watcher = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) if (isIntersecting) letKeysIn(target);
  });
  for (const maths of all) watcher.observe(maths);
  addEventListener("resize", () => all.forEach(letKeysIn));
}
