import { GROUND_SPEED, HEIGHT, TRUE_AIRSPEED, VERTICAL_SPEED } from "../ranges.ts";
import {
  angleForVerticalSpeed,
  descentDistance,
  descentDistanceByRule,
  feetPerMile,
  heightError,
  lookInterval,
  MOVING,
  PATH,
  PITCH_CHANGE,
  PITCH_ERROR,
  TIME,
  TOLERANCE,
  VERTICAL_SPEED_ERROR,
  verticalSpeedByRule,
  verticalSpeedForAngle,
  verticalSpeedFromPitch,
} from "../vertical.ts";
import { argument } from "./argument.ts";
import type { Formula, Step } from "./formula.ts";
import { plain, significant, term } from "./printed.ts";
import { uncompensatedBank } from "./uncompensated-bank.ts";

const tas = argument(TRUE_AIRSPEED, { name: "tas", symbol: "V", example: 90 });
const groundSpeed = argument(GROUND_SPEED, { name: "groundSpeed", symbol: "V_g", example: 90 });
const angle = argument(PATH, { name: "angle", symbol: "\\gamma", example: 3 });
const height = argument(HEIGHT, { name: "height", symbol: "h", example: 3000 });
const size = (value: number) => plain(Math.abs(value));
const overGround = "A straight path over the ground, sea-level miles.";
const tangent = "tangent of the path angle; 1 NM = 6076.1 ft";
const trade = "rule of the trade";

const gradientStep = (degrees: number): Step => ({
  what: "Gradient",
  symbol: "G",
  tex: "6076.1\\tan\\gamma",
  numbers: `6076.1 × tan ${size(degrees)}°`,
  comes: `${significant(feetPerMile(degrees), 5)} ft/NM`,
});

const speedInFeet = (knots: number): Step => ({
  what: "True airspeed",
  symbol: "V",
  numbers: `${plain(knots)} × 101.27`,
  comes: `${significant(knots * 101.2686, 5)} ft/min`,
});

export const vertical: readonly Formula[] = [
  {
    name: "feetPerMile",
    topic: "vertical",
    words: "gradient of a path",
    symbol: "G",
    args: [angle],
    result: { unit: "ft/NM" },
    digits: 0,
    tex: "6076.1\\,|\\tan\\gamma|",
    call: feetPerMile,
    steps: (degrees: number) => [
      { what: "Gradient", symbol: "G", tex: "6076.1\\tan\\gamma", numbers: `6076.1 × tan ${size(degrees)}°` },
    ],
    kind: "exact",
    assumes: overGround,
    source: tangent,
  },
  {
    name: "verticalSpeedForAngle",
    topic: "vertical",
    words: "vertical speed for a path",
    symbol: "w",
    args: [groundSpeed, angle],
    result: { unit: "ft/min" },
    digits: 0,
    tex: "V_g\\,|\\tan\\gamma|",
    call: verticalSpeedForAngle,
    steps: (knots: number, degrees: number) => [
      gradientStep(degrees),
      {
        what: "Vertical speed",
        symbol: "w",
        tex: "\\frac{V_g}{60}\\,G",
        numbers: `${plain(knots)} / 60 × ${significant(feetPerMile(degrees), 5)}`,
      },
    ],
    kind: "exact",
    assumes: `${overGround} Ground speed, not airspeed.`,
    source: tangent,
  },
  {
    name: "angleForVerticalSpeed",
    topic: "vertical",
    words: "path that a vertical speed makes",
    symbol: "\\gamma",
    args: [
      argument(MOVING, { name: "groundSpeed", symbol: "V_g", example: 90 }),
      argument(VERTICAL_SPEED, { name: "verticalSpeed", symbol: "w", example: -500 }),
    ],
    result: { unit: "deg" },
    digits: 1,
    tex: "\\arctan\\frac{|w|}{V_g}",
    call: angleForVerticalSpeed,
    steps: (knots: number, feetPerMinute: number) => [
      {
        what: "Ground speed",
        symbol: "V_g",
        numbers: `${plain(knots)} × 101.27`,
        comes: `${significant(knots * 101.2686, 5)} ft/min`,
      },
      {
        what: "Path angle",
        symbol: "\\gamma",
        tex: "\\arctan\\frac{|w|}{V_g}",
        numbers: `arctan(${size(feetPerMinute)} / ${significant(knots * 101.2686, 5)})`,
      },
    ],
    kind: "exact",
    assumes: overGround,
    source: tangent,
  },
  {
    name: "verticalSpeedByRule",
    topic: "vertical",
    words: "vertical speed for 3° by rule of thumb",
    symbol: "w",
    args: [groundSpeed],
    result: { unit: "ft/min" },
    digits: 0,
    tex: "5\\,V_g",
    call: verticalSpeedByRule,
    steps: (knots: number) => [{ what: "Vertical speed", symbol: "w", tex: "5\\,V_g", numbers: `5 × ${plain(knots)}` }],
    kind: "rule",
    standsFor: "verticalSpeedForAngle",
    assumes: "Feet per minute from ground speed in knots, for 3°; the exact factor is 5.31.",
    source: trade,
  },
  {
    name: "descentDistance",
    topic: "vertical",
    words: "distance of a descent",
    symbol: "d",
    args: [height, { ...angle, default: 3 }],
    result: { unit: "NM" },
    digits: 1,
    tex: "\\frac{h}{|\\tan\\gamma|}",
    call: descentDistance,
    steps: (feet: number, degrees: number) => [
      gradientStep(degrees),
      {
        what: "Distance",
        symbol: "d",
        tex: "\\frac{h}{G}",
        numbers: `${plain(feet)} / ${significant(feetPerMile(degrees), 5)}`,
      },
    ],
    kind: "exact",
    assumes: `${overGround} A level path never descends and is refused.`,
    source: tangent,
  },
  {
    name: "descentDistanceByRule",
    topic: "vertical",
    words: "distance of a 3° descent by rule of thumb",
    symbol: "d",
    args: [height],
    result: { unit: "NM" },
    digits: 1,
    tex: "\\frac{3h}{1000}",
    call: descentDistanceByRule,
    steps: (feet: number) => [
      { what: "Distance", symbol: "d", tex: "\\frac{3h}{1000}", numbers: `3 × ${plain(feet)} / 1000` },
    ],
    kind: "rule",
    standsFor: "descentDistance",
    assumes: "Three nautical miles for each thousand feet, for 3°; the exact distance is 4.6 % more.",
    source: trade,
  },
  {
    name: "verticalSpeedFromPitch",
    topic: "vertical",
    words: "vertical speed from a change of pitch",
    symbol: "w",
    args: [tas, argument(PITCH_CHANGE, { name: "pitchChange", symbol: "\\Delta\\theta", example: 1 })],
    result: { unit: "ft/min" },
    digits: 0,
    tex: "V\\sin\\Delta\\theta",
    call: verticalSpeedFromPitch,
    steps: (knots: number, degrees: number) => [
      speedInFeet(knots),
      {
        what: "Vertical speed",
        symbol: "w",
        tex: "V\\sin\\Delta\\theta",
        numbers: `${significant(knots * 101.2686, 5)} × sin ${term(plain(degrees))}°`,
      },
    ],
    kind: "exact",
    assumes:
      "From level flight at an unchanged angle of attack; with thrust fixed, the airspeed changes after some 10 s.",
    source: "the path follows the pitch",
  },
  {
    name: "heightError",
    topic: "vertical",
    words: "height error from a vertical speed",
    symbol: "\\Delta h",
    args: [
      argument(VERTICAL_SPEED_ERROR, { name: "verticalSpeedError", symbol: "w", example: -160 }),
      argument(TIME, { name: "time", symbol: "t", example: 30 }),
    ],
    result: { unit: "ft" },
    digits: 0,
    tex: "w\\,t",
    call: heightError,
    steps: (feetPerMinute: number, seconds: number) => [
      {
        what: "Height error",
        symbol: "\\Delta h",
        tex: "w\\,t",
        numbers: `${plain(feetPerMinute)} × ${plain(seconds)} / 60`,
      },
    ],
    kind: "exact",
    assumes: "A constant vertical speed that should have been zero.",
    source: "distance at constant speed",
  },
  {
    name: "lookInterval",
    topic: "vertical",
    words: "look interval",
    symbol: "t",
    args: [
      tas,
      argument(PITCH_ERROR, { name: "pitchError", symbol: "\\Delta\\theta", example: 1 }),
      argument(TOLERANCE, { name: "tolerance", symbol: "h_{\\max}", example: 100 }),
    ],
    result: { unit: "s" },
    digits: 0,
    tex: "\\frac{h_{\\max}}{V\\sin|\\Delta\\theta|}",
    call: lookInterval,
    steps: (knots: number, degrees: number, tolerance: number) => [
      speedInFeet(knots),
      {
        what: "Vertical speed",
        symbol: "w",
        tex: "V\\sin|\\Delta\\theta|",
        numbers: `${significant(knots * 101.2686, 5)} × sin ${size(degrees)}°`,
        comes: `${significant(verticalSpeedFromPitch(knots, Math.abs(degrees)), 5)} ft/min`,
      },
      {
        what: "Time to the limit",
        symbol: "t",
        tex: "\\frac{h_{\\max}}{w}",
        numbers: `${plain(tolerance)} / ${significant(verticalSpeedFromPitch(knots, Math.abs(degrees)), 5)} × 60`,
      },
    ],
    kind: "exact",
    assumes:
      "An outer bound, never a target: the pitch stays wrong and the airspeed as it was, which holds for about 10 s.",
    source: "tolerance over V sin Δθ",
  },
  uncompensatedBank,
];
