import type * as v from "valibot";

/** A key that a schema doesn't know, and those it knows in its place. */
export interface StrangeKey {
  readonly path: readonly (string | number)[];
  readonly known: readonly string[];
}

/** Every key that a schema of strict objects doesn't know; the library itself stops at an object's first. */
export function strangeKeys(schema: v.GenericSchema, value: unknown, path: StrangeKey["path"] = []): StrangeKey[] {
  if (typeof value !== "object" || value === null) return [];
  const entries = Object.entries(value);
  const under = (part: v.GenericSchema | undefined, key: string | number, each: unknown) =>
    part ? strangeKeys(part, each, [...path, key]) : [];
  const { type, entries: own, value: each, item, wrapped, getter } = schema as Parts;
  if (wrapped) return strangeKeys(wrapped, value, path);
  if (getter) return strangeKeys(getter(value), value, path);
  if (Array.isArray(value)) return value.flatMap((part, i) => under(item, i, part));
  if (type === "record") return entries.flatMap(([key, part]) => under(each, key, part));
  if (type !== "strict_object" || !own) return [];
  const known = Object.keys(own);
  return entries.flatMap(([key, part]) =>
    Object.hasOwn(own, key) ? under(own[key], key, part) : [{ path: [...path, key], known }],
  );
}

/** The parts of the library's schemas that lead to schemas within. */
type Parts = v.GenericSchema & {
  readonly entries?: Readonly<Record<string, v.GenericSchema>>;
  readonly value?: v.GenericSchema;
  readonly item?: v.GenericSchema;
  readonly wrapped?: v.GenericSchema;
  readonly getter?: (input: unknown) => v.GenericSchema;
};
