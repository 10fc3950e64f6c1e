import fc from "fast-check";

const STEPS = 2 ** 24;

/**
 * Numbers spread evenly from one to another, both included. fc.double spreads its numbers over their exponents: from
 * −45 to 45 nearly all would be next to nothing.
 */
export const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);
