import { type RoomsOfFacts, rooms } from "../facts.ts";
import type { Facts } from "../known.ts";
import type { School } from "./school.ts";

/** A school as a browser keeps it: its file, and what was read of it. */
export interface KeptSchool {
  readonly version: number;
  /** The YAML of its file. */
  readonly text: string;
  readonly school: School;
}

/** The version of what is kept; another edition may keep it otherwise. */
export const KEPT = 1;

/** What was kept, if it has that shape still: storage may hold anything. */
export function keptFrom(json: string): KeptSchool | undefined {
  try {
    const kept = JSON.parse(json) as Partial<KeptSchool> | null;
    if (kept?.version !== KEPT || typeof kept.text !== "string") return undefined;
    const { school } = kept;
    if (!school || !rooms.every((room) => isFacts(school[room]))) return undefined;
    if (!isRecord(school.aircraft.drives) || !isRecord(school.technique.orders)) return undefined;
    return kept as KeptSchool;
  } catch {
    return undefined;
  }
}

/** Whether a school has every fact that a page was built with, each in its unit: nothing of another's is mixed in. */
export const answersFor = (school: RoomsOfFacts, page: RoomsOfFacts): boolean =>
  rooms.every((room) =>
    Object.entries(page[room]?.facts ?? {}).every(([name, { value, unit }]) => {
      const own = school[room]?.facts;
      return own && Object.hasOwn(own, name) && own[name]!.unit === unit && typeof own[name]!.value === typeof value;
    }),
  );

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

function isFacts(value: unknown): value is Facts {
  if (!isRecord(value) || typeof value["title"] !== "string" || typeof value["owner"] !== "string") return false;
  return (
    isRecord(value["facts"]) &&
    Object.values(value["facts"]).every(
      (fact) =>
        isRecord(fact) &&
        typeof fact["unit"] === "string" &&
        (typeof fact["value"] === "string" || Number.isFinite(fact["value"])),
    )
  );
}
