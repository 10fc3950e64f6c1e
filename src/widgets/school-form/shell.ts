import { entryOf, type Field, fields, type School, type Section, valuesOf } from "../../cells/school/index.ts";
import { escaped } from "../escaped.ts";
import { fieldShell } from "./field-shell.ts";
import { phaseTable } from "./phase-table.ts";

/** The form's parts, in the order of the page: the ten numbers that matter most stand open, the rest is folded. */
export const formParts: readonly { readonly id: string; readonly title: string; readonly about: string }[] = [
  { id: "main", title: "The numbers that matter most", about: "" },
  {
    id: "more",
    title: "Other speeds and limits",
    about: "The rest of what figures and the planner ask of the aeroplane.",
  },
  {
    id: "phases",
    title: "Power, attitude and what follows",
    about: "Flaps up, at the greatest mass. What stands without a line follows from the numbers above.",
  },
  { id: "drives", title: "What drives the instruments", about: "So that a failure takes the right ones." },
  { id: "place", title: "Aerodrome and place", about: "" },
  { id: "leads", title: "Leads and turns", about: "Schools differ; chapters show yours beside the exact figure." },
  { id: "orders", title: "Orders of work", about: "One step to a line, in the school’s own words and order." },
  { id: "phrases", title: "Words", about: "Said aloud when a turn is cleared and when control changes hands." },
];

const sections: Readonly<Record<string, readonly Section[]>> = {
  drives: ["drives"],
  place: ["place"],
  leads: ["leads", "recovery"],
  orders: ["orders"],
  phrases: ["phrases", "words"],
};

const names = fields.filter(({ section }) => section === "names");
const mains = fields.filter(({ main }) => main);
const isMore = ({ main, section }: Field): boolean => !main && (section === "speeds" || section === "limits");

/** The whole form at a school's numbers: it reads without scripts, and the element brings it to life. */
export function schoolFormShell(school: School): string {
  const values = valuesOf(school);
  const entry = (field: Field): string => fieldShell(field, entryOf(values.get(field.id) ?? ""));
  const body = (id: string): string =>
    id === "phases" ? phaseTable(values) : `<div class="entries">${fieldsOf(id).map(entry).join("")}</div>`;
  const parts = formParts.map(({ id, title, about }) => {
    const words = about && `<p class="about">${escaped(about)}</p>`;
    if (id === "main") return `<section id="main-numbers"><h2>${escaped(title)}</h2>${body(id)}</section>`;
    return `<details class="fold" id="${id}"><summary><h2>${escaped(title)}</h2><span class="soft" data-part="count"></span></summary>${words}${body(id)}</details>`;
  });
  return `<school-form class="of-aircraft"><form data-part="form" method="dialog" autocomplete="off" novalidate>
<p class="state" role="status" tabindex="-1" data-part="state">These are the ${escaped(school.aircraft.title)}’s numbers.</p>
${parts.join("\n")}
<p class="hidden-words" role="status" data-part="said"></p>
<div class="actions needs-script"><button type="submit" class="main" data-part="save">Save</button><button type="button" class="said" data-part="undo" hidden>Undo changes</button><button type="button" class="said" data-part="back" hidden>Back to the ${escaped(school.aircraft.title)}</button></div>
</form></school-form>`;
}

function fieldsOf(id: string): readonly Field[] {
  if (id === "main") return [...names, ...mains];
  return fields.filter((field) => (id === "more" ? isMore(field) : sections[id]!.includes(field.section)));
}
