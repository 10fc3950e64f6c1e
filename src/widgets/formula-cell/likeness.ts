import { isaTemperature, magneticDip } from "../../calc/index.ts";

/** Values of a calculator's fields by key; a word where the argument is one. */
export type Values = ReadonlyMap<string, number | string>;

/** Arguments of a rule that go by another name in what it stands for. */
const argumentNames: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  trueAirspeedByRule: { altitude: "pressureAltitude" },
};

/** Fields of a rule's result that go by another name: timed from over or abeam the fix, not from wings level. */
const fieldNames: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  holdOutboundByRule: { time: "timeFromAbeam" },
};

/** The one key of an argument wherever a rule and what it stands for share it. */
export const keyOf = (formula: string, argument: string): string => argumentNames[formula]?.[argument] ?? argument;

/** The field of the exact result, or of the model's, that a field of the rule's result is compared with. */
export const comparedField = (rule: string, field: string): string => fieldNames[rule]?.[field] ?? field;

/** What a rule takes for granted of what it stands for. */
export const takenForGranted: Readonly<Record<string, { readonly key: string; readonly value: number }>> = {
  bankByTenthPlusSevenRule: { key: "rate", value: 3 },
  bankByFifteenPercentRule: { key: "rate", value: 3 },
  verticalSpeedByRule: { key: "angle", value: 3 },
  descentDistanceByRule: { key: "angle", value: 3 },
};

/** What a field holds until someone types in it, where its example would not go with the others. */
export interface Following {
  /** Undefined where the others don't decide it. */
  readonly value: (values: Values) => number | undefined;
  readonly say: string;
}

/** By calculator, then by key. */
export const following: Readonly<Record<string, Readonly<Record<string, Following>>>> = {
  trueAirspeedByRule: {
    temperature: {
      value: (values) => of(values, "pressureAltitude", isaTemperature),
      say: "standard at that altitude, until you type",
    },
  },
  rollOutHeadingByRule: {
    dip: { value: (values) => of(values, "latitude", magneticDip), say: "a dipole’s, until you type the chart’s" },
  },
  rollOutReading: {
    latitude: {
      value: (values) => of(values, "dip", latitudeOfDip),
      say: "where a dipole’s field dips so, until you type",
    },
  },
};

function of(values: Values, key: string, compute: (value: number) => number): number | undefined {
  const value = values.get(key);
  return typeof value === "number" ? compute(value) : undefined;
}

/** The latitude at which `magneticDip` gives a dip. */
const latitudeOfDip = (dip: number): number => (Math.atan(Math.tan((dip * Math.PI) / 180) / 2) * 180) / Math.PI;
