import type { Facts } from "../cells/known.ts";
import type { School } from "../cells/school/school.ts";
import { Worksheet } from "../cells/worksheet.ts";
import { atlasGivens } from "../widgets/error-atlas/givens.ts";
import { bindLiveValues, FigureCellElement } from "../widgets/index.ts";
import { restore, write } from "./address.ts";
import { AtlasEntry } from "./atlas-entry.ts";
import { bindPlaceRuler } from "./place-ruler.ts";
import { bindWhose, ownSchool, ownTrouble, shown } from "./school.ts";
import { bindShade } from "./shade.ts";

const sheet: { aircraft: Facts; place: Facts } = JSON.parse(document.getElementById("sheet")!.textContent);
const entries = [...document.querySelectorAll<HTMLElement>(".atlas-rule")].map((section) => new AtlasEntry(section));
let own: School | undefined;
let worksheet: Worksheet;
let unbind = (): void => {};

customElements.define("figure-cell", FigureCellElement);
bindShade();
bindPlaceRuler();
bindWhose(sheet, () => void follow());
say([...ownTrouble(sheet), ...restore(worksheet!, worksheet!.given, own)]);
open(location.hash.slice(1));

document.addEventListener("release", () => write(worksheet, own));
document.querySelector('[data-part="print"]')!.addEventListener("click", () => print());
window.addEventListener("hashchange", () => open(location.hash.slice(1)));
for (const { key, fold } of entries) fold.addEventListener("toggle", () => name(key, fold.open));

/** Puts the school's numbers, hers or the built-in, under every rule; what the reader has changed stays. */
async function follow(): Promise<void> {
  const changed = worksheet?.changed().map((name) => [name, worksheet.value(name) as number]) ?? [];
  own = ownSchool(sheet);
  const { aircraft, place } = own ?? sheet;
  const schedule = (run: () => void): void => void requestAnimationFrame(run);
  worksheet = new Worksheet({ given: atlasGivens(aircraft, place), work: [] }, { aircraft, place, schedule });
  worksheet.setMany(Object.fromEntries(changed));
  unbind();
  unbind = bindLiveValues(document.body, worksheet);
  await Promise.all(entries.map((entry) => entry.take(worksheet, aircraft, own === undefined)));
  shown(own);
}

/** Opens the figure of a rule that the address names. */
function open(key: string): void {
  const entry = entries.find((one) => one.key === key);
  if (entry) entry.fold.open = true;
}

/** The address names the rule whose figure is open; no step back is added. */
function name(key: string, isOpen: boolean): void {
  if (!isOpen && location.hash !== `#${key}`) return;
  history.replaceState(history.state, "", `${location.pathname}${location.search}${isOpen ? `#${key}` : ""}`);
}

function say(notices: readonly string[]): void {
  const place = document.querySelector('[data-part="notices"]')!;
  place.replaceChildren(
    ...notices.map((words) => Object.assign(document.createElement("p"), { className: "notice", textContent: words })),
  );
}
