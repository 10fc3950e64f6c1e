import * as v from "valibot";
import type { FigureCell } from "../chapter.ts";
import { chosenOf, type FigureOptions, type FigureSignature } from "../figures.ts";
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
  const { see, ...options } = "output" in result ? (result.output as { see: string } & FigureOptions) : noOptions;
  if (signature) checkNeeds(signature, options, fence, draft);
  if (!signature || "problems" in result || !isChosen(signature, options, read, draft)) return undefined;
  const { tokens, problems } = readInline(
    see,
    draft.scope((offset) => read.within(["see"], offset)),
  );
  draft.problems.push(...problems);
  return { kind: "figure", name, see, seeTokens: tokens, options };
}

const noOptions = { see: "" };

const see = v.pipe(v.string(wanted("a sentence", "Say what to see in the figure.")), v.trim(), v.nonEmpty());
const anyShape = v.looseObject({ see });

const optionShapes = { number: v.pipe(v.number(), v.finite()), word: text, boolean: v.boolean() };

function shapeOf({ options, choice }: FigureSignature) {
  const entries = Object.entries(options).map(([key, type]) => [key, v.optional(optionShapes[type])] as const);
  return v.strictObject({ see, ...Object.fromEntries(entries), ...(choice && { [choice.option]: text }) });
}

/** Whether the word that decides what is shown is one of those the figure knows. */
function isChosen({ choice }: FigureSignature, options: FigureOptions, read: ReadYaml, draft: Draft): boolean {
  if (!choice) return true;
  const word = String(options[choice.option]);
  if (Object.hasOwn(choice.of, word)) return true;
  const message = `${quoted(word)} is no '${choice.option}' of this figure.`;
  draft.add(read.at([choice.option], "value"), message, didYouMean(word, Object.keys(choice.of)));
  return false;
}

function checkNeeds(signature: FigureSignature, options: FigureOptions, fence: Fence, draft: Draft): void {
  if (!draft.sheet.readable) return;
  const { name } = signature;
  const { needs } = chosenOf(signature, options);
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
