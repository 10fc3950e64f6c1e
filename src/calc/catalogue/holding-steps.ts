import type { Turns } from "../bounds.ts";
import { holdOutbound, holdOutboundByRule } from "../holding.ts";
import { onCircle } from "../si.ts";
import { windComponents, windTriangle } from "../wind.ts";
import type { Step } from "./formula.ts";
import { plain, term } from "./printed.ts";
import { direction, figures, given, ontoCircle, size } from "./signs.ts";

export function entrySteps(inbound: number, heading: number, turns: Turns): Step[] {
  const right = turns === "right";
  const angle = right ? heading - inbound : inbound - heading;
  const circle = onCircle(angle);
  const [from, to] = right ? [heading, inbound] : [inbound, heading];
  return [
    {
      what: right ? "Heading, right of the inbound course" : "Heading, left of the inbound course",
      symbol: "\\alpha",
      tex: right ? "\\psi - \\chi" : "\\chi - \\psi",
      numbers: `${plain(from)} − ${given(to)}${ontoCircle(angle, circle)}`,
      comes: `${plain(circle)}°`,
    },
    { what: "Sector", symbol: "E", numbers: `${plain(circle)}° among 290 to 110°, 110 to 180°, 180 to 290°` },
  ];
}

/** Wind and inbound leg as the workings of a hold need them; null where the inbound course cannot be held. */
function inboundLeg(inbound: number, tas: number, windFrom: number, windSpeed: number) {
  const triangle = windTriangle(inbound, tas, windFrom, windSpeed);
  const { headwind, crosswind } = windComponents(inbound, windFrom, windSpeed);
  const c = triangle && figures(triangle.correction, 5);
  const correction: Step = {
    what: "Correction inbound",
    symbol: "c",
    tex: "\\arcsin\\frac{W_c}{V}",
    numbers: `arcsin (${figures(crosswind, 5)} / ${plain(tas)})`,
  };
  return { triangle, headwind, crosswind, correction: c === null ? correction : { ...correction, comes: `${c}°` } };
}

export function outboundSteps(
  inbound: number,
  tas: number,
  windFrom: number,
  windSpeed: number,
  inboundTime: number,
  turns: Turns,
  rate: number,
): Step[] {
  const out = holdOutbound({ inbound, tas, windFrom, windSpeed, inboundTime, turns, rate });
  const { triangle, headwind, crosswind, correction } = inboundLeg(inbound, tas, windFrom, windSpeed);
  if (triangle === null || out === null) return [];
  const turning = 360 / Math.abs(rate);
  const [D_a, D_c] = [headwind * turning - triangle.groundSpeed * inboundTime, crosswind * turning];
  const n: Closing = {
    ...{ V: plain(tas), W: plain(windSpeed), c: term(figures(triangle.correction, 5)) },
    ...{ W_h: term(figures(headwind, 5)), W_c: term(figures(crosswind, 5)) },
    ...{ G: figures(triangle.groundSpeed, 5), T: figures(turning, 5), t: figures(out.time, 5) },
    ...{ t_i: plain(inboundTime), ω: size(rate), D_a: figures(D_a, 6), D_c: figures(D_c, 6) },
    D_w: figures(-D_a * headwind - D_c * crosswind, 6),
    a: figures(D_a + headwind * out.time, 5),
    b: figures(D_c + crosswind * out.time, 5),
  };
  const turned = ontoCircle(inbound + onCircle(out.heading - inbound), out.heading);
  return [correction, ...driftRows(n), ...legRows(n), outboundHeadingRow(plain(inbound), n, turned, out.heading)];
}

/** The numbers of a closing pattern as printed, by their letters; speeds in kt, times in s, D, a and b in kt × s. */
type Closing = Readonly<
  Record<"V" | "W" | "c" | "W_h" | "W_c" | "G" | "T" | "t" | "t_i" | "ω" | "D_a" | "D_c" | "D_w" | "a" | "b", string>
>;

function driftRows({ V, c, W_h, W_c, G, T, t_i, ω, D_a, D_c }: Closing): Step[] {
  return [
    row("Ground speed inbound", "G", "V\\cos c - W_h", `${V} × cos ${c}° − ${W_h}`, `${G} kt`),
    row("Both turns", "T", "\\frac{360^\\circ}{\\omega}", `360 / ${ω}`, `${T} s`),
    row("To undo, along the inbound course (kt × s)", "D_a", "W_h\\,T - G\\,t_i", `${W_h} × ${T} − ${G} × ${t_i}`, D_a),
    row("To undo, across it to the right (kt × s)", "D_c", "W_c\\,T", `${W_c} × ${T}`, D_c),
  ];
}

function legRows({ V, W, W_h, W_c, t, D_a, D_c, D_w, a, b }: Closing): Step[] {
  const [A, C, D] = [D_a, D_c, D_w].map(term);
  return [
    row("Along the wind, times its speed", "D_w", "-D_a W_h - D_c W_c", `−${A} × ${W_h} − ${C} × ${W_c}`, D_w),
    row(
      "Time from wings level",
      "t",
      "\\frac{\\sqrt{D_w^2 + (V^2 - W^2)(D_a^2 + D_c^2)} - D_w}{V^2 - W^2}",
      `(√(${D}² + (${V}² − ${W}²) × (${A}² + ${C}²)) − ${D}) / (${V}² − ${W}²)`,
      `${t} s`,
    ),
    row("Through the air, along (kt × s)", "a", "D_a + W_h\\,t", `${D_a} + ${W_h} × ${t}`, a),
    row("Through the air, across (kt × s)", "b", "D_c + W_c\\,t", `${D_c} + ${W_c} × ${t}`, b),
  ];
}

function outboundHeadingRow(inbound: string, { a, b }: Closing, turned: string, heading: number): Step {
  const numbers = `${inbound} + ${direction(a, b)}${turned} = ${figures(heading, 4)}°`;
  return { what: "Heading outbound", symbol: "\\psi", tex: "\\chi + \\operatorname{atan2}(b, a)", numbers };
}

const row = (what: string, symbol: string, tex: string, numbers: string, comes: string): Step => ({
  ...{ what, symbol, tex, numbers, comes },
});

export function ruleSteps(
  inbound: number,
  tas: number,
  windFrom: number,
  windSpeed: number,
  inboundTime: number,
  turns: Turns,
  rate: number,
  driftMultiple: number,
): Step[] {
  const { triangle, headwind, correction } = inboundLeg(inbound, tas, windFrom, windSpeed);
  const hold = { inbound, tas, windFrom, windSpeed, inboundTime, turns, rate, driftMultiple };
  const out = holdOutboundByRule(hold);
  if (triangle === null || out === null) return [];
  const c = term(figures(triangle.correction, 5));
  const unwrapped = inbound + 180 - driftMultiple * triangle.correction;
  return [
    correction,
    {
      what: "Heading outbound",
      symbol: "\\psi",
      tex: "\\chi + 180^\\circ - m\\,c",
      numbers: `${plain(inbound)} + 180 − ${plain(driftMultiple)} × ${c}${ontoCircle(unwrapped, out.heading)}`,
      comes: `${figures(out.heading, 4)}°`,
    },
    {
      what: headwind > inboundTime ? "Time, none left" : "Time from over or abeam",
      symbol: "t",
      tex: "t_i - W_h",
      numbers:
        headwind > inboundTime
          ? `0 = ${figures(out.time, 4)} s`
          : `${plain(inboundTime)} − ${term(figures(headwind, 5))} = ${figures(out.time, 4)} s`,
    },
  ];
}
