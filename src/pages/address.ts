import { addressOf, fromAddress } from "../cells/address.ts";
import type { Given } from "../cells/chapter.ts";
import { fingerprintOf } from "../cells/school/fingerprint.ts";
import type { School } from "../cells/school/school.ts";
import type { Worksheet } from "../cells/worksheet.ts";

/** The pair of an address that says whose numbers it was written with; only numbers of one's own are named. */
const WHOSE = "aircraft";

/** Puts what the address names into the worksheet; returns what could not be done, or differs, in words. */
export function restore(worksheet: Worksheet, given: readonly Given[], own?: School): string[] {
  const pairs = [...new URLSearchParams(location.search)];
  const { values, notices } = fromAddress(
    given,
    pairs.filter(([name]) => name !== WHOSE),
  );
  worksheet.setMany(values);
  const whose = pairs.find(([name]) => name === WHOSE)?.[1];
  return [...notices, ...(pairs.length > 0 ? differs(whose, own) : [])];
}

/** A sentence where the address was written with another aircraft's numbers than those that show. */
function differs(whose: string | undefined, own: School | undefined): string[] {
  if (whose === signature(own)) return [];
  const [, owner = ""] = /^(.*)~[0-9a-f]{8}$/.exec(whose ?? "") ?? [];
  // The name may come from anywhere: it is told only where it looks like one.
  const name = /^[\p{L}\p{N}][\p{L}\p{N} ,.'’&()/-]{0,59}$/u.test(owner) ? `“${owner}”` : "another school";
  const theirs = whose === undefined ? "the Dunlin’s numbers" : `the numbers of ${name}`;
  const here = own ? `those of “${own.aircraft.owner}”` : "the Dunlin’s";
  const same = own && owner === own.aircraft.owner ? ", which have changed since" : "";
  return [`This address was written with ${theirs}${same}; what follows from the aircraft shows ${here} here.`];
}

/** The owner and a fingerprint of the numbers, so that two editions of one sheet differ. */
const signature = (own: School | undefined): string | undefined => own && `${own.aircraft.owner}~${fingerprintOf(own)}`;

/** Writes the changed quantities into the address bar, so that it restores the sheet; no step back is added. */
export function write(worksheet: Worksheet, own?: School): void {
  const whose = signature(own);
  const pairs = addressOf(worksheet);
  const search = new URLSearchParams(whose && pairs.length > 0 ? [...pairs, [WHOSE, whose]] : pairs).toString();
  history.replaceState(history.state, "", `${location.pathname}${search ? `?${search}` : ""}${location.hash}`);
}
