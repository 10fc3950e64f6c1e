import {
  coldTemperatureError,
  coldTemperatureErrorByRule,
  isaTemperature,
  pressureAltitude,
  pressureAltitudeByRule,
  settingError,
  settingErrorByRule,
  trueAirspeed,
  trueAirspeedByRule,
} from "../../calc/index.ts";
import { asSet } from "../figure-words.ts";
import { overAltitudes, overPressures } from "./ranges.ts";
import type { AtlasRule, RuleLine, Values } from "./rule.ts";

const AT_SEA_LEVEL = 0;

/** Thirty feet as it is taught, and 27 as it is near sea level. */
const byHectopascal = (feet: (values: Values, each: number) => number): readonly [RuleLine, RuleLine] => [
  { words: ["30 ft a hPa", "30 ft"], subject: "thirty feet for a hectopascal", value: (values) => feet(values, 30) },
  { words: ["27 ft a hPa", "27 ft"], subject: "twenty-seven feet", value: (values) => feet(values, 27) },
];

/** Rules of the atmosphere, of airspeed and of the altimeter. */
export const airRules: readonly AtlasRule[] = [
  {
    key: "pressureAltitudeByRule",
    name: "pressureAltitudeByRule",
    result: { name: "Pressure altitude at mean sea level", unit: "ft", digits: 0 },
    exact: ({ qnh }) => pressureAltitude(AT_SEA_LEVEL, qnh!),
    lines: byHectopascal(({ qnh }, each) => pressureAltitudeByRule(AT_SEA_LEVEL, qnh!, each)),
    across: overPressures,
    at: undefined,
    over: "too high",
    under: "too low",
    safe: "over",
    why: "The performance read off for it is worse than the aeroplane will give; found too low, it promises too much.",
    leavesOut:
      "The error is the same at every altitude, so it is drawn for mean sea level. The rule counts from 1013; temperature plays no part on either side.",
    holds: { qnh: [800, 1100] },
  },
  {
    key: "trueAirspeedByRule",
    name: "trueAirspeedByRule",
    result: { name: "True airspeed", unit: "kt", digits: 1 },
    exact: ({ cas, pressureAltitude: altitude, isaDeviation }) =>
      trueAirspeed(cas!, altitude!, isaTemperature(altitude!) + isaDeviation!),
    lines: [
      {
        words: ["2 % a 1,000", "2 %"],
        subject: "the rule",
        value: ({ cas, pressureAltitude: altitude }) => trueAirspeedByRule(cas!, altitude!),
      },
    ],
    across: overAltitudes,
    at: ({ cas, isaDeviation }) => `at ${asSet(cas!, "kt")} calibrated in ${airOf(isaDeviation!)}`,
    over: "too fast",
    under: "too slow",
    safe: undefined,
    why: "Neither sign is safe by itself: a true airspeed taken too high promises an early arrival, one taken too low makes drift look greater than it is.",
    leavesOut:
      "The rule knows nothing of temperature; the exact value takes it, and compressibility, into account. Both start from calibrated airspeed.",
    holds: { pressureAltitude: [-2000, 36_000], cas: [20, 250], isaDeviation: [-40, 40] },
  },
  {
    key: "settingErrorByRule",
    name: "settingErrorByRule",
    result: { name: "Altimeter reads too much by", unit: "ft", digits: 0 },
    exact: ({ pressureSet, qnh }) => settingError(pressureSet!, qnh!),
    lines: byHectopascal(({ pressureSet, qnh }, each) => settingErrorByRule(pressureSet!, qnh!, each)),
    across: overPressures,
    at: ({ pressureSet }) => `with ${Math.round(pressureSet! * 100) / 100}\u00a0hPa set`,
    over: "overstated",
    under: "understated",
    safe: "over",
    why: "You are higher than you fear; the other way about you are lower than you hope.",
    leavesOut:
      "Along the axis is the QNH that should have been set. Standard atmosphere on the exact side; temperature adds an error of its own.",
    holds: { qnh: [800, 1100], pressureSet: [800, 1100] },
  },
  {
    key: "coldTemperatureErrorByRule",
    name: "coldTemperatureErrorByRule",
    result: { name: "Height to add", unit: "ft", digits: 0 },
    exact: ({ height, aerodromeTemperature }) => coldTemperatureError(height!, aerodromeTemperature!, AT_SEA_LEVEL),
    lines: [
      {
        words: ["4 % a 10 °C", "4 %"],
        subject: "the rule",
        value: ({ height, aerodromeTemperature }) =>
          coldTemperatureErrorByRule(height!, aerodromeTemperature!, AT_SEA_LEVEL),
      },
    ],
    across: {
      range: () => [-40, 15],
      whose: () => "aerodromes from bitter cold to the standard 15 °C; in warmer air nothing is subtracted",
    },
    at: ({ height }) => `for a published height of ${asSet(height!, "ft")}`,
    over: "adds too much",
    under: "adds too little",
    safe: "over",
    why: "A correction too small leaves you lower than the published height means you to be, one too large higher.",
    leavesOut:
      "Model: the PANS-OPS formula, an aerodrome at mean sea level, the standard lapse from its temperature upwards.",
    caution:
      "In cold air you are lower than you read. Use the published table or your school’s procedure, tell the controller of a corrected height, and never trust this rule near a minimum.",
    holds: { aerodromeTemperature: [-100, 50], height: [0, 20_000] },
  },
];

function airOf(deviation: number): string {
  if (deviation === 0) return "standard air";
  return `air ${asSet(Math.abs(deviation), "degC")} ${deviation > 0 ? "warmer" : "colder"} than standard`;
}
