import * as v from "valibot";
import type { Given, PredictCell, PredictOption } from "../chapter.ts";
import { quantityOf } from "../quantities.ts";
import { checked, wanted } from "./checked.ts";
import type { Draft } from "./draft.ts";
import { readExpression } from "./expression.ts";
import { readInline } from "./inline.ts";
import { didYouMean, quoted } from "./near.ts";
import { expression, text } from "./schemas.ts";
import { namesOf } from "./work.ts";
import type { Path, ReadYaml } from "./yaml.ts";

const right = v.literal(true, wanted("true", "Write 'right: true' on the right option, and nothing on the others."));
const option = v.lazy((input) =>
  typeof input === "object" && input !== null ? v.strictObject({ text, right: v.optional(right) }) : text,
);
const letter = v.pipe(
  v.string(),
  v.regex(/^[A-F]$/, wanted("a capital letter", "Letter the options A, B, C and so on.")),
);
const predict = v.strictObject({
  ask: text,
  options: v.record(letter, option),
  // biome-ignore lint/suspicious/noThenProperty: the key's name in a chapter
  then: v.record(v.string(), expression),
  say: text,
});

type Shape = v.InferOutput<typeof predict>;

/** A question before the reveal, the change that the reveal makes, and what to say then. */
export function readPredict(read: ReadYaml, draft: Draft): Omit<PredictCell, "id"> | undefined {
  const result = checked(predict, read, draft.source.file);
  if ("problems" in result) {
    draft.problems.push(...result.problems);
    return undefined;
  }
  const { ask, say } = result.output;
  const options = optionsOf(result.output, read, draft);
  checkOptions(options, read, draft);
  const changes = Object.entries(result.output.then).map(([name, is]) => ({ name, is }));
  if (draft.sheet.readable) for (const change of changes) checkChange(change, read, draft);
  return {
    kind: "predict",
    ask,
    askTokens: tokensOf(ask, ["ask"], read, draft),
    options,
    // biome-ignore lint/suspicious/noThenProperty: the key's name in a chapter
    then: changes,
    say,
    sayTokens: tokensOf(say, ["say"], read, draft),
  };
}

function tokensOf(markdown: string, path: Path, read: ReadYaml, draft: Draft) {
  const { tokens, problems } = readInline(
    markdown,
    draft.scope((offset) => read.within(path, offset)),
  );
  draft.problems.push(...problems);
  return tokens;
}

function optionsOf({ options }: Shape, read: ReadYaml, draft: Draft): PredictOption[] {
  return Object.entries(options).map(([key, each]) => {
    const { text: words, right = false } = typeof each === "string" ? { text: each } : each;
    const path = typeof each === "string" ? ["options", key] : ["options", key, "text"];
    return { key, text: words, tokens: tokensOf(words, path, read, draft), right };
  });
}

function checkOptions(options: readonly PredictOption[], read: ReadYaml, draft: Draft): void {
  const at = read.at(["options"], "key");
  if (options.length < 2) draft.add(at, "A prediction needs two options at least.", "Write A and B, one to a line.");
  const letters = options.map(({ key }) => key).join("");
  if (!"ABCDEF".startsWith(letters))
    draft.add(at, "The options' letters leave a gap or stand out of order.", "Letter them A, B, C from the top.");
  const right = options.filter((option) => option.right);
  if (right.length === 1) return;
  const count = right.length === 0 ? "No option is" : `${right.length} options are`;
  draft.add(
    at,
    `${count} marked as right.`,
    "Mark exactly one: give it 'text:' and 'right: true' on lines of their own.",
  );
}

function checkChange({ name, is }: { name: string; is: string }, read: ReadYaml, draft: Draft): void {
  const { given, work, names, broken, values } = draft.sheet;
  const target = given.find((each) => each.name === name);
  if (!target) {
    if (names.has(name) && broken.has(name)) return;
    const why = names.has(name) ? "is computed, so the reveal can't set it" : "is none of the chapter's given";
    draft.add(
      read.at(["then", name], "key"),
      `${quoted(name)} ${why}.`,
      didYouMean(
        name,
        given.map((each) => each.name),
      ),
    );
    return;
  }
  const units = new Map([...given, ...work].map((each) => [each.name, each.unit]));
  const sheetNames = namesOf(units, values, draft, { isBroken: (each) => broken.has(each) });
  const result = readExpression(is, target.unit, sheetNames, draft.budget, (at, message, mend) =>
    draft.add(read.within(["then", name], at), message, mend),
  );
  if (result) checkReach(target, result.value, read, draft);
}

function checkReach({ name, quantity, unit }: Given, value: unknown, read: ReadYaml, draft: Draft): void {
  const { from, to } = quantityOf(quantity)!;
  if (typeof value === "number" && value >= from && value <= to) return;
  const where =
    typeof value === "number" ? `sets '${name}' to ${Number(value.toPrecision(6))}` : `gives '${name}' no number`;
  draft.add(read.at(["then", name]), `The reveal ${where}.`, `Keep it within ${from} to ${to} ${unit}.`);
}
