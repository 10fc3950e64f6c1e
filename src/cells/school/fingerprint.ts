import { type RoomsOfFacts, rooms } from "../facts.ts";

/** Eight characters that tell one school's numbers from another's; no protection against malice. FNV-1a, 32 bits. */
export function fingerprintOf(school: RoomsOfFacts): string {
  let hash = 0x811c9dc5;
  for (const sign of JSON.stringify(rooms.map((room) => school[room]?.facts)))
    hash = Math.imul(hash ^ sign.codePointAt(0)!, 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, "0");
}
