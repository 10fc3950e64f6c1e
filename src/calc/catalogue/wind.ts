import { COURSE, TURN_RATE, WIND_FROM, WIND_SPEED } from "../bounds.ts";
import { HEADING, HEADING_CHANGE, TRUE_AIRSPEED } from "../ranges.ts";
import { maximumDrift, maximumDriftByRule, trackMadeGood, turnInWind, windComponents, windTriangle } from "../wind.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";
import { plain } from "./printed.ts";
import { componentSteps, trackSteps, triangleSteps, turnSteps } from "./wind-steps.ts";

const course = argument(COURSE, { name: "course", symbol: "\\chi", example: 90 });
const heading = argument(HEADING, { name: "heading", symbol: "\\psi", example: 90 });
const tas = argument(TRUE_AIRSPEED, { name: "tas", symbol: "V", example: 95 });
const windFrom = argument(WIND_FROM, { name: "windFrom", symbol: "\\delta", example: 140 });
const windSpeed = argument(WIND_SPEED, { name: "windSpeed", symbol: "W", example: 20 });
const steady = "A steady wind; all directions from one north.";

export const wind: readonly Formula[] = [
  {
    name: "windTriangle",
    topic: "wind",
    words: "heading and ground speed for a course",
    symbol: "\\psi",
    args: [course, tas, windFrom, windSpeed],
    result: {
      fields: { heading: { unit: "deg", circle: true }, groundSpeed: { unit: "kt" }, correction: { unit: "deg" } },
      nullable: true,
    },
    digits: 1,
    tex: "\\chi + \\arcsin\\frac{W\\sin(\\delta - \\chi)}{V}",
    call: windTriangle,
    steps: triangleSteps,
    kind: "exact",
    assumes: `${steady} Correction is heading minus course, right positive; no answer where the wind is too strong.`,
    source: "triangle of velocities",
  },
  {
    name: "trackMadeGood",
    topic: "wind",
    words: "track and ground speed from a heading",
    symbol: "\\chi",
    args: [heading, tas, windFrom, windSpeed],
    result: { fields: { track: { unit: "deg", circle: true }, groundSpeed: { unit: "kt" } } },
    digits: 1,
    tex: "\\operatorname{atan2}(V\\sin\\psi - W\\sin\\delta,\\ V\\cos\\psi - W\\cos\\delta)",
    call: trackMadeGood,
    steps: trackSteps,
    kind: "exact",
    assumes: steady,
    source: "sum of the velocity through the air and that of the air",
  },
  {
    name: "windComponents",
    topic: "wind",
    words: "headwind and crosswind",
    symbol: "W_h",
    args: [course, windFrom, windSpeed],
    result: { fields: { headwind: { unit: "kt" }, crosswind: { unit: "kt" } } },
    digits: 1,
    tex: "W\\cos(\\delta - \\chi),\\quad W_c = W\\sin(\\delta - \\chi)",
    call: windComponents,
    steps: componentSteps,
    kind: "exact",
    assumes: `${steady} A tailwind is a negative headwind; crosswind from the right is positive.`,
    source: "resolution of a vector",
  },
  {
    name: "maximumDrift",
    topic: "wind",
    words: "greatest drift",
    symbol: "\\varepsilon",
    args: [tas, windSpeed],
    result: { unit: "deg", nullable: true },
    digits: 1,
    tex: "\\arcsin\\frac{W}{V}",
    call: maximumDrift,
    steps: (airspeed: number, speed: number) => [
      {
        what: "Greatest drift",
        symbol: "\\varepsilon",
        tex: "\\arcsin\\frac{W}{V}",
        numbers: `arcsin (${plain(speed)} / ${plain(airspeed)})`,
      },
    ],
    kind: "exact",
    assumes: "Course held with the wind square to it; no answer where the wind is stronger than the true airspeed.",
    source: "triangle of velocities",
  },
  {
    name: "maximumDriftByRule",
    topic: "wind",
    words: "greatest drift by rule of thumb",
    symbol: "\\varepsilon",
    args: [tas, windSpeed],
    result: { unit: "deg" },
    digits: 1,
    tex: "\\frac{60\\,W}{V}",
    call: maximumDriftByRule,
    steps: (airspeed: number, speed: number) => [
      {
        what: "Greatest drift",
        symbol: "\\varepsilon",
        tex: "\\frac{60\\,W}{V}",
        numbers: `60 × ${plain(speed)} / ${plain(airspeed)}`,
      },
    ],
    kind: "rule",
    standsFor: "maximumDrift",
    assumes: "A radian taken for 60°, an angle for its sine: too small in a strong wind.",
    source: "one in sixty",
  },
  {
    name: "turnInWind",
    topic: "wind",
    words: "displacement in a turn in wind",
    symbol: "s",
    args: [
      heading,
      argument(HEADING_CHANGE, { name: "headingChange", symbol: "\\Delta\\psi", example: 180 }),
      tas,
      argument(TURN_RATE, { name: "rate", symbol: "\\omega", example: 3 }),
      windFrom,
      windSpeed,
    ],
    result: { fields: { north: { unit: "NM" }, east: { unit: "NM" }, time: { unit: "s" } } },
    digits: 2,
    tex: "\\pm\\frac{V}{\\omega}\\binom{\\sin\\psi_2 - \\sin\\psi}{\\cos\\psi - \\cos\\psi_2} - W\\,t\\binom{\\cos\\delta}{\\sin\\delta},\\quad \\psi_2 = \\psi + \\Delta\\psi,\\quad t = \\left|\\frac{\\Delta\\psi}{\\omega}\\right|",
    call: turnInWind,
    steps: turnSteps,
    kind: "exact",
    assumes: `${steady} Constant rate without roll-in and roll-out. Plus turning right, minus turning left.`,
    source: "an arc in the air, carried by the wind",
  },
];
