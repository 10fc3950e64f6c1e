import { addressOf, fromAddress } from "../cells/address.ts";
import type { Given } from "../cells/chapter.ts";
import type { Worksheet } from "../cells/worksheet.ts";

/** Puts what the address names into the worksheet; returns what could not be done, in words. */
export function restore(worksheet: Worksheet, given: readonly Given[]): string[] {
  const { values, notices } = fromAddress(given, [...new URLSearchParams(location.search)]);
  worksheet.setMany(values);
  return notices;
}

/** Writes the changed quantities into the address bar, so that it restores the sheet; no step back is added. */
export function write(worksheet: Worksheet): void {
  const search = new URLSearchParams(addressOf(worksheet)).toString();
  history.replaceState(history.state, "", `${location.pathname}${search ? `?${search}` : ""}${location.hash}`);
}
