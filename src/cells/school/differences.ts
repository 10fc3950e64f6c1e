import { entryOf } from "./entry.ts";
import type { Field } from "./field.ts";
import { fields } from "./fields.ts";
import { type School, valuesOf } from "./school.ts";

/** A field that two schools fill in differently, with what stands in each. */
export interface Difference {
  readonly field: Field;
  readonly one: string;
  readonly other: string;
}

/** What two schools fill in differently, in the order of the form. */
export function differences(one: School, other: School): readonly Difference[] {
  const [ones, others] = [valuesOf(one), valuesOf(other)];
  return fields.flatMap((field) => {
    const [a, b] = [ones, others].map((values) => entryOf(values.get(field.id) ?? ""));
    return a === b ? [] : [{ field, one: a!, other: b! }];
  });
}
