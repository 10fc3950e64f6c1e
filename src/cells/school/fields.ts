import { aircraftFields } from "./aircraft-fields.ts";
import type { Field } from "./field.ts";
import { phaseFields } from "./phase-fields.ts";
import { placeFields } from "./place-fields.ts";
import { techniqueFields } from "./technique-fields.ts";

/** Every entry of the school's form, in the order of the file. */
export const fields: readonly Field[] = [...aircraftFields, ...phaseFields, ...placeFields, ...techniqueFields];

const byId: ReadonlyMap<string, Field> = new Map(fields.map((field) => [field.id, field]));

/** The field of an id; undefined where there is none. */
export const fieldNamed = (id: string): Field | undefined => byId.get(id);
