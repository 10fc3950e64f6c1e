import { type Fit, fitExtraLoad, fitLag, fitRollRate, OutOfRange } from "../../calc/index.ts";
import { printed, unitSign } from "../../cells/printed.ts";
import { typedNumber } from "../live-steps.ts";

/** What is noted in a column. */
export interface Noted {
  readonly label: string;
  readonly unit: string;
}

/** A constant that readings noted in flight give, and where it goes in the form. */
export interface Fitting {
  readonly key: "roll" | "load" | "lag";
  readonly title: string;
  /** How the readings are taken. */
  readonly how: string;
  readonly columns: readonly Noted[];
  /** A number that all readings share. */
  readonly shared?: Noted;
  readonly unit: string;
  readonly digits: number;
  /** Fields of the form → the words of the button that fills each. */
  readonly into: Readonly<Record<string, string>>;
  readonly fit: (readings: readonly (readonly number[])[], shared: number) => Fit;
}

/** Rows that each fitting has room for. */
export const ROWS = 6;

export const fittings: readonly Fitting[] = [
  {
    key: "roll",
    title: "Rate of roll",
    how: "The bank each roll-out began with, and the seconds until the wings were level.",
    columns: [
      { label: "Bank", unit: "deg" },
      { label: "Time", unit: "s" },
    ],
    unit: "deg/s",
    digits: 1,
    into: { "aircraft.rollRate": "Use as rate of roll-out", "aircraft.rollInRate": "Use as rate of roll-in" },
    fit: (readings) => fitRollRate(readings.map(([bank, time]) => ({ bank: bank!, time: time! }))),
  },
  {
    key: "load",
    title: "Extra load",
    how: "The vertical speed before each level-off, and the altitudes at which it began and ended.",
    columns: [
      { label: "Vertical speed", unit: "ft/min" },
      { label: "Began", unit: "ft" },
      { label: "Ended", unit: "ft" },
    ],
    unit: "g",
    digits: 3,
    into: { "aircraft.extraLoad": "Use as extra load" },
    fit: (readings) =>
      fitExtraLoad(
        readings.map(([verticalSpeed, began, ended]) => ({
          verticalSpeed: verticalSpeed!,
          height: Math.abs(ended! - began!),
        })),
      ),
  },
  {
    key: "lag",
    title: "Lag of the vertical speed indicator",
    how: "After a quick change from level to a steady vertical speed: what the needle showed, and how long after.",
    shared: { label: "Steady vertical speed", unit: "ft/min" },
    columns: [
      { label: "After", unit: "s" },
      { label: "Shown", unit: "ft/min" },
    ],
    unit: "s",
    digits: 1,
    into: { "aircraft.lag": "Use as lag" },
    fit: (readings, steady) => {
      const turned = Math.sign(steady) || 1;
      return fitLag(
        Math.abs(steady),
        readings.map(([time, shown]) => ({ time: time!, shown: shown! * turned })),
      );
    },
  },
];

/** What readings as typed come to: a constant in words and as an entry for the form, or what is wanting. */
export type Outcome = { readonly words: string; readonly entry: string } | { readonly wants: string };

/** Empty rows are left out; two whole ones are the least, and a row that is half filled or no number is named. */
export function outcomeOf(fitting: Fitting, rows: readonly (readonly string[])[], shared = ""): Outcome {
  const readings: number[][] = [];
  for (const [at, row] of rows.entries()) {
    if (row.every((text) => text.trim() === "")) continue;
    const numbers = row.map((text) => typedNumber(text));
    const wrong = numbers.indexOf(undefined);
    if (wrong >= 0) return { wants: `Reading ${at + 1}: ${fitting.columns[wrong]!.label.toLowerCase()} is no number.` };
    readings.push(numbers as number[]);
  }
  const steady = fitting.shared ? typedNumber(shared) : 0;
  if (readings.length < 2) return { wants: "Two readings at least; six show how far they scatter." };
  if (steady === undefined) return { wants: `${fitting.shared!.label} is wanted.` };
  return attempt(fitting, readings, steady);
}

function attempt(fitting: Fitting, readings: readonly (readonly number[])[], steady: number): Outcome {
  try {
    const fit = fitting.fit(readings, steady);
    return { words: wordsOf(fitting, fit, readings.length), entry: String(Number(fit.value.toFixed(fitting.digits))) };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { quantity, message } = error;
    return { wants: `${quantity.charAt(0).toUpperCase()}${message.slice(1)}.` };
  }
}

function wordsOf({ unit, digits }: Fitting, { value, low, high }: Fit, count: number): string {
  const end = (x: number) => printed(x, { unit: "plain", digits });
  const range = Number.isFinite(high)
    ? `between ${end(low)} and ${printed(high, { unit, digits })}`
    : `at least ${end(low)}\u00a0${unitSign(unit)}`;
  return `${printed(value, { unit, digits })}; ${range} with 95 per cent confidence, from ${count} readings`;
}
