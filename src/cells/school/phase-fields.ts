import type { Field } from "./field.ts";

/** A row of the table of power, attitude, speed and vertical speed. */
export interface Phase {
  readonly key: string;
  readonly label: string;
  /** What the school states of it; the rest follows from other fields. */
  readonly states: readonly (keyof typeof columns)[];
  /** What is the same as another fact, by its id; '0' for level flight, a minus for the other sign. */
  readonly follows: Readonly<Record<string, string>>;
}

export const columns = {
  altitude: { label: "Altitude", unit: "ft", from: -1000, to: 20_000 },
  power: { label: "Power", longest: 30 },
  pitch: { label: "Pitch attitude", unit: "deg", from: -15, to: 20 },
  speed: { label: "Speed indicated", unit: "kt", from: 35, to: 250 },
  verticalSpeed: { label: "Vertical speed", unit: "ft/min", from: -2000, to: 2500 },
} as const;

/** Flaps up, at the greatest mass. Climbing, power is that of the first row. */
export const phases: readonly Phase[] = [
  {
    key: "climb",
    label: "Climb, low",
    states: ["altitude", "power", "pitch", "verticalSpeed"],
    follows: { speed: "aircraft.climb" },
  },
  {
    key: "climbMiddle",
    label: "Climb, middle",
    states: ["altitude", "pitch", "speed", "verticalSpeed"],
    follows: { power: "aircraft.phases.climb.power" },
  },
  {
    key: "climbHigh",
    label: "Climb, high",
    states: ["altitude", "pitch", "speed", "verticalSpeed"],
    follows: { power: "aircraft.phases.climb.power" },
  },
  {
    key: "cruise",
    label: "Cruise",
    states: ["power", "pitch"],
    follows: { speed: "aircraft.cruiseIas", verticalSpeed: "0" },
  },
  { key: "slowCruise", label: "Slow cruise", states: ["power", "pitch", "speed"], follows: { verticalSpeed: "0" } },
  {
    key: "descent",
    label: "Descent",
    states: ["power", "pitch"],
    follows: { speed: "aircraft.descent", verticalSpeed: "-aircraft.descentRate" },
  },
  {
    key: "approach",
    label: "Approach",
    states: ["power", "pitch", "verticalSpeed"],
    follows: { speed: "aircraft.approach" },
  },
];

function fieldOf({ key, label }: Phase, column: keyof typeof columns): Field {
  const { label: of, ...limits } = columns[column];
  const common = {
    id: `aircraft.phases.${key}.${column}`,
    path: ["aircraft", "phases", key, column],
    section: "phases",
    label: `${label}: ${of.toLowerCase()}`,
  } as const;
  return "unit" in limits ? { kind: "number", ...common, ...limits } : { kind: "text", ...common, ...limits };
}

/** The table's fields, row by row. */
export const phaseFields: readonly Field[] = phases.flatMap((phase) =>
  phase.states.map((column) => fieldOf(phase, column)),
);
