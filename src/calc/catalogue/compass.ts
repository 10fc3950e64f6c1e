import { TURN_RATE, TURNS } from "../bounds.ts";
import {
  ACCELERATION,
  COMPASS_HEADING,
  compassAccelerating,
  compassHeading,
  compassInTurn,
  DEVIATION,
  DIP,
  LATITUDE,
  MAGNETIC_LATITUDE,
  magneticDip,
  ROLL_OUT_LEAD,
  rollOutHeadingByRule,
  rollOutReading,
  TARGET,
  TRUE_HEADING,
  timedTurn,
  trueHeading,
  VARIATION,
} from "../compass.ts";
import { BANK, HEADING, HEADING_CHANGE } from "../ranges.ts";
import { argument } from "./argument.ts";
import { acceleratingSteps, rollOutSteps, ruleSteps, turningSteps } from "./compass-steps.ts";
import type { Argument, Formula } from "./formula.ts";
import { plain } from "./printed.ts";
import { given, ontoCircle, size } from "./signs.ts";

const heading = argument(HEADING, { name: "heading", symbol: "H", example: 30 });
const dip = argument(DIP, { name: "dip", symbol: "I", example: 66 });
const deviation = argument(DEVIATION, { name: "deviation", symbol: "d", example: 2 });
const variation = argument(VARIATION, { name: "variation", symbol: "v", example: -5 });
const bank = argument(BANK, { name: "bank", symbol: "\\varphi", example: 15 });
const target = argument(TARGET, { name: "target", symbol: "H", example: 30 });
const lead = argument(ROLL_OUT_LEAD, { name: "lead", symbol: "l", example: 7 });
const turn: Argument = {
  name: "turn",
  words: "way of turning",
  symbol: "s",
  unit: "word",
  options: TURNS,
  example: "right",
};
const staticCard =
  "A card that has settled square to the aeroplane's own vertical. A real card swirls, overshoots and lags; the errors reverse where the dip is negative and vanish where it is zero.";

export const compass: readonly Formula[] = [
  {
    name: "magneticDip",
    topic: "compass",
    words: "magnetic dip",
    symbol: "I",
    args: [argument(MAGNETIC_LATITUDE, { name: "magneticLatitude", symbol: "\\lambda", example: 50 })],
    result: { unit: "deg" },
    digits: 0,
    tex: "\\arctan(2\\tan\\lambda)",
    call: magneticDip,
    steps: (latitude: number) => [
      {
        what: "Dip",
        symbol: "I",
        tex: "\\arctan(2\\tan\\lambda)",
        numbers: `arctan (2 × tan ${given(latitude)}°)`,
      },
    ],
    kind: "model",
    assumes: "The Earth's field as that of a dipole, by magnetic latitude; a chart of dip is better.",
    source: "field of a dipole",
  },
  {
    name: "compassInTurn",
    topic: "compass",
    words: "compass reading in a turn",
    symbol: "C",
    args: [heading, dip, bank],
    result: { unit: "deg", circle: true },
    digits: 0,
    tex: "\\operatorname{atan2}(\\sin H\\cos\\varphi - \\tan I\\sin\\varphi,\\ \\cos H)",
    call: compassInTurn,
    steps: turningSteps,
    kind: "model",
    assumes: `${staticCard} Bank under 90° less the dip.`,
    source: "the Earth's field resolved along the tilted card",
  },
  {
    name: "compassAccelerating",
    topic: "compass",
    words: "compass reading while speed changes",
    symbol: "C",
    args: [
      argument(HEADING, { name: "heading", symbol: "H", example: 90 }),
      argument(DIP, { name: "dip", symbol: "I", example: 60 }),
      argument(ACCELERATION, { name: "acceleration", symbol: "a", example: 1 }),
    ],
    result: { unit: "deg", circle: true },
    digits: 0,
    tex: "\\operatorname{atan2}(\\sin H,\\ \\cos H\\cos\\theta + \\tan I\\sin\\theta),\\quad \\theta = \\arctan\\frac{a}{g}",
    call: compassAccelerating,
    steps: acceleratingSteps,
    kind: "model",
    assumes: `${staticCard} Wings level; slowing is a negative acceleration.`,
    source: "the Earth's field resolved along the tilted card",
  },
  {
    name: "rollOutReading",
    topic: "compass",
    words: "compass reading at which to roll out",
    symbol: "C",
    args: [target, turn, dip, bank, lead],
    result: { unit: "deg", circle: true },
    digits: 0,
    tex: "\\operatorname{atan2}(\\sin H'\\cos\\varphi \\mp \\tan I\\sin|\\varphi|,\\ \\cos H'),\\quad H' = H \\mp l",
    call: rollOutReading,
    steps: rollOutSteps,
    kind: "model",
    assumes: `${staticCard} Upper signs turning right, lower ones left.`,
    source: "compassInTurn on the heading that is the lead short of the target",
  },
  {
    name: "rollOutHeadingByRule",
    topic: "compass",
    words: "compass reading at which to roll out, by rule of thumb",
    symbol: "C",
    args: [target, turn, argument(LATITUDE, { name: "latitude", symbol: "\\lambda", example: 52 }), lead],
    result: { unit: "deg", circle: true },
    digits: 0,
    tex: "H \\mp (\\lambda\\cos H + l)",
    call: rollOutHeadingByRule,
    steps: ruleSteps,
    kind: "rule",
    standsFor: "rollOutReading",
    assumes:
      "Minus turning right, plus turning left; south latitude is negative. Taught for 15 to 18° of bank: the latitude still to go on to north, past on to south, nothing on east and west; in the south the other way round.",
    source: "FAA-H-8083-15B, compass turns",
  },
  {
    name: "trueHeading",
    topic: "compass",
    words: "true heading from the compass",
    symbol: "H_T",
    args: [argument(COMPASS_HEADING, { name: "compass", symbol: "H_C", example: 270 }), deviation, variation],
    result: { unit: "deg", circle: true },
    digits: 0,
    tex: "H_C + d + v",
    call: trueHeading,
    steps: (compassReading: number, east: number, variationEast: number) => [
      {
        what: "True heading",
        symbol: "H_T",
        tex: "H_C + d + v",
        numbers: `${plain(compassReading)} + ${given(east)} + ${given(variationEast)}${ontoCircle(compassReading + east + variationEast, trueHeading(compassReading, east, variationEast))}`,
      },
    ],
    kind: "exact",
    assumes: "East deviation and variation are positive.",
    source: "definition of deviation and variation",
  },
  {
    name: "compassHeading",
    topic: "compass",
    words: "compass heading for a true heading",
    symbol: "H_C",
    args: [argument(TRUE_HEADING, { name: "trueHeading", symbol: "H_T", example: 270 }), deviation, variation],
    result: { unit: "deg", circle: true },
    digits: 0,
    tex: "H_T - d - v",
    call: compassHeading,
    steps: (wanted: number, east: number, variationEast: number) => [
      {
        what: "Compass heading",
        symbol: "H_C",
        tex: "H_T - d - v",
        numbers: `${plain(wanted)} − ${given(east)} − ${given(variationEast)}${ontoCircle(wanted - east - variationEast, compassHeading(wanted, east, variationEast))}`,
      },
    ],
    kind: "exact",
    assumes: "East deviation and variation are positive.",
    source: "definition of deviation and variation",
  },
  {
    name: "timedTurn",
    topic: "compass",
    words: "time of a turn by the clock",
    symbol: "t",
    args: [
      argument(HEADING_CHANGE, { name: "headingChange", symbol: "\\Delta\\psi", example: 90 }),
      argument(TURN_RATE, { name: "rate", symbol: "\\omega", default: 3, example: 3 }),
    ],
    result: { unit: "s" },
    digits: 0,
    tex: "\\frac{|\\Delta\\psi|}{|\\omega|}",
    call: timedTurn,
    steps: (headingChange: number, rate: number) => [
      {
        what: "Time",
        symbol: "t",
        tex: "\\frac{|\\Delta\\psi|}{|\\omega|}",
        numbers: `${size(headingChange)} / ${size(rate)}`,
      },
    ],
    kind: "exact",
    assumes: "From the start of the roll-in to the start of a roll-out as quick, at the same rate throughout.",
    source: "kinematics at a constant rate",
  },
];
