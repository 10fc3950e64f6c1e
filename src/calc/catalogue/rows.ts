import { metresPerSecond } from "../si.ts";
import { turnRate } from "../turns.ts";
import type { Step } from "./formula.ts";
import { plain, significant, term } from "./printed.ts";

/** True airspeed in m/s, as a working prints it. */
export const speed = (knots: number): string => significant(metresPerSecond(knots), 4);

/** A rate of turn, as a working prints it. */
export const perSecond = (degrees: number): string => significant(degrees, 4);

/** The row that brings true airspeed into SI. */
export const speedStep = (knots: number): Step => ({
  what: "True airspeed",
  symbol: "V",
  numbers: `${plain(knots)} × 0.51444`,
  comes: `${speed(knots)} m/s`,
});

/** The row that finds the rate of turn. */
export const rateStep = (knots: number, bank: number): Step => ({
  what: "Rate of turn",
  symbol: "\\omega",
  tex: "\\frac{g\\tan\\varphi}{V}",
  numbers: `9.80665 × tan ${term(plain(bank))}° / ${speed(knots)} × 57.296`,
  comes: `${perSecond(turnRate(knots, bank))}°/s`,
});
