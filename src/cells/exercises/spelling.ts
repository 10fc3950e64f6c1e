import { convert, type Unit, type UnitKind, unitKind, units } from "../../calc/index.ts";

/** What an answer or a reply measures. */
export type Kind = UnitKind | "plain";

/** A unit as a reader may spell it: so many of a unit that `convert` knows. */
export interface Spelt {
  readonly unit: string;
  readonly size: number;
}

const spellings: Readonly<Record<string, string>> = {
  kt: "kt kts kn knot knots nm/h nmi/h",
  ft: "ft feet foot '",
  m: "m metre metres meter meters",
  NM: "nm nmi nauticalmile nauticalmiles",
  km: "km kilometre kilometres kilometer kilometers",
  mi: "mi sm statutemile statutemiles",
  hPa: "hpa hectopascal hectopascals mb mbar mbars millibar millibars",
  inHg: "inhg inchofmercury inchesofmercury inchesmercury",
  degC: "°c c degc celsius degcelsius degreecelsius degreescelsius",
  degF: "°f f degf fahrenheit degfahrenheit degreefahrenheit degreesfahrenheit",
  K: "k kelvin kelvins",
  deg: "° deg degs degree degrees",
  rad: "rad rads radian radians",
  s: "s sec secs second seconds",
  min: "min mins minute minutes",
  h: "h hr hrs hour hours",
  g: "g gs",
  "m/s": "mps",
  "km/h": "kph kmh",
  "ft/min": "fpm",
  "deg/s": "dps",
};

const byWord = new Map(
  Object.entries(spellings).flatMap(([unit, words]) => words.split(" ").map((word) => [word, unit])),
);

/** Spellings that mean something else where such a kind is wanted; undefined: the unit that is wanted. */
const meant: Partial<Record<Kind, Readonly<Record<string, string | undefined>>>> = {
  time: { m: "min", "'": "min", '"': "s" },
  length: { mile: "NM", miles: "NM" },
  temperature: { "°": undefined, deg: undefined, degs: undefined, degree: undefined, degrees: undefined },
  pressure: { in: "inHg", inch: "inHg", inches: "inHg", '"': "inHg" },
};

/**
 * The unit that a plain, lower-case text spells, or nothing.
 *
 * @param wanted the answer's unit: 'm' is minutes where a time is wanted, '°' is °C where a temperature is
 */
export function speltUnit(text: string, wanted: string): Spelt | undefined {
  const word = text
    .replaceAll(".", "")
    .replace(/ ?(?:\/|\b(?:per|an?)\b) ?/, "/")
    .replaceAll(" ", "");
  const special = meant[kindOf(wanted)] ?? {};
  if (Object.hasOwn(special, word)) return { unit: special[word] ?? wanted, size: 1 };
  if (word === "%") return { unit: "plain", size: 0.01 };
  const whole = byWord.get(word);
  if (whole) return { unit: whole, size: 1 };
  if (word === "mph" || word === "mi/h") return { unit: "km/h", size: convert(1, "mi", "km") };
  const ratio = word.split("/").map((part) => byWord.get(part) ?? part);
  return ratio.length === 2 && isUnit(ratio.join("/")) ? { unit: ratio.join("/"), size: 1 } : undefined;
}

/** What a unit measures; everything that `convert` doesn't know is a plain number. */
export const kindOf = (unit: string): Kind => (isUnit(unit) ? unitKind(unit) : "plain");

/** Whether `convert` knows the unit. */
export const isUnit = (unit: string): unit is Unit => (units as readonly string[]).includes(unit);

/** A value in another unit of its kind; a plain number stays itself. */
export const converted = (value: number, from: string, to: string): number =>
  isUnit(from) && isUnit(to) ? convert(value, from, to) : value;

const kinds: Readonly<Record<Kind, string>> = {
  speed: "a speed",
  length: "a length",
  pressure: "a pressure",
  temperature: "a temperature",
  angle: "an angle",
  rate: "a rate of turn",
  acceleration: "an acceleration",
  gradient: "a gradient",
  time: "a time",
  load: "a load factor",
  plain: "a plain number",
};

/** What a unit measures, in words: 'a speed'. */
export const kindInWords = (unit: string): string => kinds[kindOf(unit)];

const names: Readonly<Record<string, string>> = { deg: "degrees", "deg/s": "degrees a second", degC: "°C", degF: "°F" };

/** 'a speed is wanted, in kt'. */
export const wantedInWords = (unit: string): string =>
  kindOf(unit) === "plain"
    ? `${kindInWords(unit)} is wanted`
    : `${kindInWords(unit)} is wanted, in ${names[unit] ?? unit}`;
