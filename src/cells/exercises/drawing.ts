import { rooms } from "../facts.ts";
import { type QuantityEntry, quantities, quantityOf } from "../quantities.ts";
import { nearest, quoted } from "../reading/near.ts";
import type { Measured } from "./exercise.ts";
import type { Drawn, SheetEntry } from "./names.ts";
import type { Report } from "./report.ts";
import { decimalsOf, stepsOf } from "./seed.ts";
import type { WrittenDraw } from "./shape.ts";
import { isUnit } from "./spelling.ts";

/** More values than any exercise needs, and few enough to count exactly. */
const MOST_STEPS = 1_000_000;
const FINEST = 6;
const RESERVED: readonly string[] = ["answer", "if", "and", "or", "not", "true", "false", ...rooms];

/** The draws of an exercise, each with the measure of the quantity it names or states. */
export const readDraws = (
  draws: Readonly<Record<string, WrittenDraw>>,
  sheet: readonly SheetEntry[],
  report: Report,
): Drawn[] => Object.entries(draws).flatMap(([name, draw]) => readDraw(name, draw, sheet, report) ?? []);

function readDraw(name: string, draw: WrittenDraw, sheet: readonly SheetEntry[], report: Report): Drawn | undefined {
  if (RESERVED.includes(name)) {
    report.atKey(["draw", name], `${quoted(name)} has a meaning of its own`, "draw under another name");
    return undefined;
  }
  const values = valuesOf(name, draw, report);
  const measure = values && (typeof values[0] === "string" ? word(name, draw) : measureOf(name, draw, sheet, report));
  if (!values || !measure) return undefined;
  const quantity = quantityOf(draw.quantity ?? name);
  if (quantity?.unit === measure.unit) inRange(name, values, quantity, report);
  const { from, to, step } = draw as { from: number; to: number; step: number };
  return { draw: "list" in draw ? { name, list: draw.list } : { name, from, to, step }, measure };
}

/** The values of a list, or the ends of a grid; undefined where they make no sense. */
function valuesOf(name: string, draw: WrittenDraw, report: Report): readonly (number | string)[] | undefined {
  const wrong = (key: string, message: string, mend: string): undefined =>
    report.at(["draw", name, key], message, mend);
  if ("list" in draw) {
    if (new Set(draw.list.map((value) => typeof value)).size === 1) return draw.list;
    report.at(["draw", name], "a list mixes numbers and words", "list numbers only, or words only");
    return undefined;
  }
  const { from, to, step } = draw;
  if (!(step > 0)) return wrong("step", "the step must be over 0", "write how far apart the values are");
  if (!(to >= from)) return wrong("to", "'to' lies below 'from'", "write the lower end as from");
  if (stepsOf(draw) > MOST_STEPS) return wrong("step", "there are too many values to draw from", "write a larger step");
  if (decimalsOf(step) > FINEST) return wrong("step", `this has over ${FINEST} digits after the point`, "write fewer");
  if (decimalsOf(from) > FINEST) return wrong("from", `this has over ${FINEST} digits after the point`, "write fewer");
  return [from, to];
}

const word = (name: string, { label }: WrittenDraw): Measured => ({
  label: label ?? name,
  unit: "word",
  digits: 0,
  circle: false,
});

/** How drawn numbers are printed: as the draw says, else as its quantity, else as the given that it shadows. */
function measureOf(
  name: string,
  draw: WrittenDraw,
  sheet: readonly SheetEntry[],
  report: Report,
): Measured | undefined {
  const shadowed = draw.quantity === undefined ? sheet.find((each) => each.name === name) : undefined;
  const known = shadowed ?? quantityOf(draw.quantity ?? name);
  const unit = draw.unit ?? known?.unit;
  if (unit === undefined || (draw.quantity !== undefined && !known)) return unknown(name, draw, report);
  if (unit !== "plain" && !isUnit(unit)) {
    report.at(
      ["draw", name, "unit"],
      `${quoted(unit)} is no unit known here`,
      "write a unit such as kt, ft or deg, or plain",
    );
    return undefined;
  }
  const alike = known?.unit === unit ? known : undefined;
  const written = ("list" in draw ? draw.list : [draw.from, draw.step]) as readonly number[];
  const digits = draw.digits ?? Math.max(alike?.digits ?? 0, ...written.map(decimalsOf));
  return { label: draw.label ?? known?.label ?? name, unit, digits, circle: alike?.circle ?? false };
}

function unknown(name: string, { quantity }: WrittenDraw, report: Report): undefined {
  const near = nearest(quantity ?? name, Object.keys(quantities));
  const meant = near === undefined ? "" : `did you mean '${near}'? Else `;
  if (quantity !== undefined)
    report.at(["draw", name, "quantity"], `there is no quantity ${quoted(quantity)}`, `${meant}state its unit instead`);
  else
    report.atKey(
      ["draw", name],
      `${quoted(name)} shadows no given and is no quantity`,
      `${meant}state its quantity or its unit`,
    );
}

function inRange(
  name: string,
  values: readonly (number | string)[],
  { from, to, label }: QuantityEntry,
  report: Report,
): void {
  const beyond = values.find((value) => typeof value === "number" && (value < from || value > to));
  if (beyond === undefined) return;
  report.at(["draw", name], `${beyond} lies outside ${from} to ${to}, the range of ${label}`, "draw within it");
}
