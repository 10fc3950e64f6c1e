import type { Fact, Facts } from "./known.ts";

/** The rooms of dotted names: 'aircraft.cruise', 'place.elevation', 'technique.leadFraction'. */
export const rooms = ["aircraft", "place", "technique"] as const;
export type Room = (typeof rooms)[number];

/** Facts of a school by their rooms; a room that is left out has none. */
export type RoomsOfFacts = Readonly<Partial<Record<Room, Facts>>>;

/** The fact behind a dotted name; undefined where there is none. */
export function factNamed(name: string, known: RoomsOfFacts): Fact | undefined {
  const dot = name.indexOf(".");
  const facts = known[name.slice(0, dot) as Room]?.facts;
  const key = name.slice(dot + 1);
  return rooms.includes(name.slice(0, dot) as Room) && facts && Object.hasOwn(facts, key) ? facts[key] : undefined;
}

/** The dotted names of all facts. */
export const factNames = (known: RoomsOfFacts): string[] =>
  rooms.flatMap((room) => Object.keys(known[room]?.facts ?? {}).map((key) => `${room}.${key}`));
