import { axisLayers, headWords } from "../drawing/axes.ts";
import { framesOf, isNarrow } from "../drawing/frames.ts";
import { endNames, type Point, valueBeside } from "../drawing/labels.ts";
import type { Axis, Frame, Layer, Panel, Size } from "../drawing/panel.ts";
import { asSet, rounded } from "../figure-words.ts";
import { RATE_ONE, radiusSeries, rateSeries, type Series, type TurnModel } from "./model.ts";

/** What the two panels differ in. */
interface Half {
  readonly series: (tas: number) => Series;
  readonly value: "rate" | "radius";
  readonly unit: string;
  /** A level line with its name in both regional words. */
  readonly mark: number | undefined;
  readonly head: string;
}

const frames = framesOf(({ bank, rate, radius }: TurnModel["axes"]) => ({
  across: { from: 0, to: bank, steps: [10, 15, 20, 30], text: (at) => `${at}°`, name: "Bank" },
  panels: [
    {
      up: upTo(rate, [1, 2, 5, 10, 20, 50, 100, 200], String, "Rate of turn, ° a second"),
      high: [196, 170],
    },
    {
      up: upTo(radius, [0.5, 1, 2.5, 5, 10, 25], (at) => at.toFixed(radius > 5 ? 0 : 1), "Radius, NM"),
      high: [196, 170],
    },
  ],
}));

/** An axis from nought whose end is a tick. */
const upTo = (to: number, steps: readonly number[], text: (at: number) => string, name: string): Axis => ({
  from: 0,
  to,
  steps: steps.filter((step) => to % step === 0),
  text,
  name,
});

/** Rate above and radius below, on one scale of bank. */
export function turnPanels(model: TurnModel, size: Size): Panel[] {
  const { axes } = model;
  const [above, below] = frames(size, axes);
  const school = model.limits.bank < axes.bank ? `school’s limit, ${asSet(model.limits.bank, "deg")}` : "";
  return [
    half(model, above!, isNarrow(size), {
      series: (tas) => rateSeries(tas, axes),
      value: "rate",
      unit: "deg/s",
      mark: RATE_ONE,
      head: school,
    }),
    half(model, below!, isNarrow(size), {
      series: (tas) => radiusSeries(tas, axes),
      value: "radius",
      unit: "NM",
      mark: undefined,
      head: beyondWords(model),
    }),
  ];
}

function beyondWords({ beyond, axes, limits }: TurnModel): string {
  if (!beyond || beyond.from >= axes.bank) return "";
  if (beyond.why === "too fast") return `${limits.name}: never exceed ${asSet(limits.neverExceed!, "kt")}`;
  if (beyond.why === "stalled") return `${limits.name}: stalls at ${asSet(limits.stall!, "kt")}`;
  return `${limits.name}: stalls from ${rounded(beyond.from, "deg", 0)}`;
}

function half(model: TurnModel, frame: Frame, narrow: boolean, { series, value, unit, mark, head }: Half): Panel {
  const { now, kept } = model;
  const [curve, ghost] = [series(now.tas), kept ? series(kept.tas) : nothing];
  const marks = mark === undefined ? [] : [mark];
  const [shown, was] = [onAxes(now.bank, now[value], frame), kept ? onAxes(kept.bank, kept[value], frame) : []];
  const at: Point = [frame.x(now.bank), frame.y(shown[0]?.[1] ?? frame.up.to)];
  const lines = [pixels(curve, frame), pixels(ghost, frame), ...marks.map((level) => levelAcross(level, frame))];
  const label = valueBeside(frame, at, rounded(now[value], unit, 2), lines);
  return {
    frame,
    layers: [
      ...axisLayers(frame),
      ...limitLayers(model, frame),
      { kind: "level", look: "mark", y: marks },
      { kind: "line", look: "curve ghost", x: ghost.bank, y: ghost.value },
      { kind: "line", look: "curve one", x: curve.bank, y: curve.value },
      { kind: "upright", look: "cursor", x: [now.bank], above: 4 },
      { kind: "dot", look: "dot ghost", x: was.map(([x]) => x), y: was.map(([, y]) => y), r: 4 },
      { kind: "dot", look: "dot one", x: shown.map(([x]) => x), y: shown.map(([, y]) => y), r: 5 },
      shown.length === 0 ? { ...label, x: [], y: [], words: [] } : label,
      ...names(model, frame, narrow, [curve, ghost], mark),
      headWords(frame, head),
    ],
  };
}

const nothing: Series = { bank: [], value: [] };

function names(model: TurnModel, frame: Frame, narrow: boolean, [curve, ghost]: Series[], mark?: number): Layer[] {
  const { now, kept } = model;
  const end = ({ value }: Series): number => value.at(-1) ?? frame.up.to;
  const other = kept && kept.tas !== now.tas ? `${narrow ? "" : "kept: "}${asSet(kept.tas, "kt")}` : "";
  const level = mark ?? 0;
  const [first, second, british] = endNames(frame, [
    { at: end(curve!), words: asSet(now.tas, "kt"), tone: "one" },
    { at: end(ghost!), words: other, tone: "soft" },
    { at: level, words: mark === undefined ? "" : "rate one", tone: "ink british" },
  ]);
  const american = { ...british!, look: "name ink american", words: british!.words.map(() => "std rate") };
  return [first!, second!, british!, american];
}

/** Hatched from the first of the limits on; a boundary line at each of them. */
function limitLayers({ limits, beyond, axes }: TurnModel, frame: Frame): Layer[] {
  const bounds = [limits.bank, ...(beyond ? [beyond.from] : [])].filter((bank) => bank < axes.bank);
  return [
    {
      kind: "area",
      look: "beyond",
      hatched: true,
      x1: bounds.length ? [Math.min(...bounds)] : [],
      x2: bounds.length ? [frame.across.to] : [],
    },
    { kind: "upright", look: "limit", x: bounds },
  ];
}

const onAxes = (bank: number, value: number, { up }: Frame): Point[] => (value <= up.to ? [[bank, value]] : []);

const pixels = ({ bank, value }: Series, frame: Frame): Point[] =>
  bank.map((at, i) => [frame.x(at), frame.y(value[i]!)]);

const levelAcross = (level: number, frame: Frame): Point[] => [
  [frame.left, frame.y(level)],
  [frame.right, frame.y(level)],
];
