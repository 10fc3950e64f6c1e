import * as v from "valibot";
import { wanted } from "../reading/checked.ts";

const words = v.pipe(v.string(), v.trim(), v.nonEmpty());
const expression = v.pipe(
  v.union([v.string(), v.number()]),
  v.transform(String),
  v.trim(),
  v.nonEmpty(wanted("an expression", "Write what it comes to, such as turnRadius(tas, bank).")),
);
const name = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z][A-Za-z0-9]*$/, wanted("a name of letters and digits, a letter first", "Rename it.")),
);
/** Short, without commas or spaces: a reply may list keys. */
const key = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9-]*$/, wanted("a key of letters, digits and hyphens", "Rename it.")),
);
const finite = v.pipe(v.number(), v.finite());
const digits = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(6));

const measure = {
  quantity: v.optional(v.string()),
  unit: v.optional(v.string()),
  label: v.optional(words),
  digits: v.optional(digits),
};
const list = v.pipe(
  v.array(v.union([finite, words])),
  v.minLength(1, wanted("a list of one value at least", "Add one.")),
);
const grid = v.strictObject({ from: finite, to: finite, step: finite, ...measure });
const listed = v.strictObject({ list, ...measure });
const draw = v.lazy((input) => {
  if (Array.isArray(input))
    return v.pipe(
      list,
      v.transform((list): v.InferOutput<typeof listed> => ({ list })),
    );
  return typeof input === "object" && input !== null && "list" in input ? listed : grid;
});

const common = {
  id: v.pipe(
    v.string(),
    v.regex(
      /^[A-Za-z0-9]+(-[A-Za-z0-9]+)*$/,
      wanted("an id of letters, digits and hyphens", "Write one such as turning-radius-1."),
    ),
  ),
  objective: words,
  ask: words,
  hints: v.optional(v.array(words), []),
  why: v.optional(words),
  draw: v.optional(v.record(name, draw), {}),
};

const number = v.strictObject({
  ...common,
  kind: v.literal("number"),
  label: v.optional(words),
  answer: expression,
  unit: words,
  digits: v.optional(digits),
  circle: v.optional(v.boolean()),
  within: v.union([words, v.pipe(finite, v.transform(String))]),
  sign: v.optional(v.literal("ignored", wanted("ignored", "Write sign: ignored, or leave it out."))),
  slips: v.optional(v.array(v.strictObject({ is: expression, say: words })), []),
});

const right = v.pipe(v.union([v.boolean(), v.string()]), v.transform(String));
const option = v.lazy((input) =>
  typeof input === "object"
    ? v.strictObject({ text: words, right: v.optional(right, "false"), say: v.optional(words) })
    : v.pipe(
        words,
        v.transform((text) => ({ text, right: "false", say: undefined })),
      ),
);

const choice = v.strictObject({
  ...common,
  kind: v.literal("choice"),
  several: v.optional(v.boolean(), false),
  shuffled: v.optional(v.boolean(), true),
  options: v.record(key, option),
});

const order = v.strictObject({
  ...common,
  kind: v.literal("order"),
  items: v.record(key, words),
  answer: v.array(key),
  slips: v.optional(v.array(v.strictObject({ is: v.array(key), say: words })), []),
});

/** An exercise as an author writes it; one of no known kind is asked for its kind alone. */
export const exerciseSchema = v.lazy((input) => {
  const kind = typeof input === "object" && input !== null && "kind" in input ? input.kind : undefined;
  return (
    [number, choice, order].find(({ entries }) => entries.kind.literal === kind) ??
    v.variant("kind", [number, choice, order])
  );
});

export type Written = v.InferOutput<typeof exerciseSchema>;
export type WrittenNumber = v.InferOutput<typeof number>;
export type WrittenChoice = v.InferOutput<typeof choice>;
export type WrittenOrder = v.InferOutput<typeof order>;
export type WrittenDraw = Written["draw"][string];
