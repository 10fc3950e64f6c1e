import type { ChoiceOption } from "./exercise.ts";
import { fill } from "./fill.ts";
import type { ChoiceQuestion, OrderQuestion } from "./question.ts";
import { unreadable, type Verdict } from "./verdict.ts";

/** A reply of keys to a choice or an order. */
export function markKeys(question: ChoiceQuestion | OrderQuestion, keys: readonly string[]): Verdict {
  if (keys.some((key) => !question.options.includes(key)))
    return unreadable("One of these answers is none of the question’s.");
  if (new Set(keys).size < keys.length) return unreadable("One answer stands there twice.");
  const marked = question.kind === "choice" ? markChoice(question, keys) : markOrder(question, keys);
  return marked.kind === "unreadable" ? marked : { ...marked, why: fill(question.exercise.why, question.printed) };
}

function markChoice(question: ChoiceQuestion, keys: readonly string[]): Verdict {
  const { exercise, answer } = question;
  if (keys.length === 0) return unreadable(exercise.several ? "Choose one at least." : "Choose one.");
  if (keys.length > 1 && !exercise.several) return unreadable("Choose one only.");
  const chosen = exercise.options.filter(({ key }) => keys.includes(key));
  const astray = chosen.filter(({ key }) => !answer.includes(key));
  const spoken = (astray.length > 0 ? astray : chosen).filter(({ say }) => say !== "");
  const because = spoken.map(({ key }) => key);
  const say = spoken.map((option) => fill(option.say, question.printed)).join(" ");
  if (astray.length > 0 && spoken.length > 0) {
    return verdict("slip", say, because, { slip: exercise.options.indexOf(spoken[0]!) });
  }
  if (astray.length > 0) return verdict("wrong", notRight(exercise.several, chosen), []);
  if (chosen.length < answer.length) return verdict("wrong", "What you chose is right, but it is not all.", []);
  return verdict("right", say || "That is right.", because);
}

const notRight = (several: boolean, chosen: readonly ChoiceOption[]): string =>
  several && chosen.length > 1 ? "Not all that you chose is right." : "That is not right.";

function markOrder(question: OrderQuestion, keys: readonly string[]): Verdict {
  const { answer, slips } = question;
  if (keys.length !== answer.length) return unreadable(`All ${answer.length} are wanted, each in its place.`);
  if (equal(keys, answer)) return verdict("right", "That is the right order.", []);
  const slip = slips.findIndex(({ value }) => equal(keys, value));
  if (slip >= 0) return verdict("slip", slips[slip]!.say, [`slip:${slip}`], { slip });
  const standing = keys.findIndex((key, at) => key !== answer[at]);
  const say =
    standing === 0 ? "The first is already out of place." : `Right up to place ${standing}; the next is out of place.`;
  return verdict("wrong", say, []);
}

const equal = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((key, at) => key === b[at]);

const verdict = (
  kind: Verdict["kind"],
  say: string,
  because: readonly string[],
  more: Partial<Verdict> = {},
): Verdict => ({
  kind,
  say,
  why: "",
  working: [],
  because,
  ...more,
});
