import * as v from "valibot";
import type { FigureCell } from "../chapter.ts";
import type { FigureSignature } from "../figures.ts";
import type { Fence } from "./blocks.ts";
import { checked, wanted } from "./checked.ts";
import type { Draft } from "./draft.ts";
import { readInline } from "./inline.ts";
import { didYouMean, quoted } from "./near.ts";
import { text } from "./schemas.ts";
import type { ReadYaml } from "./yaml.ts";

/** A figure: its name after the word, what to see, and its options. */
export function readFigure(
  name: string,
  fence: Fence,
  read: ReadYaml,
  draft: Draft,
): Omit<FigureCell, "number" | "id"> | undefined {
  const { figures } = draft.known;
  const signature = figures.find((each) => each.name === name);
  if (!signature) {
    const message = name ? `There is no figure ${quoted(name)}.` : "The figure isn't named.";
    draft.addAt(
      fence.at,
      message,
      didYouMean(
        name,
        figures.map((each) => each.name),
      ),
    );
  }
  const result = checked(signature ? shapeOf(signature) : anyShape, read, draft.source.file);
  if ("problems" in result) draft.problems.push(...result.problems);
  if (signature) checkNeeds(signature, fence, draft);
  if (!signature || "problems" in result) return undefined;
  const { see, ...options } = result.output;
  const { tokens, problems } = readInline(
    see,
    draft.scope((offset) => read.within(["see"], offset)),
  );
  draft.problems.push(...problems);
  return { kind: "figure", name, see, seeTokens: tokens, options: options as FigureCell["options"] };
}

const see = v.pipe(v.string(wanted("a sentence", "Say what to see in the figure.")), v.trim(), v.nonEmpty());
const anyShape = v.looseObject({ see });

const optionShapes = { number: v.pipe(v.number(), v.finite()), word: text, boolean: v.boolean() };

function shapeOf({ options }: FigureSignature) {
  const entries = Object.entries(options).map(([key, type]) => [key, v.optional(optionShapes[type])] as const);
  return v.strictObject({ see, ...Object.fromEntries(entries) });
}

function checkNeeds({ name, needs }: FigureSignature, fence: Fence, draft: Draft): void {
  if (!draft.sheet.readable) return;
  const { given, names, broken } = draft.sheet;
  for (const need of needs) {
    if (given.some(({ quantity }) => quantity === need) || (names.has(need) && broken.has(need))) continue;
    draft.addAt(
      fence.at,
      `The figure '${name}' needs the quantity '${need}'.`,
      `Add '${need}:' to the chapter's given.`,
    );
  }
}
