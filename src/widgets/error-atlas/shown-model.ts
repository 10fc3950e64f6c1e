import type { Facts } from "../../cells/known.ts";
import { toleranceOf } from "./answer.ts";
import { axisOver } from "./axes.ts";
import { type Compared, type Curve, compared, curveOf, type Judged, judged, needsOf } from "./model.ts";
import type { AtlasRule, Range, Values } from "./rule.ts";

/** A rule's figure at one moment. */
export interface AtlasModel {
  readonly rule: AtlasRule;
  readonly now: Moment;
  readonly kept: Moment | undefined;
  /** The range that is judged, and the ends of the axes: along, of the values, of the errors. */
  readonly range: Range;
  readonly axes: { readonly across: Range; readonly value: Range; readonly error: Range };
  readonly tolerance: number;
  readonly lines: readonly Judged[];
  readonly curves: readonly Curve[];
  /** The kept curves, where they differ from the present ones. */
  readonly ghosts: readonly Curve[];
  /** Whose range it is. */
  readonly title: string;
}

/** The reader's numbers and what each line comes to at them. */
export interface Moment {
  readonly values: Values;
  readonly x: number;
  readonly lines: readonly (Compared | undefined)[];
}

/** Curves and judgements that are made once for the same numbers, whatever the present place along the axis. */
interface Drawn {
  readonly lines: readonly Judged[];
  readonly curves: readonly Curve[];
}

/** The model of a rule's figure; it makes again only what differs from the last time. */
export function modelOf(rule: AtlasRule): (values: Values, kept: Values | undefined, aircraft: Facts) => AtlasModel {
  const [drawn, drawnKept] = [remembering(rule), remembering(rule)];
  return (values, kept, aircraft) => {
    const [now, before] = [momentOf(rule, values), kept && momentOf(rule, kept)];
    const range = rule.across.range(aircraft);
    const across = acrossEnds(rule, range, [now.x, ...(before ? [before.x] : [])]);
    const { lines, curves } = drawn(values, range, across);
    const ghosts = before && differ(rule, values, before.values) ? drawnKept(before.values, range, across).curves : [];
    const tolerance = toleranceOf(rule, values);
    const all = [...curves, ...ghosts];
    const errors = all.flatMap(({ error }) => error);
    return {
      rule,
      now,
      kept: before,
      range,
      axes: {
        across,
        value: valueAxis(all),
        error: axisOver(Math.min(-1.15 * tolerance, ...errors), Math.max(1.15 * tolerance, ...errors)),
      },
      tolerance,
      lines,
      curves,
      ghosts,
      title: aircraft.title,
    };
  };
}

function momentOf(rule: AtlasRule, values: Values): Moment {
  return {
    values,
    x: values[needsOf(rule).across]!,
    lines: rule.lines.map((line) => compared(rule, line, values)),
  };
}

/** The range as it stands; rounded outwards where its ends are the aircraft's limits, or to hold a place beyond it. */
function acrossEnds(rule: AtlasRule, range: Range, places: readonly number[]): Range {
  const [low, high] = [Math.min(range[0], ...places), Math.max(range[1], ...places)];
  const rounded = axisOver(low, high, rule.holds[needsOf(rule).across]);
  const keeps = (end: 0 | 1, is: number): boolean => is === range[end] && !rule.across.limits;
  return [keeps(0, low) ? low : rounded[0], keeps(1, high) ? high : rounded[1]];
}

/** From nought where nothing is negative and nought isn't far away. */
function valueAxis(curves: readonly Curve[]): Range {
  const values = curves.flatMap(({ exact, rule }) => [...exact, ...rule]);
  if (values.length === 0) return [0, 1];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return axisOver(low >= 0 && low < high / 2 ? 0 : low, high);
}

/** Whether two states differ in more than where they stand along the axis and in their tolerance. */
function differ(rule: AtlasRule, one: Values, other: Values): boolean {
  const { across, tolerance } = needsOf(rule);
  return Object.keys(one).some((need) => need !== across && need !== tolerance && one[need] !== other[need]);
}

function remembering(rule: AtlasRule): (values: Values, range: Range, across: Range) => Drawn {
  const need = needsOf(rule).across;
  let last = "";
  let drawn: Drawn = { lines: [], curves: [] };
  return (values, range, across) => {
    const key = JSON.stringify([{ ...values, [need]: 0 }, range, across]);
    if (key !== last) {
      const lines = rule.lines.map((line) => judged(rule, line, values, range, toleranceOf(rule, values)));
      const curves = lines.map(({ stretches, greatest }, i) => {
        const at = [...stretches.flatMap(({ from, to }) => [from, to]), ...(greatest ? [greatest.x] : [])];
        return curveOf(rule, rule.lines[i]!, values, across, at);
      });
      [last, drawn] = [key, { lines, curves }];
    }
    return drawn;
  };
}
