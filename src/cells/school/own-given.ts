import type { Given } from "../chapter.ts";
import { factNamed, type RoomsOfFacts } from "../facts.ts";

/** A chapter's givens with a school's numbers where the chapter names a fact as the default; the range widens to hold it. */
export const givenWith = (given: readonly Given[], school: RoomsOfFacts): readonly Given[] =>
  given.map((each) => {
    const value = each.follows === undefined ? undefined : factNamed(each.follows, school)?.value;
    if (typeof value !== "number" || value === each.value) return each;
    return { ...each, value, from: Math.min(each.from, value), to: Math.max(each.to, value) };
  });
