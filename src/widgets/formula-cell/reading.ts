import type { Argument } from "../../calc/index.ts";
import { type Reading, readReply } from "../../cells/exercises/reply.ts";
import { looseNumber } from "../../cells/printed.ts";
import { withUnit } from "./wording.ts";

/** What a field holds, and how it was read where that isn't plain to see; or why it can't be read. */
export type FieldReading =
  | { readonly value: number | string; readonly read?: string }
  | { readonly unreadable: string };

/** A field's text in its argument's unit: '110', '60 m' for feet, '50 %'. Left empty, it holds the default. */
export function readField(text: string, argument: Argument): FieldReading {
  if (argument.options) return { value: text };
  if (text.trim() === "" && argument.default !== undefined) return leftOut(argument.default, argument);
  const reply = readReply(text, { unit: argument.unit, circle: false });
  if ("unreadable" in reply) return reply;
  const reading = reply.readings.find((each) => isWithin(each, argument)) ?? reply.readings[0]!;
  const asTyped = reading.typed.unit === argument.unit && reading.value === reading.typed.value;
  if (asTyped && reply.readings.length === 1) return { value: reading.value };
  return { value: reading.value, read: `= ${withUnit(looseNumber(reading.value), argument.unit)}` };
}

const isWithin = ({ value }: Reading, { from = -Infinity, to = Infinity }: Argument): boolean =>
  value >= from && value <= to;

function leftOut(value: number | string, { unit }: Argument): FieldReading {
  if (typeof value === "string") return { value };
  return { value, read: value === Infinity ? "left out: no end" : `left out: ${withUnit(looseNumber(value), unit)}` };
}
