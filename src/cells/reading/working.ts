import * as v from "valibot";
import type { WorkingCell, WorkingStep } from "../chapter.ts";
import type { Value } from "../expressions/index.ts";
import { checked } from "./checked.ts";
import type { Draft } from "./draft.ts";
import { readExpression } from "./expression.ts";
import { readInline } from "./inline.ts";
import { digits, expression, text, unit } from "./schemas.ts";
import { texMistake } from "./tex.ts";
import { namesOf } from "./work.ts";
import type { ReadYaml } from "./yaml.ts";

const step = v.strictObject({
  what: text,
  is: expression,
  unit,
  digits,
  name: v.optional(
    v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]{0,39}$/, "use letters and digits, a small letter first")),
  ),
  symbol: v.optional(text),
  tex: v.optional(text),
});
const working = v.strictObject({
  of: text,
  steps: v.pipe(v.array(step), v.minLength(1, "write one step at least"), v.maxLength(20)),
});

/** A worked example: each step tried with the chapter's numbers as given. */
export function readWorking(read: ReadYaml, draft: Draft): Omit<WorkingCell, "id"> | undefined {
  const result = checked(working, read, draft.source.file);
  if ("problems" in result) {
    draft.problems.push(...result.problems);
    return undefined;
  }
  const { of, steps } = result.output;
  const withoutLive = { withoutLive: "a heading" };
  const heading = readInline(
    of,
    draft.scope((offset) => read.within(["of"], offset), withoutLive),
  );
  draft.problems.push(...heading.problems);
  if (draft.sheet.readable) checkSteps(steps, read, draft);
  for (const [i, { symbol, tex }] of steps.entries()) {
    checkTex(symbol, ["steps", i, "symbol"], read, draft);
    checkTex(tex, ["steps", i, "tex"], read, draft);
  }
  return { kind: "working", of, steps: steps.map(withoutGaps) };
}

type Step = v.InferOutput<typeof step>;

function checkSteps(steps: readonly Step[], read: ReadYaml, draft: Draft): void {
  const { given, work, values: known, broken } = draft.sheet;
  const units = new Map([...given, ...work].map((each) => [each.name, each.unit]));
  const values = new Map<string, Value>(known);
  const failed = new Set(broken);
  const names = namesOf(units, values, draft, { isBroken: (name) => failed.has(name) });
  for (const [i, { is, unit, name }] of steps.entries()) {
    const result = readExpression(is, unit, names, draft.budget, (at, message, mend) =>
      draft.add(read.within(["steps", i, "is"], at), message, mend),
    );
    if (name === undefined) continue;
    if (units.has(name) || failed.has(name)) {
      draft.add(read.at(["steps", i, "name"]), `'${name}' has a meaning already.`, "Choose another name for the step.");
    } else if (result) {
      values.set(name, result.value);
      units.set(name, unit);
    } else failed.add(name);
  }
}

function checkTex(tex: string | undefined, path: (string | number)[], read: ReadYaml, draft: Draft): void {
  const mistake = tex !== undefined && draft.budget.spend("formulas", 1) ? texMistake(tex, false) : undefined;
  if (mistake) draft.add(read.within(path, mistake.at), mistake.message, mistake.mend);
}

function withoutGaps({ name, symbol, tex, ...rest }: Step): WorkingStep {
  return { ...rest, ...(name && { name }), ...(symbol && { symbol }), ...(tex && { tex }) };
}
