import type { Field, NumberField } from "./field.ts";

const number = (
  key: string,
  label: string,
  [unit, from, to]: readonly [unit: string, from: number, to: number],
  more: Pick<NumberField, "note" | "optional"> = {},
): NumberField => ({
  kind: "number",
  id: `place.${key}`,
  path: ["place", "numbers", key],
  section: "place",
  label,
  unit,
  from,
  to,
  ...more,
});

const optional = true;

/** Where the school flies. */
export const placeFields: readonly Field[] = [
  {
    kind: "text",
    id: "place.title",
    path: ["place", "title"],
    section: "names",
    label: "Aerodrome",
    longest: 40,
  },
  { kind: "text", id: "place.owner", path: ["place", "owner"], section: "names", label: "School", longest: 60 },
  number("elevation", "Elevation", ["ft", -1500, 10_000]),
  number("latitude", "Latitude", ["deg", -89, 89], {
    optional,
    note: "south negative; found from the dip where it is left out",
  }),
  number("dip", "Magnetic dip", ["deg", -89, 89], {
    optional,
    note: "positive where the north end dips down; found from the latitude where it is left out",
  }),
  number("variation", "Variation", ["deg", -90, 90], { note: "west negative" }),
  number("floor", "Floor of instrument exercises", ["ft", 0, 15_000], { note: "above mean sea level" }),
  number("qnh", "Pressure setting that exercises start from", ["hPa", 940, 1050]),
  number("runway", "Direction of the longer runway", ["deg", 1, 360], { note: "magnetic" }),
  {
    kind: "choice",
    id: "place.pressureUnit",
    path: ["place", "pressureUnit"],
    section: "place",
    label: "Pressure is set in",
    choices: { hPa: "hectopascals", inHg: "inches of mercury" },
  },
];
