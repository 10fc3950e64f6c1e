import { type Checked, checkEntries } from "./check.ts";
import { entryOf } from "./entry.ts";
import { fields } from "./fields.ts";
import { VERSION } from "./file.ts";
import { type School, valuesOf } from "./school.ts";

/** A school in few characters, for an address: JSON of its version and every field's entry in the order of the form. */
export function compactOf(school: School): string {
  const values = valuesOf(school);
  return JSON.stringify([VERSION, ...fields.map(({ id }) => entryOf(values.get(id) ?? ""))]);
}

/** The school that such a text stands for, or everything that keeps it from being one; never throws. */
export function fromCompact(text: string): Checked {
  const entries = entriesOf(text);
  if (typeof entries === "string") return { findings: [{ field: "", message: entries, mend: ASK }], values: new Map() };
  return checkEntries(Object.fromEntries(fields.map(({ id }, i) => [id, entries[i]!])));
}

const ASK = "Ask whoever handed it on for the address again, or for the file.";

function entriesOf(text: string): readonly string[] | string {
  const cut = "The address is damaged or cut short.";
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return cut;
  }
  if (!Array.isArray(parsed) || typeof parsed[0] !== "number") return cut;
  const [version, ...entries] = parsed as [number, ...unknown[]];
  if (version !== VERSION)
    return `The address is of version ${version}; this edition of the workbook reads version ${VERSION}.`;
  const sound = entries.every((each): each is string => typeof each === "string");
  return sound && entries.length === fields.length ? entries : cut;
}
