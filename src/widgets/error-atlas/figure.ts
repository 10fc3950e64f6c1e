import { type AtlasRuleName, atlasRules } from "../../cells/atlas-rules.ts";
import { quantityOf } from "../../cells/quantities.ts";
import type { Column, Figure, FigureTable, Readout, Shown } from "../figure.ts";
import { asSet, nearest, readout, rounded, signed } from "../figure-words.ts";
import { answerFrom, differenceWord, kindOf, rangeWords, safeWords } from "./answer.ts";
import { tablePlaces } from "./axes.ts";
import { atlasPanels } from "./drawing.ts";
import { compared, needsOf } from "./model.ts";
import { placeWords, spanWords } from "./places.ts";
import type { AtlasRule, Range, Values } from "./rule.ts";
import { ruleNamed } from "./rules.ts";
import { type AtlasModel, type Moment, modelOf } from "./shown-model.ts";

const made = new Map<AtlasRuleName, Figure>();

/** The figure of one rule: the rule against what it stands for, and its error beneath; nothing for an unknown word. */
export function atlasFigure(key: unknown): Figure | undefined {
  const rule = ruleNamed(key);
  if (rule && !made.has(rule.key)) made.set(rule.key, figureOf(rule));
  return rule && made.get(rule.key);
}

/** A tolerance is never negative; so large a one says nothing. */
const TOLERANCES: Range = [0, 10_000];

function figureOf(rule: AtlasRule): Figure {
  const { needs } = atlasRules[rule.key];
  const model = modelOf(rule);
  const panels = atlasPanels(rule);
  return {
    name: `error-atlas-${rule.key}`,
    needs,
    holds: { ...rule.holds, [needsOf(rule).tolerance]: TOLERANCES },
    model: (aircraft) => `${safeWords(rule)} ${rule.leavesOut} Range: ${rangeWords(rule, aircraft)}.`,
    show: (state) =>
      shown(model(sized(rule, state.values), state.kept && sized(rule, state.kept), state.aircraft), panels),
  };
}

/** The rules of climb and descent take magnitudes. */
function sized(rule: AtlasRule, values: Values): Values {
  const { across } = needsOf(rule);
  return across === "verticalSpeed" ? { ...values, [across]: Math.abs(values[across]!) } : values;
}

function shown(model: AtlasModel, panels: ReturnType<typeof atlasPanels>): Shown {
  const { rule, now, kept, lines, range } = model;
  return {
    readouts: readouts(model),
    notice: notice(model),
    kept: kept ? keptWords(rule, kept.values) : "",
    answer: answerFrom(rule, now.values, lines, range),
    description: `${atlasRules[rule.key].title}, and its ${differenceWord(rule)} beneath. ${momentWords(rule, now)}${kept ? ` Kept: ${momentWords(rule, kept)}` : ""}`,
    table: () => table(model),
    panels: (size) => panels(model, size),
  };
}

function readouts({ rule, now, kept }: AtlasModel): Readout[] {
  const { unit, digits } = rule.result;
  const value = (at: number | undefined, was: number | undefined) => ({
    value: at ?? Number.NaN,
    kept: kept ? (was ?? Number.NaN) : undefined,
    unit,
    digits,
  });
  const reference = kindOf(rule) === "model" ? "Model" : "Exact";
  return [
    readout(reference, value(now.lines[0]?.exact, kept?.lines[0]?.exact), { line: "one" }),
    ...rule.lines.map(({ words }, i) => {
      const at = now.lines[i];
      const aside = at ? `${differenceWord(rule)} ${signed(at.error, unit, digits)}` : "";
      return readout(words[0], value(at?.rule, kept?.lines[i]?.rule), { line: i === 0 ? "two" : "three", aside });
    }),
  ];
}

function notice({ rule, now, range: [from, to], title }: AtlasModel): string {
  if (now.lines.every((line) => line === undefined)) return "There is no value to compare with at these numbers.";
  if (now.x >= from && now.x <= to) return "";
  return `${placeWords(rule, now.x)} is outside the range that is judged, ${spanWords(rule, from, to)} (${title}).`;
}

/** What was kept, tolerance aside: '95 kt, 15°, 5 °/s'. */
function keptWords(rule: AtlasRule, values: Values): string {
  const { tolerance } = needsOf(rule);
  return atlasRules[rule.key].needs
    .filter((need) => need !== tolerance)
    .map((need) => asSet(values[need]!, quantityOf(need)!.unit))
    .join(", ");
}

function momentWords(rule: AtlasRule, { x, lines }: Moment): string {
  const { unit, digits, name } = rule.result;
  const first = lines[0];
  if (!first) return `At ${placeWords(rule, x)} there is no value.`;
  const byRule = lines.map((line, i) =>
    line
      ? `${rule.lines[i]!.subject} gives ${rounded(line.rule, unit, digits)}, ${differenceWord(rule)} ${signed(line.error, unit, digits)}`
      : `${rule.lines[i]!.subject} gives no value`,
  );
  return `${name} at ${placeWords(rule, x)}: ${kindOf(rule)} ${rounded(first.exact, unit, digits)}; ${byRule.join("; ")}.`;
}

function table(model: AtlasModel): FigureTable {
  const { rule, now, kept, axes } = model;
  const { across } = needsOf(rule);
  const { label, unit, digits } = quantityOf(across)!;
  const places = tablePlaces(axes.across);
  return {
    caption: `${atlasRules[rule.key].title}, and its ${differenceWord(rule)}`,
    columns: [{ name: label, unit, digits }, ...resultColumns(rule)],
    rows: places.map((x) => {
      const lines = rule.lines.map((line) => compared(rule, line, { ...now.values, [across]: x }));
      return [x, lines[0]?.exact ?? null, ...lines.flatMap((line) => [line?.rule ?? null, line?.error ?? null])];
    }),
    here: nearest(places, now.x),
    ...(kept ? { was: nearest(places, kept.x) } : {}),
  };
}

function resultColumns(rule: AtlasRule): Column[] {
  const { unit, digits } = rule.result;
  const result = { unit, digits };
  return [
    { name: kindOf(rule) === "model" ? "Model" : "Exact", ...result },
    ...rule.lines.flatMap(({ words: [words] }): Column[] => [
      { name: words, ...result },
      { name: `${differenceWord(rule) === "error" ? "Error" : "Difference"} of ${words}`, ...result, signed: true },
    ]),
  ];
}
