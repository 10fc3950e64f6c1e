import type { Formula } from "../../calc/index.ts";
import { kindWords } from "./kind.ts";
import { topicTitles } from "./topics.ts";
import { spaced } from "./wording.ts";

/** Whether a formula has every word that was typed, as a part of any of its own: words, name, topic, arguments, kind. */
export function isFoundBy(formula: Formula, find: string): boolean {
  const text = textOf(formula);
  return wordsOf(find).every((word) => text.includes(word));
}

const wordsOf = (find: string): string[] => plain(find).split(/\s+/).filter(Boolean);

function textOf({ name, words, topic, args, result, kind }: Formula): string {
  const taken = args.map((each) => `${each.words} ${each.name}`);
  const given = "fields" in result ? Object.keys(result.fields).map(spaced) : [];
  return plain([words, name, topic, topicTitles[topic], kindWords[kind], ...taken, ...given].join("\n"));
}

const plain = (text: string): string => text.toLowerCase().replaceAll("’", "'");
