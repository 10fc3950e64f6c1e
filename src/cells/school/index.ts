// A school's own numbers, place, technique and words: the form's fields, what is plausible, file and address.
export { type Checked, checkEntries, readEntries } from "./check.ts";
export { compactOf, fromCompact } from "./compact.ts";
export { type Difference, differences } from "./differences.ts";
export { entryOf, rangeWords, readEntry } from "./entry.ts";
export type * from "./field.ts";
export { fieldNamed, fields } from "./fields.ts";
export { schoolFile, VERSION } from "./file.ts";
export { columns, type Phase, phases } from "./phase-fields.ts";
export { implausible } from "./plausible.ts";
export { type Aircraft, type Group, type School, schoolOf, type Technique, type Values, valuesOf } from "./school.ts";
export { type OrderName, orderLabels } from "./technique-fields.ts";
