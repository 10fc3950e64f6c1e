import type { PropertyValues } from "lit";
import {
  type Checked,
  checkEntries,
  entryOf,
  type Field,
  type Finding,
  fieldNamed,
  fields,
  readEntry,
  type School,
  valuesOf,
} from "../../cells/school/index.ts";
import { LightElement } from "../light-element.ts";
import { controlId } from "./field-shell.ts";
import { followingText } from "./phase-table.ts";

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/**
 * The school's form come to life over its built HTML: entries are checked as they are made, each message at its field,
 * and whatever was typed stays. Fires `save` with a sound school, `back` where the built-in one is wanted again, and
 * `edited` at every change; all bubble.
 */
export class SchoolFormElement extends LightElement {
  static override properties = { base: { attribute: false }, standing: { attribute: false } };
  /** The built-in school. */
  declare base: School | undefined;
  /** The school that is kept, or the built-in one; setting it fills a form that holds no edits. */
  declare standing: School | undefined;

  /** Fields that were changed by hand, the latest last. */
  #touched: string[] = [];
  #troubled = new Map<string, string>();
  #started = false;

  protected override updated(changed: PropertyValues): void {
    if (!this.base || !this.standing) return;
    if (!this.#started) this.#listen();
    this.#started = true;
    if (!changed.has("standing")) return;
    // What is being typed outlives a change that another tab made.
    const before = changed.get("standing") as School | undefined;
    if (before && this.#differing(before).length > 0) this.#show(this.#check(), false);
    else this.fill(this.standing);
  }

  /** Puts a school's numbers into the fields, as if they had stood there from the start. */
  fill(school: School): void {
    const values = valuesOf(school);
    for (const { id } of fields) this.#control(id).value = entryOf(values.get(id) ?? "");
    this.#touched = [];
    this.#show(this.#check(), false);
  }

  /** Writes a value into a field, as a hand would. */
  enter(id: string, text: string): void {
    this.#control(id).value = text;
    this.#touch(id);
    this.#show(this.#check(), true);
  }

  /** Entries that differ from the standing school's. */
  get edits(): number {
    return this.standing ? this.#differing(this.standing).length : 0;
  }

  /** The school that the form makes; where it makes none, every reason shows and the first field has the focus. */
  settle(): School | undefined {
    const checked = this.#check();
    if (checked.school) return checked.school;
    this.#touched = [...fields.map(({ id }) => id).filter((id) => !this.#touched.includes(id)), ...this.#touched];
    this.#show(checked, true);
    const first = fields.find(({ id }) => this.#troubled.has(id));
    if (first) this.#focus(first.id);
    this.#say(`Not saved. ${count(this.#troubled.size, "entry")} can’t stand; the first is ${first?.label ?? ""}.`);
    return undefined;
  }

  #listen(): void {
    const form = this.partNamed<HTMLFormElement>("form");
    form.addEventListener("input", ({ target }) => {
      const { name } = target as Control;
      if (fieldNamed(name)) this.#show(this.#check(), this.#troubled.has(name));
    });
    form.addEventListener("change", ({ target }) => {
      const { name } = target as Control;
      if (!fieldNamed(name)) return;
      this.#touch(name);
      this.#show(this.#check(), true);
      const trouble = this.#troubled.get(name);
      this.#say(trouble ?? "");
    });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const school = this.settle();
      if (school) this.dispatchEvent(new CustomEvent("save", { bubbles: true, detail: school }));
    });
    this.partNamed("undo").addEventListener("click", () => {
      if (this.standing) this.fill(this.standing);
      this.partNamed("save").focus();
    });
    this.partNamed("back").addEventListener("click", () =>
      this.dispatchEvent(new CustomEvent("back", { bubbles: true })),
    );
  }

  #touch(id: string): void {
    this.#touched = [...this.#touched.filter((each) => each !== id), id];
  }

  #check(): Checked {
    return checkEntries(Object.fromEntries(fields.map(({ id }) => [id, this.#control(id).value])));
  }

  /** A finding shows at the field of it that was touched last; one of which no field was touched waits. */
  #show({ findings, values }: Checked, anew: boolean): void {
    const told = new Map<string, string>();
    for (const finding of findings) {
      const at = this.#placeOf(finding);
      if (at === undefined || told.has(at) || (!anew && !this.#troubled.has(at))) continue;
      told.set(at, `${finding.message} ${finding.mend}`);
    }
    for (const { id } of fields) this.#write(id, told.get(id) ?? "");
    this.#troubled = told;
    for (const cell of this.querySelectorAll<HTMLElement>("[data-follows]"))
      cell.textContent = followingText(cell.dataset["follows"]!, cell.dataset["column"]!, (id) => values.get(id));
    this.#mark();
    this.dispatchEvent(new CustomEvent("edited", { bubbles: true }));
  }

  #placeOf({ field, also = [] }: Finding): string | undefined {
    return this.#touched.findLast((id) => id === field || also.includes(id));
  }

  #write(id: string, words: string): void {
    const place = this.querySelector(`[data-trouble="${id}"]`)!;
    if (place.textContent === words) return;
    place.textContent = words;
    const control = this.#control(id);
    if (words) control.setAttribute("aria-invalid", "true");
    else control.removeAttribute("aria-invalid");
    if (words) control.closest("details")?.setAttribute("open", "");
  }

  /** Shows beside each field what the built-in school has there, where it differs; counts them on the folds. */
  #mark(): void {
    const differing = new Set(this.#differing(this.base!).map(({ id }) => id));
    const built = valuesOf(this.base!);
    for (const box of this.querySelectorAll<HTMLElement>("[data-field]")) {
      const id = box.dataset["field"]!;
      box.toggleAttribute("data-own", differing.has(id));
      const beside = box.querySelector('[data-part="base"]');
      if (beside) beside.textContent = differing.has(id) ? this.#builtWords(id, entryOf(built.get(id) ?? "")) : "";
    }
    for (const fold of this.querySelectorAll("details.fold")) {
      const own = fold.querySelectorAll("[data-field][data-own]").length;
      fold.querySelector('[data-part="count"]')!.textContent = own > 0 ? `${own} of your own` : "";
    }
  }

  #builtWords(id: string, entry: string): string {
    const field = fieldNamed(id)!;
    const words = field.kind === "choice" ? (field.choices[entry] ?? entry) : entry.split("\n").join(" · ");
    return words === "" ? "" : `${this.base!.aircraft.title}: ${words}`;
  }

  #differing(school: School): readonly Field[] {
    const values = valuesOf(school);
    return fields.filter(
      (field) => asRead(field, this.#control(field.id).value) !== entryOf(values.get(field.id) ?? ""),
    );
  }

  #focus(id: string): void {
    const control = this.#control(id);
    control.closest("details")?.setAttribute("open", "");
    control.focus();
  }

  #control(id: string): Control {
    return this.querySelector<Control>(`#${controlId(id)}`)!;
  }

  #say(words: string): void {
    this.partNamed("said").textContent = words;
  }
}

/** An entry in the one way its value is written, so that '-2' is '−2'; what can't be read stays as it is. */
function asRead(field: Field, text: string): string {
  const read = readEntry(field, text);
  return "value" in read ? entryOf(read.value) : text.trim();
}

/** '1 entry', '3 entries'. */
export const count = (number: number, one: string): string =>
  `${number} ${number === 1 ? one : one.replace(/y$/, "ies")}`;
