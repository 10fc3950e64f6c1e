import type { ChoiceField, Field, NumberField, Section, TextField } from "./field.ts";

const number = (
  section: Section,
  key: string,
  label: string,
  [unit, from, to]: readonly [unit: string, from: number, to: number],
  more: Pick<NumberField, "note" | "main"> = {},
): NumberField => ({
  kind: "number",
  id: `aircraft.${key}`,
  path: ["aircraft", "numbers", key],
  section,
  label,
  unit,
  from,
  to,
  ...more,
});

const text = (key: string, label: string, longest: number, note: string): TextField => ({
  kind: "text",
  id: `aircraft.${key}`,
  path: ["aircraft", key],
  section: "names",
  label,
  longest,
  note,
});

const names: readonly Field[] = [
  text("title", "Aeroplane", 40, "the name that figures and chapters give it"),
  text("owner", "Whose numbers", 60, "stands on every page and print"),
  { ...text("manual", "From the flight manual", 80, "its edition and date"), optional: true },
];

const main = true;
const speeds: readonly Field[] = [
  number("speeds", "stall", "Stalling speed", ["kt", 25, 100], {
    main,
    note: "indicated; flaps up, wings level, at the greatest mass",
  }),
  number("speeds", "approach", "Approach speed", ["kt", 35, 160], { main, note: "indicated" }),
  number("speeds", "climb", "Climbing speed", ["kt", 35, 200], { main, note: "indicated, at the lowest altitude" }),
  number("speeds", "cruise", "Cruise, true airspeed", ["kt", 40, 250], {
    main,
    note: "at the cruise altitude in the standard atmosphere",
  }),
  number("speeds", "cruiseIas", "Cruise, indicated", ["kt", 40, 250], { main, note: "what the needle shows there" }),
  number("speeds", "cruiseAltitude", "Cruise altitude", ["ft", 0, 15_000], { main }),
  number("speeds", "descent", "Descent speed", ["kt", 40, 250], { note: "indicated, in the cruise descent" }),
  number("speeds", "descentRate", "Rate of descent", ["ft/min", 100, 2000], {
    main,
    note: "in the cruise descent, without its sign",
  }),
  number("speeds", "neverExceed", "Never-exceed speed", ["kt", 60, 400], { main, note: "indicated" }),
];

const limits: readonly Field[] = [
  number("limits", "bankLimit", "Bank limit, level", ["deg", 10, 60], {
    main,
    note: "the school’s own on instruments, not the aeroplane’s",
  }),
  number("limits", "climbBankLimit", "Bank limit, climbing", ["deg", 5, 45], { note: "the school’s own" }),
  number("limits", "rollRate", "Rate of roll-out", ["deg/s", 1, 20], { main, note: "as the school flies it" }),
  number("limits", "rollInRate", "Rate of roll-in", ["deg/s", 1, 20], { note: "as the school flies it" }),
  number("limits", "extraLoad", "Comfortable extra load", ["g", 0.01, 0.3], { note: "beyond 1 g, in a level-off" }),
  number("limits", "lag", "Lag of the vertical speed indicator", ["s", 0.2, 15], {
    note: "time constant: after it the needle shows 63 per cent of a change",
  }),
  number("limits", "altitudeFrom", "Lowest altitude of these numbers", ["ft", -1000, 10_000]),
  number("limits", "altitudeTo", "Highest altitude of these numbers", ["ft", 1000, 20_000]),
];

const gyros = { vacuum: "vacuum", electrical: "electrical" };
const pitot = { "pitot-static": "pitot and static", electrical: "an electrical display behind them" };
const still = { static: "static", electrical: "an electrical display behind it" };

const drive = (key: string, label: string, choices: ChoiceField["choices"]): ChoiceField => ({
  kind: "choice",
  id: `aircraft.drives.${key}`,
  path: ["aircraft", "drives", key],
  section: "drives",
  label,
  choices,
});

const drives: readonly Field[] = [
  drive("attitude", "Attitude indicator", gyros),
  drive("heading", "Heading indicator", gyros),
  drive("turn", "Turn indicator", gyros),
  drive("airspeed", "Airspeed indicator", pitot),
  drive("altitude", "Altimeter", still),
  drive("verticalSpeed", "Vertical speed indicator", still),
];

/** The aeroplane's fields but for its table of phases. */
export const aircraftFields: readonly Field[] = [...names, ...speeds, ...limits, ...drives];
