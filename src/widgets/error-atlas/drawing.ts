import { axisLayers, headWords } from "../drawing/axes.ts";
import { keptName, lineThrough, outsideLayers } from "../drawing/beyond.ts";
import { framesOf, isNarrow } from "../drawing/frames.ts";
import { endNames, widthOf } from "../drawing/labels.ts";
import type { Frame, Layer, Panel, Size } from "../drawing/panel.ts";
import { kindOf, toleranceWords } from "./answer.ts";
import { acrossAxis, errorAxis, roomFor, valueAxis } from "./axes.ts";
import type { Curve } from "./model.ts";
import { placeWords, spanWords } from "./places.ts";
import type { AtlasRule } from "./rule.ts";
import type { AtlasModel } from "./shown-model.ts";
import { sideNames } from "./side-names.ts";

/** Dashes of a rule's first line and of its second. */
const TONES = ["two", "three"] as const;

/** Rule and exact above, the rule's error beneath on the same axis. */
export function atlasPanels(rule: AtlasRule): (model: AtlasModel, size: Size) => Panel[] {
  const frames = framesOf(({ across, value, error }: AtlasModel["axes"]) => {
    const [above, below] = [valueAxis(rule, value), errorAxis(rule, error)];
    return {
      across: acrossAxis(rule, across),
      panels: [
        { up: above, high: [236, 190] },
        { up: below, high: [150, 130] },
      ],
      left: Math.max(34, roomFor(above), roomFor(below)),
    };
  });
  return (model, size) => {
    const [above, below] = frames(size, model.axes);
    return [valuePanel(model, above!, isNarrow(size)), errorPanel(model, below!, isNarrow(size))];
  };
}

function valuePanel(model: AtlasModel, frame: Frame, narrow: boolean): Panel {
  const { rule, now, kept, curves, ghosts, range } = model;
  const exact = curves[0]!;
  const shown = now.lines[0];
  return {
    frame,
    layers: [
      ...axisLayers(frame),
      ...outsideLayers(frame, ...range),
      { kind: "upright", look: "kept-line", x: kept ? [kept.x] : [] },
      lineThrough("curve ghost", ghosts[0]?.x ?? [], ghosts[0]?.exact ?? []),
      ...rule.lines.map((_, i) => lineThrough(`curve ${TONES[i]}`, curves[i]!.x, curves[i]!.rule)),
      lineThrough("curve one", exact.x, exact.exact),
      { kind: "upright", look: "cursor", x: [now.x], above: 4 },
      { kind: "dot", look: "dot one", x: shown ? [now.x] : [], y: shown ? [shown.exact] : [], r: 5 },
      ...endNames(frame, [
        { at: exact.exact.at(-1) ?? 0, words: exact.x.length > 0 ? kindOf(rule) : "", tone: "one" },
        ...rule.lines.map(({ words }, i) => ({
          at: curves[i]!.rule.at(-1) ?? 0,
          words: curves[i]!.x.length > 0 ? words[narrow ? 1 : 0] : "",
          tone: TONES[i]!,
        })),
      ]),
      keptName(frame, kept ? `kept: ${placeWords(rule, kept.x)}` : "", kept?.x, now.x),
      headWords(frame, rangeHead(model, frame)),
    ],
  };
}

function errorPanel(model: AtlasModel, frame: Frame, narrow: boolean): Panel {
  const { rule, now, kept, curves, ghosts, range, tolerance } = model;
  return {
    frame,
    layers: [
      { kind: "area", look: "band", y1: [-tolerance], y2: [tolerance] },
      ...axisLayers(frame, 0),
      { kind: "level", look: "band-edge", y: [-tolerance, tolerance] },
      ...outsideLayers(frame, ...range),
      ...rule.lines.map((_, i) => beyondTolerance(curves[i]!, model, `over ${TONES[i]}`)),
      safeEdge(model, frame),
      { kind: "upright", look: "kept-line", x: kept ? [kept.x] : [] },
      ...rule.lines.map((_, i) => lineThrough("curve ghost", ghosts[i]?.x ?? [], ghosts[i]?.error ?? [])),
      ...rule.lines.map((_, i) => lineThrough(`curve ${TONES[i]}`, curves[i]!.x, curves[i]!.error)),
      { kind: "upright", look: "cursor", x: [now.x], above: 4 },
      ...rule.lines.map((_, i): Layer => {
        const shown = now.lines[i];
        const at = shown ? { x: [now.x], y: [shown.error] } : { x: [], y: [] };
        return { kind: "dot", look: `dot ${TONES[i]}`, ...at, r: 4.5 };
      }),
      ...endNames(
        frame,
        rule.lines.map(({ words }, i) => ({
          at: curves[i]!.error.at(-1) ?? 0,
          words: curves[i]!.x.length > 0 ? words[narrow ? 1 : 0] : "",
          tone: TONES[i]!,
        })),
      ),
      ...sideNames(model, frame),
      headWords(frame, `band: within ${toleranceWords(rule, now.values)}`),
    ],
  };
}

/** The ground between the curve and its tolerance, within the range that is judged; nothing where the error is within. */
function beyondTolerance({ x, error }: Curve, { range: [from, to], tolerance }: AtlasModel, look: string): Layer {
  const rows = x.map((_, i) => i).filter((i) => x[i]! >= from && x[i]! <= to);
  const y2 = rows.map((i) => error[i]!);
  return {
    kind: "fill",
    look,
    x: rows.map((i) => x[i]!),
    y1: y2.map((value) => Math.max(-tolerance, Math.min(tolerance, value))),
    y2,
  };
}

/** A stout edge along the safe half, px wide. */
const EDGE = 5;

function safeEdge({ rule }: AtlasModel, { across: { from, to }, up, left, right }: Frame): Layer {
  const end = from + (EDGE * (to - from)) / (right - left);
  const half = rule.safe === "over" ? [0, up.to] : rule.safe === "under" ? [up.from, 0] : undefined;
  return {
    kind: "area",
    look: "safe",
    x1: half ? [from] : [],
    x2: half ? [end] : [],
    y1: half ? [half[0]!] : [],
    y2: half ? [half[1]!] : [],
  };
}

/** What is judged and whose it is, where the axis goes beyond it and the words have room beside the axis's name. */
function rangeHead({ rule, range, title }: AtlasModel, { across: { from, to }, up, right }: Frame): string {
  if (range[0] <= from && range[1] >= to) return "";
  const words = `${rule.across.limits ? title : "judged"}: ${spanWords(rule, ...range).replace("from ", "")}`;
  return widthOf(up.name, 13) + widthOf(words, 13) + 12 < right ? words : "";
}
