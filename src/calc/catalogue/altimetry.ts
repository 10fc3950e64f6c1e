import {
  ABOVE_SOURCE,
  ACTUAL,
  AERODROME_ELEVATION,
  AERODROME_TEMPERATURE,
  coldTemperatureError,
  coldTemperatureErrorByRule,
  FEET_PER_HECTOPASCAL,
  LAG_TIME,
  LAG_TIME_CONSTANT,
  LAPSE_PER_FOOT,
  lagError,
  SETTING,
  settingError,
  settingErrorByRule,
} from "../altimetry.ts";
import { isaAltitude } from "../atmosphere.ts";
import {
  altimeterErrorBudget,
  FLYING_TOLERANCE,
  INSTRUMENT_TOLERANCE,
  LAG_ERROR,
  SETTING_TOLERANCE,
  TEMPERATURE_ERROR,
} from "../error-budget.ts";
import { VERTICAL_SPEED } from "../ranges.ts";
import { argument } from "./argument.ts";
import type { Formula, Step } from "./formula.ts";
import { fixed, plain, term } from "./printed.ts";
import { figures, given, size } from "./signs.ts";

const set = argument(SETTING, { name: "set", symbol: "p_s", example: 1013 });
const actual = argument(ACTUAL, { name: "actual", symbol: "p_a", example: 1003 });
const height = argument(ABOVE_SOURCE, { name: "height", symbol: "H", example: 2000 });
const temperature = argument(AERODROME_TEMPERATURE, { name: "aerodromeTemperature", symbol: "t_A", example: -15 });
const elevation = argument(AERODROME_ELEVATION, { name: "aerodromeElevation", symbol: "S", default: 0, example: 500 });
const toAdd = "Feet to add to a published height. In warm air it is negative: shown as information, never subtracted.";

export const altimetry: readonly Formula[] = [
  {
    name: "settingError",
    topic: "altimetry",
    words: "altimeter setting error",
    symbol: "\\Delta h",
    args: [set, actual],
    result: { unit: "ft" },
    digits: 0,
    tex: "h_{\\mathrm{ISA}}(p_a) - h_{\\mathrm{ISA}}(p_s)",
    call: settingError,
    steps: (pressureSet: number, pressure: number) => [
      altitudeStep("Altitude of the actual pressure", "h_a", pressure),
      altitudeStep("Altitude of the pressure set", "h_s", pressureSet),
      {
        what: "Setting error",
        symbol: "\\Delta h",
        tex: "h_a - h_s",
        numbers: `${altitude(pressure)} − ${term(altitude(pressureSet))}`,
      },
    ],
    kind: "exact",
    assumes: "Indicated minus true: positive, the altimeter over-reads. Standard atmosphere between the two pressures.",
    source: "ICAO Doc 7488, standard atmosphere",
  },
  {
    name: "settingErrorByRule",
    topic: "altimetry",
    words: "altimeter setting error by rule of thumb",
    symbol: "\\Delta h",
    args: [
      set,
      actual,
      argument(FEET_PER_HECTOPASCAL, { name: "feetPerHectopascal", symbol: "k", default: 30, example: 30 }),
    ],
    result: { unit: "ft" },
    digits: 0,
    tex: "k\\,(p_s - p_a)",
    call: settingErrorByRule,
    steps: (pressureSet: number, pressure: number, feet: number) => [
      {
        what: "Setting error",
        symbol: "\\Delta h",
        tex: "k\\,(p_s - p_a)",
        numbers: `${plain(feet)} × (${plain(pressureSet)} − ${plain(pressure)})`,
      },
    ],
    kind: "rule",
    standsFor: "settingError",
    assumes: "Indicated minus true. A hectopascal is 27 ft at sea level and more above; 30 is easy to multiply by.",
    source: "rule of thumb",
  },
  {
    name: "coldTemperatureError",
    topic: "altimetry",
    words: "cold temperature error",
    symbol: "\\Delta h",
    args: [height, temperature, elevation],
    result: { unit: "ft" },
    digits: 0,
    tex: "\\frac{H\\,(15 - t_0)}{273 + t_0 - \\tfrac{1}{2}\\,0.00198\\,(H + S)},\\quad t_0 = t_A + 0.00198\\,S",
    call: coldTemperatureError,
    steps: (feet: number, celsius: number, source: number) => {
      const atSeaLevel = fixed(celsius + LAPSE_PER_FOOT * source, 2);
      return [
        {
          what: "Temperature at sea level",
          symbol: "t_0",
          tex: "t_A + 0.00198\\,S",
          numbers: `${plain(celsius)} + 0.00198 × ${given(source)}`,
          comes: `${atSeaLevel} °C`,
        },
        {
          what: "To add",
          symbol: "\\Delta h",
          tex: "\\frac{H\\,(15 - t_0)}{273 + t_0 - \\tfrac{1}{2}\\,0.00198\\,(H + S)}",
          numbers: `${plain(feet)} × (15 − ${term(atSeaLevel)}) / (273 + ${term(atSeaLevel)} − 0.00099 × (${plain(feet)} + ${given(source)}))`,
        },
      ];
    },
    kind: "model",
    assumes: `${toAdd} The air is colder than standard by as much at every height; the lapse is standard.`,
    source: "ICAO Doc 8168 (PANS-OPS), temperature correction",
  },
  {
    name: "coldTemperatureErrorByRule",
    topic: "altimetry",
    words: "cold temperature error by rule of thumb",
    symbol: "\\Delta h",
    args: [height, temperature, elevation],
    result: { unit: "ft" },
    digits: 0,
    tex: "0.04\\,H\\,\\frac{15 - 0.00198\\,S - t_A}{10}",
    call: coldTemperatureErrorByRule,
    steps: (feet: number, celsius: number, source: number) => [
      {
        what: "To add",
        symbol: "\\Delta h",
        tex: "0.04\\,H\\,\\frac{15 - 0.00198\\,S - t_A}{10}",
        numbers: `0.04 × ${plain(feet)} × (15 − 0.00198 × ${given(source)} − ${given(celsius)}) / 10`,
      },
    ],
    kind: "rule",
    standsFor: "coldTemperatureError",
    assumes: `${toAdd} Four per cent for each 10 °C below standard: too little below about −23 °C.`,
    source: "rule of thumb",
  },
  {
    name: "lagError",
    topic: "altimetry",
    words: "altimeter lag",
    symbol: "\\Delta h",
    args: [
      argument(VERTICAL_SPEED, { name: "verticalSpeed", symbol: "w", example: 500 }),
      argument(LAG_TIME_CONSTANT, { name: "timeConstant", symbol: "\\tau", example: 2 }),
      argument(LAG_TIME, { name: "time", symbol: "t", default: Infinity, example: 4 }),
    ],
    result: { unit: "ft" },
    digits: 0,
    tex: "-w\\,\\tau\\left(1 - e^{-t/\\tau}\\right)",
    call: lagError,
    steps: (feetPerMinute: number, constant: number, time: number) => {
      const w = figures(feetPerMinute / 60, 4);
      const settled = time === Infinity ? "" : ` × (1 − e^(−${plain(time)} / ${plain(constant)}))`;
      return [
        { what: "Vertical speed", symbol: "w", numbers: `${plain(feetPerMinute)} / 60`, comes: `${w} ft/s` },
        {
          what: "Lag",
          symbol: "\\Delta h",
          tex: time === Infinity ? "-w\\,\\tau" : "-w\\,\\tau\\left(1 - e^{-t/\\tau}\\right)",
          numbers: `−${term(w)} × ${plain(constant)}${settled}`,
        },
      ];
    },
    kind: "model",
    assumes: "Indicated minus true: negative climbing. The instrument follows by first order; each has its own τ.",
    source: "first-order lag",
  },
  {
    name: "altimeterErrorBudget",
    topic: "altimetry",
    words: "error budget of an altimeter",
    symbol: "E",
    args: [
      argument(TEMPERATURE_ERROR, { name: "temperature", symbol: "e_1", example: 190 }),
      argument(LAG_ERROR, { name: "lag", symbol: "e_2", example: -17 }),
      argument(INSTRUMENT_TOLERANCE, { name: "instrument", symbol: "d_1", example: 60 }),
      argument(SETTING_TOLERANCE, { name: "setting", symbol: "d_2", example: 27 }),
      argument(FLYING_TOLERANCE, { name: "flying", symbol: "d_3", example: 100 }),
    ],
    result: { fields: { known: { unit: "ft" }, worstCase: { unit: "ft" }, rootSumSquare: { unit: "ft" } } },
    digits: 0,
    tex: "|e_1 + e_2| + \\sqrt{d_1^2 + d_2^2 + d_3^2}\\quad\\text{or}\\quad |e_1 + e_2| + |d_1| + |d_2| + |d_3|",
    call: altimeterErrorBudget,
    steps: budgetSteps,
    kind: "exact",
    assumes:
      "Errors of known sign add with their signs. Tolerances may go either way: all at once in the worst case, by the root of their squares where they are independent.",
    source: "propagation of independent errors",
  },
];

const altitude = (pressure: number): string => figures(isaAltitude(pressure), 6);

function altitudeStep(what: string, symbol: string, pressure: number): Step {
  return {
    what,
    symbol,
    tex: "145\\,442\\left(1 - \\left(\\tfrac{p}{1013.25}\\right)^{0.190263}\\right)",
    numbers: `145442.16 × (1 − (${plain(pressure)} / 1013.25)^0.1902631)`,
    comes: `${altitude(pressure)} ft`,
  };
}

function budgetSteps(temperature: number, lag: number, ...tolerances: number[]): Step[] {
  const known = size(temperature + lag);
  const [a, b, c] = tolerances.map(size);
  const budget = altimeterErrorBudget(temperature, lag, ...(tolerances as [number, number, number]));
  return [
    {
      what: "Known errors",
      symbol: "e",
      tex: "e_1 + e_2",
      numbers: `${plain(temperature)} + ${given(lag)}`,
      comes: `${plain(temperature + lag)} ft`,
    },
    {
      what: "Worst case",
      symbol: "E_w",
      tex: "|e| + |d_1| + |d_2| + |d_3|",
      numbers: `${known} + ${a} + ${b} + ${c}`,
      comes: `${plain(budget.worstCase)} ft`,
    },
    {
      what: "Root sum square",
      symbol: "E",
      tex: "|e| + \\sqrt{d_1^2 + d_2^2 + d_3^2}",
      numbers: `${known} + √(${a}² + ${b}² + ${c}²) = ${figures(budget.rootSumSquare, 4)} ft`,
    },
  ];
}
