import {
  AIRSPEED,
  CALIBRATED,
  calibratedAirspeed,
  equivalentAirspeed,
  impactRatio,
  machNumber,
  RULE_ALTITUDE,
  speedOfSound,
  trueAirspeed,
  trueAirspeedByRule,
} from "../airspeed.ts";
import { isaPressure } from "../atmosphere.ts";
import { PRESSURE_ALTITUDE, TEMPERATURE } from "../ranges.ts";
import { knots as inKnots, metresPerSecond } from "../si.ts";
import { argument } from "./argument.ts";
import type { Formula, Step } from "./formula.ts";
import { plain, significant, term } from "./printed.ts";

const tas = argument(AIRSPEED, { name: "tas", symbol: "V", example: 113 });
const cas = argument(CALIBRATED, { name: "cas", symbol: "V_c", example: 100 });
const level = argument(PRESSURE_ALTITUDE, { name: "pressureAltitude", symbol: "H_p", example: 8000 });
const temperature = argument(TEMPERATURE, { name: "temperature", symbol: "T", example: 0 });
const flow = "isentropic flow of a perfect gas with a ratio of specific heats of 1.4";
const subsonic = "Compressible, to Mach 1; no instrument or position error.";
const pressureOf = (feet: number) => significant(isaPressure(feet), 6);
const sound = (celsius: number) => significant(inKnots(speedOfSound(celsius)), 5);
/** The difference of two near numbers: every figure of them counts. */
const seven = (value: number) => significant(value, 7);

const impactStep = (symbol: string, numbers: string, pressure: number): Step => ({
  what: "Impact pressure",
  symbol: "q_c",
  tex: symbol,
  numbers,
  comes: `${seven(pressure)} hPa`,
});

const fromCalibrated = (cas: number) => {
  const pressure = 1013.25 * impactRatio(metresPerSecond(cas) / speedOfSound(15));
  const tex = "p_0\\left(\\left(1 + 0.2\\,(V_c/a_0)^2\\right)^{3.5} - 1\\right)";
  return impactStep(tex, `1013.25 × ((1 + 0.2 × (${plain(cas)} / 661.479)²)^3.5 − 1)`, pressure);
};
const impactOf = (cas: number) => seven(1013.25 * impactRatio(metresPerSecond(cas) / speedOfSound(15)));

const staticStep = (feet: number): Step => ({
  what: "Static pressure",
  symbol: "p",
  numbers: `standard atmosphere at ${plain(feet)} ft`,
  comes: `${pressureOf(feet)} hPa`,
});

const soundStep = (celsius: number): Step => ({
  what: "Speed of sound",
  symbol: "a",
  tex: "\\sqrt{1.4\\,R\\,T}",
  numbers: `√(1.4 × 287.053 × (${plain(celsius)} + 273.15)) / 0.51444`,
  comes: `${sound(celsius)} kt`,
});

const machStep = (cas: number, feet: number, mach: number): Step => ({
  what: "Mach number",
  symbol: "M",
  tex: "\\sqrt{5\\left((q_c/p + 1)^{2/7} - 1\\right)}",
  numbers: `√(5 × ((${impactOf(cas)} / ${pressureOf(feet)} + 1)^(2/7) − 1))`,
  comes: significant(mach, 5),
});

export const airspeed: readonly Formula[] = [
  {
    name: "trueAirspeed",
    topic: "airspeed",
    words: "true airspeed",
    symbol: "V",
    args: [cas, level, temperature],
    result: { unit: "kt" },
    digits: 0,
    tex: "a\\sqrt{5\\left((q_c/p + 1)^{2/7} - 1\\right)}",
    call: trueAirspeed,
    steps: (cas: number, feet: number, celsius: number) => {
      const M = machNumber(trueAirspeed(cas, feet, celsius), celsius);
      const numbers = `${significant(M, 5)} × ${sound(celsius)}`;
      return [
        fromCalibrated(cas),
        staticStep(feet),
        machStep(cas, feet, M),
        soundStep(celsius),
        { what: "True airspeed", symbol: "V", tex: "M\\,a", numbers },
      ];
    },
    kind: "exact",
    assumes: `${subsonic} q_c is the impact pressure of V_c at sea level in the standard atmosphere.`,
    source: flow,
  },
  {
    name: "calibratedAirspeed",
    topic: "airspeed",
    words: "calibrated airspeed",
    symbol: "V_c",
    args: [tas, level, temperature],
    result: { unit: "kt" },
    digits: 0,
    tex: "a_0\\sqrt{5\\left((q_c/p_0 + 1)^{2/7} - 1\\right)}",
    call: calibratedAirspeed,
    steps: (tas: number, feet: number, celsius: number) => {
      const M = machNumber(tas, celsius);
      const impact = isaPressure(feet) * impactRatio(M);
      const numbers = `${pressureOf(feet)} × ((1 + 0.2 × ${seven(M)}²)^3.5 − 1)`;
      return [
        soundStep(celsius),
        { what: "Mach number", symbol: "M", tex: "V/a", numbers: `${plain(tas)} / ${sound(celsius)}`, comes: seven(M) },
        staticStep(feet),
        impactStep("p\\left((1 + 0.2\\,M^2)^{3.5} - 1\\right)", numbers, impact),
        {
          what: "Calibrated airspeed",
          symbol: "V_c",
          tex: "a_0\\sqrt{5\\left((q_c/p_0 + 1)^{2/7} - 1\\right)}",
          numbers: `661.479 × √(5 × ((${seven(impact)} / 1013.25 + 1)^(2/7) − 1))`,
        },
      ];
    },
    kind: "exact",
    assumes: `${subsonic} q_c is the impact pressure at Mach V/a.`,
    source: flow,
  },
  {
    name: "machNumber",
    topic: "airspeed",
    words: "Mach number",
    symbol: "M",
    args: [tas, temperature],
    result: { unit: "plain" },
    digits: 3,
    tex: "\\frac{V}{\\sqrt{1.4\\,R\\,T}}",
    call: machNumber,
    steps: (tas: number, celsius: number) => [
      soundStep(celsius),
      { what: "Mach number", symbol: "M", tex: "V/a", numbers: `${plain(tas)} / ${sound(celsius)}` },
    ],
    kind: "exact",
    assumes: "Temperature of the undisturbed air.",
    source: "speed of sound in a perfect gas",
  },
  {
    name: "equivalentAirspeed",
    topic: "airspeed",
    words: "equivalent airspeed",
    symbol: "V_e",
    args: [cas, level],
    result: { unit: "kt" },
    digits: 0,
    tex: "a_0 M\\sqrt{p/p_0}",
    call: equivalentAirspeed,
    steps: (cas: number, feet: number) => {
      const M = machNumber(trueAirspeed(cas, feet, 0), 0);
      return [
        fromCalibrated(cas),
        staticStep(feet),
        machStep(cas, feet, M),
        {
          what: "Equivalent airspeed",
          symbol: "V_e",
          tex: "a_0 M\\sqrt{p/p_0}",
          numbers: `661.479 × ${significant(M, 5)} × √(${pressureOf(feet)} / 1013.25)`,
        },
      ];
    },
    kind: "exact",
    assumes: `${subsonic} The speed at sea level with the same dynamic pressure, at any temperature.`,
    source: flow,
  },
  {
    name: "trueAirspeedByRule",
    topic: "airspeed",
    words: "true airspeed by rule of thumb",
    symbol: "V",
    args: [cas, argument(RULE_ALTITUDE, { name: "altitude", symbol: "H", example: 8000 })],
    result: { unit: "kt" },
    digits: 0,
    tex: "V_c\\left(1 + 0.02\\,\\frac{H}{1000}\\right)",
    call: trueAirspeedByRule,
    steps: (cas: number, feet: number) => [
      {
        what: "True airspeed",
        symbol: "V",
        tex: "V_c\\left(1 + 0.02\\,\\frac{H}{1000}\\right)",
        numbers: `${plain(cas)} × (1 + 0.02 × ${term(plain(feet))} / 1000)`,
      },
    ],
    kind: "rule",
    standsFor: "trueAirspeed",
    assumes: "Two per cent for each thousand feet; a difference from standard temperature is left out.",
    source: "rule of the trade",
  },
];
