import type { Facts } from "../cells/known.ts";

/** What bounds a figure's aeroplane; a speed that its sheet doesn't state bounds nothing. */
export interface AircraftLimits {
  /** 'Dunlin' */
  readonly name: string;
  /** Bank the school doesn't go beyond, degrees. */
  readonly bank: number;
  /** Stalling speed wings level, knots indicated. */
  readonly stall: number | undefined;
  /** Never-exceed speed, knots indicated. */
  readonly neverExceed: number | undefined;
}

const SCHOOL_BANK = 30;

/** Reads the facts `bankLimit`, `stall` and `neverExceed`. */
export function limitsOf({ title, facts }: Facts): AircraftLimits {
  const number = (name: string): number | undefined => {
    const value = facts[name]?.value;
    return typeof value === "number" && value > 0 ? value : undefined;
  };
  return {
    name: title,
    bank: number("bankLimit") ?? SCHOOL_BANK,
    stall: number("stall"),
    neverExceed: number("neverExceed"),
  };
}
