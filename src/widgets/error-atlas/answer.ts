import { catalogue } from "../../calc/index.ts";
import type { Facts } from "../../cells/known.ts";
import { quantityOf } from "../../cells/quantities.ts";
import { asSet, signed } from "../figure-words.ts";
import { type Judged, judged, needsOf, type Point } from "./model.ts";
import { placesOf, roughly, sides, spans, spanWords } from "./places.ts";
import type { AtlasRule, Range, Values } from "./rule.ts";

/** Where a rule stops working at these values, in a sentence for each of its lines. */
export function answerOf(rule: AtlasRule, values: Values, aircraft: Facts): string {
  const range = rule.across.range(aircraft);
  return answerFrom(
    rule,
    values,
    rule.lines.map((line) => judged(rule, line, values, range, toleranceOf(rule, values))),
    range,
  );
}

/** The same from what was judged already. */
export function answerFrom(rule: AtlasRule, values: Values, lines: readonly Judged[], range: Range): string {
  const at = rule.at?.(values);
  return lines
    .map(
      (line, i) => `${at && i === 0 ? `${at}, ` : ""}${rule.lines[i]!.subject} ${lineWords(rule, values, line, range)}`,
    )
    .map(sentence)
    .join(" ");
}

export const toleranceOf = (rule: AtlasRule, values: Values): number => values[needsOf(rule).tolerance]!;

/** '1°': the tolerance as it was set. */
export function toleranceWords(rule: AtlasRule, values: Values): string {
  return asSet(toleranceOf(rule, values), quantityOf(needsOf(rule).tolerance)!.unit);
}

/** '47 to 184 kt, the Dunlin's true airspeeds …', 'every heading' */
export function rangeWords(rule: AtlasRule, aircraft: Facts): string {
  const { range, whose, whole } = rule.across;
  return whole ? whose(aircraft) : `${spanWords(rule, ...range(aircraft)).replace("from ", "")}, ${whose(aircraft)}`;
}

/** Whether what the rule stands for is exact or a model, by the catalogue. */
export function kindOf({ name }: AtlasRule): "exact" | "model" {
  const { standsFor } = catalogue.find((formula) => formula.name === name)!;
  return catalogue.find((formula) => formula.name === standsFor)!.kind === "model" ? "model" : "exact";
}

/** A rule is in error against the exact value; it differs from a model. */
export const differenceWord = (rule: AtlasRule): string => (kindOf(rule) === "model" ? "difference" : "error");

/** The safe side, where there is one, and why. */
export const safeWords = ({ safe, why, over, under }: AtlasRule): string =>
  safe ? `Safe side: ${safe === "over" ? over : under}. ${why}` : why;

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

function lineWords(rule: AtlasRule, values: Values, { stretches, greatest }: Judged, range: Range): string {
  if (!greatest) return "has no value to be compared with";
  const limit = toleranceWords(rule, values);
  const places = placesOf(rule, stretches);
  const within = places.filter(({ is }) => is === "within");
  const none = places.filter(({ is }) => is === "none");
  const beyond = places.filter((place) => !within.includes(place) && !none.includes(place));
  const stands =
    within.length === 0
      ? `is outside ${limit} throughout`
      : beyond.length === 0
        ? `is within ${limit} throughout`
        : `is within ${limit} ${spans(rule, within)}; outside ${sides(rule, beyond)}`;
  const missing = none.length > 0 ? [`there is no value ${sides(rule, none)}`] : [];
  return [stands, ...missing, greatestWords(rule, greatest, range)].join("; ");
}

function greatestWords(rule: AtlasRule, { x, error }: Point, range: Range): string {
  const { unit, digits } = rule.result;
  const said = signed(error, unit, digits);
  if (!/[1-9]/.test(said)) return `its greatest ${differenceWord(rule)} rounds to nothing`;
  const side = rule.safe && error > 0 === (rule.safe === "over") ? ", on the safe side," : ", not on the safe side,";
  return `greatest ${differenceWord(rule)} ${said}${rule.safe ? side : ""} at ${roughly(rule, x, range)}`;
}
