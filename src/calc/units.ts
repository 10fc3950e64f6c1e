import { oneOf } from "./choice.ts";
import { type Limits, OutOfRange, within } from "./limits.ts";
import type { Degrees } from "./quantity.ts";
import { HEADING } from "./ranges.ts";
import {
  METRES_IN_FOOT,
  METRES_IN_MILE,
  METRES_IN_STATUTE_MILE,
  onCircle,
  PASCALS_IN_INCH,
  ZERO_CELSIUS,
} from "./si.ts";

/** What a unit measures; units of one kind convert into each other. */
export type UnitKind =
  | "speed"
  | "length"
  | "pressure"
  | "temperature"
  | "angle"
  | "rate"
  | "acceleration"
  | "gradient"
  | "time"
  | "load";

interface Scale {
  readonly kind: UnitKind;
  /** How many of the kind's base unit one of this unit is. */
  readonly size: number;
  /** The base unit's reading where this unit reads zero; only temperatures have one. */
  readonly zero?: number;
}

const scales = {
  kt: { kind: "speed", size: METRES_IN_MILE / 3600 },
  "m/s": { kind: "speed", size: 1 },
  "km/h": { kind: "speed", size: 1 / 3.6 },
  "ft/min": { kind: "speed", size: METRES_IN_FOOT / 60 },
  ft: { kind: "length", size: METRES_IN_FOOT },
  m: { kind: "length", size: 1 },
  NM: { kind: "length", size: METRES_IN_MILE },
  km: { kind: "length", size: 1000 },
  mi: { kind: "length", size: METRES_IN_STATUTE_MILE },
  hPa: { kind: "pressure", size: 100 },
  inHg: { kind: "pressure", size: PASCALS_IN_INCH },
  degC: { kind: "temperature", size: 1, zero: ZERO_CELSIUS },
  degF: { kind: "temperature", size: 5 / 9, zero: ZERO_CELSIUS - 160 / 9 },
  K: { kind: "temperature", size: 1, zero: 0 },
  deg: { kind: "angle", size: Math.PI / 180 },
  rad: { kind: "angle", size: 1 },
  "deg/s": { kind: "rate", size: 1 },
  "kt/s": { kind: "acceleration", size: 1 },
  "ft/NM": { kind: "gradient", size: 1 },
  s: { kind: "time", size: 1 },
  min: { kind: "time", size: 60 },
  h: { kind: "time", size: 3600 },
  g: { kind: "load", size: 1 },
} as const satisfies Record<string, Scale>;

/** A unit that `convert` knows. */
export type Unit = keyof typeof scales;

/** Every unit that `convert` knows. */
export const units = Object.keys(scales) as readonly Unit[];

export const VALUE: Limits = { quantity: "value", unit: "plain", from: -1e15, to: 1e15 };
export const FROM_HEADING: Limits = { ...HEADING, quantity: "heading to turn from" };
export const TO_HEADING: Limits = { ...HEADING, quantity: "heading to turn to" };

/** Two units of different kinds: neither converts into the other. */
export class UnitMismatch extends OutOfRange {
  readonly from: Unit;
  readonly into: Unit;

  constructor(from: Unit, into: Unit) {
    super({ ...VALUE, quantity: `unit of ${unitKind(from)}` }, Number.NaN);
    this.name = "UnitMismatch";
    this.from = from;
    this.into = into;
    this.message = `${from} is a unit of ${unitKind(from)} and ${into} one of ${unitKind(into)}: they do not convert`;
  }
}

/**
 * A value in another unit of the same kind. Temperatures are readings, not differences: 0 °C is 273.15 K. The load 'g'
 * is the ratio of lift to weight, a kind of its own, and so does not convert into the acceleration 'kt/s'.
 *
 * @param value within ±10¹⁵
 * @param from the unit it is in
 * @param to the unit it shall be in
 * @throws {OutOfRange} outside those limits and where a unit is unknown; as UnitMismatch, naming
 * both, where the units differ in kind
 * @source ICAO Annex 5: 1 NM = 1852 m, 1 ft = 0.3048 m; 1 inHg = 33.8639 hPa
 */
export function convert(value: number, from: Unit, to: Unit): number {
  within(VALUE, value);
  const source = scaleOf(from);
  const target = scaleOf(to);
  if (source.kind !== target.kind) throw new UnitMismatch(from, to);
  if (from === to) return value + 0;
  const { zero: sourceZero = 0 } = source;
  const { zero: targetZero = 0 } = target;
  return (value * source.size + (sourceZero - targetZero)) / target.size + 0;
}

/**
 * What a unit measures.
 *
 * @throws {OutOfRange} where the unit is unknown
 */
export function unitKind(unit: Unit): UnitKind {
  return scaleOf(unit).kind;
}

/**
 * The shorter way round from one heading to another: right positive.
 *
 * @param from degrees, within ±100,000
 * @param to degrees, within ±100,000
 * @returns over −180 and at most 180; exactly 180 means that the direction must be chosen
 * @throws {OutOfRange} outside those limits
 */
export function shortestTurn(from: Degrees, to: Degrees): Degrees {
  within(FROM_HEADING, from);
  within(TO_HEADING, to);
  const right = onCircle(to - from);
  return right > 180 ? right - 360 : right;
}

function scaleOf(unit: Unit): Scale {
  return scales[oneOf("unit", units, unit)];
}
