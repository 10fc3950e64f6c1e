import * as v from "valibot";
import { wanted } from "./checked.ts";
import { statedUnits } from "./sheet.ts";

/** Text of one key; trimmed, never empty. */
export const text = v.pipe(v.string(), v.trim(), v.nonEmpty());
/** An expression, which YAML may have read as a number. */
export const expression = v.pipe(
  v.lazy((input) =>
    typeof input === "number"
      ? v.number()
      : v.string(wanted("an expression", "Write one, such as turnRadius(tas, bank).")),
  ),
  v.transform(String),
  v.trim(),
  v.nonEmpty("write an expression"),
);
export const unit = v.picklist(statedUnits, wanted("a unit", `Write one of: ${statedUnits.join(", ")}.`));
export const digits = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(6));

const number = v.pipe(v.number(), v.finite());
export const given = v.strictObject({
  value: v.lazy((input) => (typeof input === "string" ? text : number)),
  from: v.optional(number),
  to: v.optional(number),
  step: v.optional(number),
  label: v.optional(text),
  quantity: v.optional(text),
});
export const work = v.strictObject({ is: expression, unit, digits: v.optional(digits), label: v.optional(text) });

export const frontMatter = v.strictObject({
  title: text,
  code: v.pipe(v.string(), v.regex(/^[A-Z]{3}$/, wanted("three capital letters", "Write a code such as TRN."))),
  summary: v.optional(text),
  minutes: v.optional(
    v.pipe(
      v.number(wanted("a number of minutes", "Write how long the chapter takes, in minutes.")),
      v.integer(),
      v.minValue(1),
      v.maxValue(240),
    ),
  ),
  objectives: v.record(v.string(), text),
  given: v.optional(v.record(v.string(), given), {}),
  work: v.optional(v.record(v.string(), work), {}),
  sources: v.optional(v.array(text), []),
});
