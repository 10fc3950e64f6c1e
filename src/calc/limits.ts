/** The range within which a formula answers for an argument; an open end is excluded. */
export interface Limits {
  readonly quantity: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly openFrom?: boolean;
  readonly openTo?: boolean;
}

/** A value outside the limits of the formula that was asked; NaN and infinities are outside unless the limits say so. */
export class OutOfRange extends RangeError {
  readonly quantity: string;
  readonly unit: string;
  readonly limits: Limits;
  readonly value: number;

  constructor(limits: Limits, value: number) {
    super(`${limits.quantity} must be ${inWords(limits)}, not ${value}`);
    this.name = "OutOfRange";
    this.quantity = limits.quantity;
    this.unit = limits.unit;
    this.limits = limits;
    this.value = value;
  }
}

/**
 * The value itself where it lies within the limits.
 *
 * @throws {OutOfRange} otherwise
 */
export function within(limits: Limits, value: number): number {
  const { from, to, openFrom = false, openTo = false } = limits;
  const aboveFrom = openFrom ? value > from : value >= from;
  const belowTo = openTo ? value < to : value <= to;
  if (!(aboveFrom && belowTo)) throw new OutOfRange(limits, value);
  return value;
}

function inWords({ unit, from, to, openFrom, openTo }: Limits): string {
  const named = unit === "plain" ? "" : ` ${unit}`;
  const low = from === -Infinity ? "" : `${openFrom ? "over" : "at least"} ${from}${named}`;
  const high = to === Infinity ? "" : `${openTo ? "under" : "at most"} ${to}${named}`;
  return [low, high].filter(Boolean).join(" and ") || "a finite number";
}
