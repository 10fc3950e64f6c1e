import { magneticDip } from "../../calc/compass.ts";
import type { Fact, Facts } from "../known.ts";
import type { Field, FieldValue } from "./field.ts";
import { fields } from "./fields.ts";
import { phases } from "./phase-fields.ts";
import type { OrderName } from "./technique-fields.ts";

/** An aeroplane: its numbers, and what drives each of its instruments. */
export interface Aircraft extends Facts {
  /** 'attitude' → 'vacuum', 'turn' → 'electrical', 'altitude' → 'static' … */
  readonly drives: Readonly<Record<string, string>>;
  /** The edition of the flight manual behind the numbers; '' where none is named. */
  readonly manual: string;
}

/** How a school flies and speaks: numbers and words as facts, and its orders of work. */
export interface Technique extends Facts {
  readonly orders: Readonly<Record<OrderName, readonly string[]>>;
}

/** A school's own: everything that chapters, figures and exercises take from it. */
export interface School {
  readonly aircraft: Aircraft;
  readonly place: Facts;
  readonly technique: Technique;
  readonly words: "british" | "american";
}

/** A group of facts: the first word of a field's id. */
export type Group = "aircraft" | "place" | "technique";

/** What stands in each field, by its id. */
export type Values = ReadonlyMap<string, FieldValue>;

/** A school made of sound values of every field. */
export function schoolOf(values: Values): School {
  const all = withFollowing(values);
  return {
    aircraft: aircraftOf(all),
    place: { title: words(all, "place.title"), owner: words(all, "place.owner"), facts: factsOf("place", all) },
    technique: techniqueOf(all),
    words: all.get("words") === "american" ? "american" : "british",
  };
}

/** The aeroplane alone, of sound values of its fields. */
export function aircraftOf(values: Values): Aircraft {
  const all = withFollowing(values);
  const drives = [...all].flatMap(([id, value]) =>
    id.startsWith("aircraft.drives.") ? [[id.slice("aircraft.drives.".length), String(value)] as const] : [],
  );
  return {
    title: words(all, "aircraft.title"),
    owner: words(all, "aircraft.owner"),
    manual: words(all, "aircraft.manual"),
    facts: factsOf("aircraft", all),
    drives: Object.fromEntries(drives),
  };
}

function techniqueOf(values: Values): Technique {
  const orders = fields.flatMap(({ id, kind }) =>
    kind === "list" ? [[id.slice("technique.orders.".length), values.get(id) as readonly string[]] as const] : [],
  );
  return {
    title: words(values, "place.owner"),
    owner: words(values, "place.owner"),
    facts: factsOf("technique", values),
    orders: Object.fromEntries(orders) as Technique["orders"],
  };
}

/** What stands in each field of a school; the values that made it, but for what was left out and found. */
export function valuesOf({ aircraft, place, technique, words: regional }: School): Values {
  const groups = { aircraft, place, technique };
  const values = fields.flatMap((field): [string, FieldValue][] => {
    const { id } = field;
    if (id === "words") return [[id, regional]];
    if (id === "aircraft.manual") return [[id, aircraft.manual]];
    const dot = id.indexOf(".");
    const group = groups[id.slice(0, dot) as Group];
    const key = id.slice(dot + 1);
    if (key === "title" || key === "owner") return [[id, group[key]]];
    if (field.kind === "list") return [[id, technique.orders[key.slice("orders.".length) as OrderName]]];
    const fact = Object.hasOwn(group.facts, key) ? group.facts[key] : undefined;
    return fact ? [[id, fact.value]] : [];
  });
  return new Map(values);
}

/** Values with those that follow: the rest of the table, and dip or latitude where one was left out. */
function withFollowing(values: Values): Values {
  const all = new Map(values);
  for (const { key, follows } of phases)
    for (const [column, id] of Object.entries(follows)) {
      const value = followed(id, values);
      if (value !== undefined) all.set(`aircraft.phases.${key}.${column}`, value);
    }
  const [latitude, dip] = [values.get("place.latitude"), values.get("place.dip")];
  if (dip === undefined && typeof latitude === "number") all.set("place.dip", tenth(magneticDip(latitude)));
  if (latitude === undefined && typeof dip === "number") all.set("place.latitude", tenth(latitudeOfDip(dip)));
  return all;
}

function followed(id: string, values: Values): FieldValue | undefined {
  if (id === "0") return 0;
  if (!id.startsWith("-")) return values.get(id);
  const value = values.get(id.slice(1));
  return typeof value === "number" ? -value : undefined;
}

/** The magnetic latitude of a dip, degrees: magneticDip turned round. */
const latitudeOfDip = (dip: number): number => (Math.atan(Math.tan((dip * Math.PI) / 180) / 2) * 180) / Math.PI;

const tenth = (value: number): number => Math.round(value * 10) / 10;

const words = (values: Values, id: string): string => String(values.get(id) ?? "");

const columnUnits: Readonly<Record<string, string>> = { speed: "kt", verticalSpeed: "ft/min", power: "word" };

function factsOf(group: Group, values: Values): Readonly<Record<string, Fact>> {
  const units = new Map(fields.map((field) => [field.id, unitOf(field)]));
  const facts = [...values].flatMap(([id, value]): [string, Fact][] => {
    if (!id.startsWith(`${group}.`) || typeof value === "object") return [];
    const key = id.slice(group.length + 1);
    if (key === "title" || key === "owner" || key === "manual") return [];
    return [[key, { value, unit: units.get(id) ?? columnUnits[id.split(".").at(-1)!] ?? "word" }]];
  });
  return Object.fromEntries(facts);
}

const unitOf = (field: Field): string => (field.kind === "number" ? field.unit : "word");
