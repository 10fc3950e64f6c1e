import { TURN_RATE, TURNS, type Turns, WIND_FROM, WIND_SPEED } from "../bounds.ts";
import {
  DRIFT_MULTIPLE,
  holdEntry,
  holdOutbound,
  holdOutboundByRule,
  INBOUND_COURSE,
  INBOUND_TIME,
} from "../holding.ts";
import { HEADING, TRUE_AIRSPEED } from "../ranges.ts";
import { argument } from "./argument.ts";
import type { Argument, Formula } from "./formula.ts";
import { entrySteps, outboundSteps, ruleSteps } from "./holding-steps.ts";

const inbound = argument(INBOUND_COURSE, { name: "inbound", symbol: "\\chi", example: 90 });
const turns: Argument = {
  name: "turns",
  words: "way of turning",
  symbol: "s",
  unit: "word",
  options: TURNS,
  example: "right",
};
const pattern: readonly Argument[] = [
  inbound,
  argument(TRUE_AIRSPEED, { name: "tas", symbol: "V", example: 90 }),
  argument(WIND_FROM, { name: "windFrom", symbol: "\\delta", example: 140 }),
  argument(WIND_SPEED, { name: "windSpeed", symbol: "W", example: 15 }),
  argument(INBOUND_TIME, { name: "inboundTime", symbol: "t_i", example: 60 }),
  turns,
  argument(TURN_RATE, { name: "rate", symbol: "\\omega", example: 3 }),
];

export const holding: readonly Formula[] = [
  {
    name: "holdEntry",
    topic: "holding",
    words: "entry into a holding pattern",
    symbol: "E",
    args: [inbound, argument(HEADING, { name: "heading", symbol: "\\psi", example: 300 }), turns],
    result: { unit: "word", options: ["direct", "parallel", "offset"] },
    digits: 0,
    tex: "\\begin{cases}\\text{direct} & 290^\\circ \\le \\psi - \\chi \\le 360^\\circ,\\ 0 \\le \\psi - \\chi \\le 110^\\circ\\\\ \\text{offset} & 110^\\circ < \\psi - \\chi \\le 180^\\circ\\\\ \\text{parallel} & 180^\\circ < \\psi - \\chi < 290^\\circ\\end{cases}",
    call: holdEntry,
    steps: entrySteps,
    kind: "exact",
    assumes:
      "Right-hand pattern; a left-hand one mirrors it with χ − ψ. By heading, not by bearing. Authorities allow some degrees either side of a boundary.",
    source: "ICAO Doc 8168 and FAA AIM: sectors of 180°, 70° and 110°",
  },
  {
    name: "holdOutbound",
    topic: "holding",
    words: "outbound heading and time that close a holding pattern",
    symbol: "t",
    args: pattern,
    result: {
      fields: { heading: { unit: "deg", circle: true }, time: { unit: "s" }, timeFromAbeam: { unit: "s" } },
      nullable: true,
    },
    digits: 0,
    tex: "\\frac{\\sqrt{(\\mathbf D\\cdot\\mathbf w)^2 + (V^2 - W^2)\\,D^2} - \\mathbf D\\cdot\\mathbf w}{V^2 - W^2},\\quad \\mathbf D = -G\\,t_i\\,\\mathbf c - \\mathbf w\\,\\tfrac{360^\\circ}{\\omega}",
    call: (
      inboundCourse: number,
      tas: number,
      windFrom: number,
      windSpeed: number,
      inboundTime: number,
      way: Turns,
      rate: number,
    ) => holdOutbound({ inbound: inboundCourse, tas, windFrom, windSpeed, inboundTime, turns: way, rate }),
    steps: outboundSteps,
    kind: "exact",
    assumes:
      "Both turns at one constant rate, without roll-in. Time runs from wings level outbound, or from abeam the fix. Where a headwind carries the turns as far as the inbound leg, the outbound leg points upwind: no pattern to fly.",
    source: "a closed path: two turns that make a circle in the air, two legs",
  },
  {
    name: "holdOutboundByRule",
    topic: "holding",
    words: "outbound heading and time by rule of thumb",
    symbol: "t",
    args: [...pattern, argument(DRIFT_MULTIPLE, { name: "driftMultiple", symbol: "m", default: 3, example: 3 })],
    result: { fields: { heading: { unit: "deg", circle: true }, time: { unit: "s" } }, nullable: true },
    digits: 0,
    tex: "t_i - W_h,\\quad \\psi = \\chi + 180^\\circ - m\\,c",
    call: (
      inboundCourse: number,
      tas: number,
      windFrom: number,
      windSpeed: number,
      inboundTime: number,
      way: Turns,
      rate: number,
      driftMultiple?: number,
    ) =>
      holdOutboundByRule({
        ...{ inbound: inboundCourse, tas, windFrom, windSpeed, inboundTime, turns: way, rate },
        ...(driftMultiple === undefined ? {} : { driftMultiple }),
      }),
    steps: ruleSteps,
    kind: "rule",
    standsFor: "holdOutbound",
    assumes:
      "Time runs from over or abeam the fix, whichever is later. A multiple of the inbound correction c, to the other side; a second for each knot of inbound headwind. Some teach other multiples.",
    source: "FAA AIM for three times the correction; the timing is custom",
  },
];
