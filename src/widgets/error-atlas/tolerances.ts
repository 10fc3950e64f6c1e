/** A tolerance as the atlas opens with it; a reader sets her own. */
export interface Tolerance {
  /** What it is a tolerance of: 'heading'. */
  readonly of: string;
  readonly value: number;
  /** A flight test's, as an example; else what the workbook takes, and why. */
  readonly from: "flight test" | string;
}

/** Tolerances by the quantities' names. */
export const tolerances = {
  headingTolerance: { of: "heading", value: 10, from: "flight test" },
  altitudeTolerance: { of: "altitude", value: 100, from: "flight test" },
  speedTolerance: { of: "airspeed", value: 10, from: "flight test" },
  bankTolerance: { of: "bank", value: 1, from: "about what can be read off an attitude indicator" },
  trackTolerance: { of: "track or drift", value: 1, from: "about what can be read off a heading indicator" },
  verticalSpeedTolerance: { of: "vertical speed", value: 100, from: "one mark of the instrument" },
  distanceTolerance: { of: "distance", value: 0.5, from: "20 s at a ground speed of 90 kt" },
  timeTolerance: { of: "time outbound", value: 10, from: "a sixth of a leg of one minute" },
  minutesTolerance: { of: "time to a station", value: 1, from: "the whole minute to which an estimate is given" },
} as const satisfies Readonly<Record<string, Tolerance>>;

export type ToleranceName = keyof typeof tolerances;

export const isTolerance = (name: string): name is ToleranceName => Object.hasOwn(tolerances, name);
