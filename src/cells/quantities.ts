/** A quantity as chapters, draws, figures and Aircraft know it; they may narrow its range. */
export interface QuantityEntry {
  /** 'True airspeed': capital first. */
  readonly label: string;
  /** The American word, where it differs. */
  readonly american?: string;
  /** A unit of `convert`, or 'plain'. */
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly digits: number;
  /** A direction: compared on the circle, printed 001–360. */
  readonly circle?: true;
}

const direction = { unit: "deg", from: 0, to: 360, step: 5, digits: 0, circle: true } as const;

/** Every quantity that can be given or drawn, named once. */
export const quantities = {
  tas: { label: "True airspeed", unit: "kt", from: 40, to: 250, step: 5, digits: 0 },
  ias: { label: "Indicated airspeed", unit: "kt", from: 40, to: 250, step: 5, digits: 0 },
  cas: { label: "Calibrated airspeed", unit: "kt", from: 40, to: 250, step: 5, digits: 0 },
  groundSpeed: { label: "Ground speed", unit: "kt", from: 20, to: 300, step: 5, digits: 0 },
  stallSpeed: { label: "Stalling speed, wings level", unit: "kt", from: 30, to: 100, step: 1, digits: 0 },
  bank: { label: "Bank", unit: "deg", from: 0, to: 60, step: 1, digits: 0 },
  rate: { label: "Rate of turn", unit: "deg/s", from: 0, to: 10, step: 0.5, digits: 1 },
  headingChange: { label: "Heading change", unit: "deg", from: 0, to: 360, step: 10, digits: 0 },
  heading: { label: "Heading", ...direction },
  course: { label: "Track wanted", american: "Course", ...direction },
  rollRate: { label: "Rate of roll", unit: "deg/s", from: 1, to: 20, step: 0.5, digits: 1 },
  reaction: { label: "Reaction time", unit: "s", from: 0, to: 10, step: 0.5, digits: 1 },
  verticalSpeed: { label: "Vertical speed", unit: "ft/min", from: -2000, to: 2000, step: 50, digits: 0 },
  extraLoad: { label: "Extra load", unit: "g", from: 0.01, to: 0.5, step: 0.01, digits: 2 },
  altitude: { label: "Altitude", unit: "ft", from: -1000, to: 20000, step: 100, digits: 0 },
  pressureAltitude: { label: "Pressure altitude", unit: "ft", from: -1000, to: 20000, step: 100, digits: 0 },
  height: { label: "Height", unit: "ft", from: 0, to: 10000, step: 50, digits: 0 },
  aerodromeTemperature: { label: "Aerodrome temperature", unit: "degC", from: -50, to: 50, step: 1, digits: 0 },
  isaDeviation: { label: "Warmer than standard by", unit: "degC", from: -40, to: 40, step: 1, digits: 0 },
  temperature: { label: "Outside air temperature", unit: "degC", from: -50, to: 50, step: 1, digits: 0 },
  qnh: { label: "QNH", american: "Altimeter setting", unit: "hPa", from: 940, to: 1050, step: 1, digits: 0 },
  pressureSet: { label: "Pressure set", unit: "hPa", from: 940, to: 1050, step: 1, digits: 0 },
  latitude: { label: "Latitude", unit: "deg", from: -80, to: 80, step: 1, digits: 0 },
  dip: { label: "Magnetic dip", unit: "deg", from: -80, to: 80, step: 1, digits: 0 },
  windFrom: { label: "Wind from", ...direction },
  windSpeed: { label: "Wind speed", unit: "kt", from: 0, to: 80, step: 1, digits: 0 },
  distance: { label: "Distance", unit: "NM", from: 0, to: 60, step: 0.5, digits: 1 },
  offset: {
    label: "Distance off track",
    american: "Distance off course",
    unit: "NM",
    from: 0,
    to: 60,
    step: 0.5,
    digits: 1,
  },
  bearingChange: { label: "Change of bearing", unit: "deg", from: 1, to: 80, step: 1, digits: 0 },
  elapsed: { label: "Time it took", unit: "min", from: 0.5, to: 30, step: 0.5, digits: 1 },
  pathAngle: { label: "Path angle", unit: "deg", from: 0.5, to: 10, step: 0.5, digits: 1 },
  pitchError: { label: "Pitch error", unit: "deg", from: 0.5, to: 5, step: 0.5, digits: 1 },
  tolerance: { label: "Tolerance", unit: "ft", from: 10, to: 500, step: 10, digits: 0 },
  altitudeTolerance: { label: "Tolerance, altitude", unit: "ft", from: 5, to: 500, step: 5, digits: 0 },
  headingTolerance: { label: "Tolerance, heading", unit: "deg", from: 0.5, to: 30, step: 0.5, digits: 0 },
  speedTolerance: { label: "Tolerance, airspeed", unit: "kt", from: 0.5, to: 20, step: 0.5, digits: 0 },
  bankTolerance: { label: "Tolerance, bank", unit: "deg", from: 0.1, to: 10, step: 0.1, digits: 0 },
  verticalSpeedTolerance: {
    label: "Tolerance, vertical speed",
    unit: "ft/min",
    from: 10,
    to: 500,
    step: 10,
    digits: 0,
  },
  distanceTolerance: { label: "Tolerance, distance", unit: "NM", from: 0.1, to: 5, step: 0.1, digits: 0 },
  trackTolerance: { label: "Tolerance, track or drift", unit: "deg", from: 0.1, to: 10, step: 0.1, digits: 0 },
  timeTolerance: { label: "Tolerance, time", unit: "s", from: 1, to: 60, step: 1, digits: 0 },
  minutesTolerance: { label: "Tolerance, time to a station", unit: "min", from: 0.1, to: 10, step: 0.1, digits: 0 },
  time: { label: "Time", unit: "s", from: 0, to: 600, step: 5, digits: 0 },
} as const satisfies Record<string, QuantityEntry>;

export type QuantityName = keyof typeof quantities;

/** The entry of a quantity, or nothing where no quantity has that name. */
export const quantityOf = (name: string): QuantityEntry | undefined =>
  Object.hasOwn(quantities, name) ? quantities[name as QuantityName] : undefined;
