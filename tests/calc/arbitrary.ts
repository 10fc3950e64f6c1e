import fc from "fast-check";

/** Any number from one to another, both included. */
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const airspeed = between(40, 400);
export const bank = between(-75, 75);
export const someBank = between(1, 75);
/** Half the last printed digit of a number printed with so many significant figures. */
export const halfDigit = (printed: number, figures: number) =>
  0.5 * 10 ** (Math.floor(Math.log10(Math.abs(printed))) + 1 - figures);
