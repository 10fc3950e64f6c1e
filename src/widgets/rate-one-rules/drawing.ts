import { axisLayers, headWords } from "../drawing/axes.ts";
import { keptName, lineThrough, outsideLayers } from "../drawing/beyond.ts";
import { framesOf, isNarrow } from "../drawing/frames.ts";
import { endNames } from "../drawing/labels.ts";
import type { Axis, Frame, Layer, Panel, Size } from "../drawing/panel.ts";
import { asSet, signed } from "../figure-words.ts";
import { CLOSE, type Ends, type Ruled, type RulesModel, rulesSeries } from "./model.ts";

const frames = framesOf(({ tas, bank, error }: RulesModel["axes"]) => ({
  across: axis(tas, [10, 20, 40, 80], String, "True airspeed, kt"),
  panels: [
    { up: axis(bank, [10, 20], (at) => `${at}°`, "Bank for rate one"), high: [236, 190] },
    { up: axis(error, [2, 4], (at) => signed(at, "deg", 0), "Error of the rule"), high: [124, 110] },
  ],
}));

/** The bank above; the error of each rule beneath, on the same axis. */
export function rulesPanels(model: RulesModel, size: Size): Panel[] {
  const narrow = isNarrow(size);
  const [above, below] = frames(size, model.axes);
  const series = rulesSeries(model.axes.tas);
  return [bankPanel(model, above!, series, narrow), errorPanel(model, below!, series, narrow)];
}

const axis = ([from, to]: Ends, steps: number[], text: (value: number) => string, name: string): Axis => ({
  from,
  to,
  steps,
  text,
  name,
});

const ruleNames = (narrow: boolean) =>
  (narrow ? ["/10 + 7", "15 %"] : ["TAS/10 + 7", "15 % of TAS"]) as [string, string];

function bankPanel(model: RulesModel, frame: Frame, series: readonly Ruled[], narrow: boolean): Panel {
  const { now, kept } = model;
  const last = series.at(-1)!;
  const [tenth, fifteen] = ruleNames(narrow);
  return {
    frame,
    layers: [
      ...axisLayers(frame),
      ...outsideLayers(frame, model.limits.stall, model.limits.neverExceed),
      { kind: "upright", look: "kept-line", x: kept ? [kept.tas] : [] },
      lineOf(series, "fifteen", "curve three"),
      lineOf(series, "tenth", "curve two"),
      lineOf(series, "exact", "curve one"),
      { kind: "upright", look: "cursor", x: [now.tas], above: 4 },
      { kind: "dot", look: "dot one", x: [now.tas], y: [now.exact], r: 5 },
      ...endNames(frame, [
        { at: last.fifteen, words: fifteen, tone: "three" },
        { at: last.exact, words: "exact", tone: "one" },
        { at: last.tenth, words: tenth, tone: "two" },
      ]),
      keptName(frame, kept ? `kept: ${asSet(kept.tas, "kt")}` : "", kept?.tas, now.tas),
      headWords(frame, limitWords(model, narrow)),
    ],
  };
}

function errorPanel(model: RulesModel, frame: Frame, series: readonly Ruled[], narrow: boolean): Panel {
  const { now, kept } = model;
  const last = series.at(-1)!;
  const [tenth, fifteen] = ruleNames(narrow);
  return {
    frame,
    layers: [
      { kind: "area", look: "band", y1: [-CLOSE], y2: [CLOSE] },
      ...axisLayers(frame, 0),
      { kind: "level", look: "band-edge", y: [-CLOSE, CLOSE] },
      ...outsideLayers(frame, model.limits.stall, model.limits.neverExceed),
      { kind: "upright", look: "kept-line", x: kept ? [kept.tas] : [] },
      lineOf(series, "fifteenError", "curve three"),
      lineOf(series, "tenthError", "curve two"),
      { kind: "upright", look: "cursor", x: [now.tas], above: 4 },
      { kind: "dot", look: "dot three", x: [now.tas], y: [now.fifteenError], r: 4.5 },
      { kind: "dot", look: "dot two", x: [now.tas], y: [now.tenthError], r: 4.5 },
      ...endNames(frame, [
        { at: last.fifteenError, words: fifteen, tone: "three" },
        { at: last.tenthError, words: tenth, tone: "two" },
      ]),
      headWords(frame, `band: within ${CLOSE}°`),
    ],
  };
}

const lineOf = (series: readonly Ruled[], value: keyof Ruled, look: string): Layer =>
  lineThrough(
    look,
    series.map(({ tas }) => tas),
    series.map((at) => at[value]),
  );

/** Whose limits are hatched: those of them that fall within the axis. */
function limitWords({ limits: { name, stall, neverExceed }, axes: { tas } }: RulesModel, narrow: boolean): string {
  const low = stall !== undefined && stall > tas[0] ? asSet(stall, "kt") : "";
  const high = neverExceed !== undefined && neverExceed < tas[1] ? asSet(neverExceed, "kt") : "";
  if (low && high && narrow) return `${name}: ${low} to ${high}`;
  const said = [low && `stalls at ${low}`, high && `never exceed ${high}`].filter(Boolean);
  return said.length ? `${name}: ${said.join(", ")}` : "";
}
