/** How a value is printed. */
export interface Print {
  /** A unit of `convert`, 'kg/m3', or 'plain'. */
  readonly unit: string;
  /** Digits after the point, always as many. */
  readonly digits: number;
  /** A direction: 001 to 360. */
  readonly circle?: boolean;
}

/**
 * A value with its unit: '0.49 NM', '15°', '3.08 °/s', '2,400 ft', '−5 °C', '360°'. Minus is U+2212, the space before
 * a unit doesn't break, zero has no sign, an infinite value is 'no end' and one that isn't a number '—'.
 * Halves are rounded away from zero, on the shortest decimal that stands for the value: 1.005 to two digits is 1.01.
 * No part of it depends on the engine or its language.
 */
export function printed(value: number, print: Print): string {
  const { number, unit } = printedParts(value, print);
  return number + (unit === "" || unit === "°" ? "" : SPACE) + unit;
}

/** The same in two parts, for readouts that set the number large and the unit small. */
export function printedParts(value: number, { unit, digits, circle = false }: Print): { number: string; unit: string } {
  if (Number.isNaN(value)) return { number: "—", unit: "" };
  if (!Number.isFinite(value)) return { number: "no end", unit: "" };
  const number = circle ? direction(value, digits) : signed(value, grouped(rounded(value, digits)));
  return { number, unit: unitSign(unit) };
}

/** Characters to reserve for a value that runs between two ends, as 'ch'. */
export const widest = (print: Print, from: number, to: number): number =>
  Math.max(printed(from, print).length, printed(to, print).length);

/**
 * A number for a line of arithmetic: whole digits all, and four significant figures at most where it has a fraction;
 * no trailing zeros, no exponent, no commas: '95', '12346', '48.87', '0.001234'.
 */
export function looseNumber(value: number): string {
  if (Number.isNaN(value)) return "—";
  if (!Number.isFinite(value)) return value < 0 ? "−∞" : "∞";
  const size = Math.abs(value);
  const before = size === 0 ? 1 : Number(size.toExponential(3).split("e")[1]) + 1;
  const text = rounded(value, Math.max(0, 4 - before));
  return signed(value, text.includes(".") ? text.replace(/\.?0+$/, "") : text);
}

/** A unit as it is printed: '°/s' for 'deg/s', nothing for 'plain'. */
export const unitSign = (unit: string): string => SIGNS.get(unit) ?? unit;

/** A unit as it is spoken: 'knots', 'degrees a second'; nothing for a plain number. */
export const unitWords = (unit: string): string => spokenUnits.get(unit)?.many ?? unit;

/** The text with no break between a number and a unit after it. */
export const unbroken = (text: string): string => text.replace(BEFORE_UNIT, `$1${SPACE}`);

/** A unit in words, for one and for several. */
export interface SpokenUnit {
  readonly one: string;
  readonly many: string;
}

const SPACE = "\u00a0";

const SIGNS: ReadonlyMap<string, string> = new Map([
  ["plain", ""],
  ["deg", "°"],
  ["deg/s", "°/s"],
  ["degC", "°C"],
  ["degF", "°F"],
  ["kg/m3", "kg/m³"],
]);

/** Words of every unit that is printed, by its name. */
export const spokenUnits: ReadonlyMap<string, SpokenUnit> = new Map(
  (
    [
      ["plain", "", ""],
      ["kt", "knot", "knots"],
      ["m/s", "metre a second", "metres a second"],
      ["km/h", "kilometre an hour", "kilometres an hour"],
      ["ft/min", "foot a minute", "feet a minute"],
      ["ft", "foot", "feet"],
      ["m", "metre", "metres"],
      ["NM", "nautical mile", "nautical miles"],
      ["km", "kilometre", "kilometres"],
      ["mi", "statute mile", "statute miles"],
      ["hPa", "hectopascal", "hectopascals"],
      ["inHg", "inch of mercury", "inches of mercury"],
      ["degC", "degree Celsius", "degrees Celsius"],
      ["degF", "degree Fahrenheit", "degrees Fahrenheit"],
      ["K", "kelvin", "kelvins"],
      ["deg", "degree", "degrees"],
      ["rad", "radian", "radians"],
      ["deg/s", "degree a second", "degrees a second"],
      ["kt/s", "knot a second", "knots a second"],
      ["ft/NM", "foot a nautical mile", "feet a nautical mile"],
      ["s", "second", "seconds"],
      ["min", "minute", "minutes"],
      ["h", "hour", "hours"],
      ["g", "g", "g"],
      ["kg/m3", "kilogram a cubic metre", "kilograms a cubic metre"],
    ] as const
  ).map(([unit, one, many]) => [unit, { one, many }]),
);

const BEFORE_UNIT = new RegExp(
  `(\\d) (?=(?:${[...spokenUnits.keys()].map(unitSign).filter(Boolean).join("|")})(?![A-Za-z]))`,
  "g",
);

/** The size of a value with so many digits after the point, without sign or commas. */
function rounded(value: number, digits: number): string {
  const [mantissa, exponent] = Math.abs(value).toExponential().split("e") as [string, string];
  const scaled = Math.round(Number(`${mantissa}e${Number(exponent) + digits}`));
  const whole = Number.isSafeInteger(scaled)
    ? String(scaled)
    : String(BigInt(Math.round(Math.abs(value)))) + "0".repeat(digits);
  const text = whole.padStart(digits + 1, "0");
  return digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

function grouped(text: string): string {
  const [whole, ...fraction] = text.split(".") as [string, ...string[]];
  return [whole.replace(/\B(?=(\d{3})+$)/g, ","), ...fraction].join(".");
}

const signed = (value: number, text: string): string => (value < 0 && /[1-9]/.test(text) ? `−${text}` : text);

/** 001 to 360: north is 360, also where it comes of rounding. */
function direction(value: number, digits: number): string {
  const onCircle = ((value % 360) + 360) % 360;
  const text = rounded(onCircle, digits);
  const [whole, ...fraction] = (/[1-9]/.test(text) ? text : rounded(360, digits)).split(".") as [string, ...string[]];
  return [whole.padStart(3, "0"), ...fraction].join(".");
}
