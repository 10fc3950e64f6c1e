import { differences, type School, schoolFile } from "../cells/school/index.ts";
import { forgetSchool, keepSchool } from "../records/school.ts";
import { download } from "../widgets/figure-save.ts";
import { FitPanelElement, type Fitted } from "../widgets/fit-panel/index.ts";
import { count, SchoolFormElement } from "../widgets/school-form/index.ts";
import { bindImport } from "./aircraft-import.ts";
import { offer } from "./aircraft-offer.ts";
import { bindPlaceRuler } from "./place-ruler.ts";
import { bindWhose, ownSchool, ownTrouble, shown } from "./school.ts";
import { hashOf, schoolOfHash } from "./school-address.ts";
import { changeSettings } from "./settings.ts";
import { bindShade } from "./shade.ts";

const { school: builtIn }: { school: School } = JSON.parse(document.getElementById("sheet")!.textContent);
const part = <E extends HTMLElement>(name: string): E => document.querySelector<E>(`[data-part="${name}"]`)!;
const form = document.querySelector<SchoolFormElement>("school-form")!;
/** What stands: kept, or only on this page where the browser keeps nothing; undefined for the built-in school. */
let own: School | undefined;
let refused = false;

bindShade();
bindPlaceRuler();
customElements.define("school-form", SchoolFormElement);
customElements.define("fit-panel", FitPanelElement);
form.base = builtIn;
bindWhose(builtIn, () => void stand(ownSchool(builtIn)));
part("notices").textContent = ownTrouble(builtIn).join(" ");

form.addEventListener("save", (event) => take((event as CustomEvent<School>).detail));
form.addEventListener("back", () => void back());
form.addEventListener("edited", tell);
document.addEventListener("fitted", (event) => {
  const { id, entry } = (event as CustomEvent<Fitted>).detail;
  form.enter(id, entry);
});
part("export").addEventListener("click", () => {
  const school = own ?? builtIn;
  const name = school.aircraft.title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-") || "school";
  download(new Blob([schoolFile(school)], { type: "application/yaml" }), `${name}.yaml`);
});
bindImport((school, name) => offer(school, name, own ?? builtIn, take));
part("hand-on").addEventListener("click", () => void handOn());
part("copy").addEventListener("click", () => void copy());
part("print").addEventListener("click", () => print());
window.addEventListener("beforeunload", (event) => form.edits > 0 && event.preventDefault());
window.addEventListener("hashchange", () => void arrive());
openFoldsForPrint();
void arrive();

/** Makes a school the standing one, on the page at least. */
async function stand(school: School | undefined): Promise<void> {
  own = school;
  form.standing = school ?? builtIn;
  await form.updateComplete;
  for (const line of document.querySelectorAll('[data-part="whose"]'))
    line.textContent = (school ?? builtIn).aircraft.owner;
  shown(school);
  tell();
}

/** Keeps a school that the reader made or took over. */
function take(school: School): void {
  if (school.words !== (own ?? builtIn).words) changeSettings({ words: school.words });
  refused = !keepSchool(school, schoolFile(school));
  void stand(school).then(() => form.fill(school));
}

async function back(): Promise<void> {
  refused = !forgetSchool();
  await stand(undefined);
  form.fill(builtIn);
  part("state").focus();
}

/** Whose numbers stand in the form, and what has become of them. */
function tell(): void {
  const { edits } = form;
  const built = builtIn.aircraft.title;
  const state = part("state");
  const words = [standing(), edits > 0 ? `${count(edits, "entry")} changed and not yet saved.` : ""];
  const text = words.filter(Boolean).join(" ");
  if (state.textContent !== text) state.textContent = text;
  part("undo").hidden = edits === 0;
  part("back").hidden = own === undefined;

  function standing(): string {
    if (!own) return `These are the ${built}’s numbers.`;
    const differing = differences(builtIn, own).length;
    const kept = refused
      ? "This browser keeps nothing: these numbers hold for this page alone. Export them as a file."
      : "Kept in this browser; every page follows.";
    return `${own.aircraft.owner}: ${count(differing, "entry")} ${differing === 1 ? "differs" : "differ"} from the ${built}’s. ${kept}`;
  }
}

async function handOn(): Promise<void> {
  const hash = await hashOf(own ?? builtIn);
  const field = part<HTMLInputElement>("address");
  field.value = `${location.origin}${location.pathname}${hash}`;
  part("handed").hidden = false;
  part("handed-words").textContent =
    `${field.value.length} characters. Opening it shows what differs and asks before anything is replaced.`;
  field.focus();
  field.select();
}

async function copy(): Promise<void> {
  const field = part<HTMLInputElement>("address");
  field.select();
  try {
    await navigator.clipboard.writeText(field.value);
    part("handed-words").textContent = "Copied.";
  } catch {
    part("handed-words").textContent =
      "The browser doesn’t let the page copy: the address is selected, copy it by hand.";
  }
}

/** An address may hand a school on, or name a part of the page, whose fold then opens. */
async function arrive(): Promise<void> {
  const target = location.hash.length > 1 ? document.getElementById(location.hash.slice(1)) : null;
  if (target instanceof HTMLDetailsElement) target.open = true;
  const handed = await schoolOfHash(location.hash);
  if (!handed) return;
  history.replaceState(history.state, "", location.pathname + location.search);
  if (handed.school) offer(handed.school, "Handed on by the address", own ?? builtIn, take);
  else {
    const reasons = handed.findings.map(({ message, mend }) => `${message} ${mend}`);
    part("notices").textContent = `What the address hands on is refused; nothing has changed. ${reasons.join(" ")}`;
  }
}

function openFoldsForPrint(): void {
  let closed: HTMLDetailsElement[] = [];
  window.addEventListener("beforeprint", () => {
    closed = [...document.querySelectorAll<HTMLDetailsElement>("school-form details:not([open])")];
    for (const fold of closed) fold.open = true;
  });
  window.addEventListener("afterprint", () => {
    for (const fold of closed) fold.open = false;
  });
}
