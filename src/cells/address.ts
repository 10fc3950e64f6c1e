import type { Given } from "./chapter.ts";
import { printed } from "./printed.ts";
import { quantityOf } from "./quantities.ts";

/** What `addressOf` asks of a worksheet. */
interface Changed {
  changed(): string[];
  value(name: string): unknown;
}

/** The givens that a reader has changed, as pairs for the address: ['tas', '120']. */
export const addressOf = (worksheet: Changed): [string, string][] =>
  worksheet.changed().map((name) => [name, String(worksheet.value(name))]);

/**
 * Values that an address asks for. What can't be used stays as the chapter gives it, and a notice says so; an address
 * may come from anywhere, so nothing of it is repeated but a number that was read.
 *
 * @param pairs the address's pairs that are meant for quantities; of a name that stands twice, the first counts
 * @returns values of known givens, within their quantity's own range though it may be beyond the chapter's
 */
export function fromAddress(
  given: readonly Given[],
  pairs: Iterable<readonly [string, string]>,
): { values: Record<string, number>; notices: string[] } {
  const asked = new Map<string, string>();
  let unknown = false;
  for (const [name, text] of pairs) {
    if (!given.some((each) => each.name === name)) unknown = true;
    else if (!asked.has(name)) asked.set(name, text);
  }
  const values: [string, number][] = [];
  const notices = unknown ? ["The address names quantities that this page doesn’t have; they are left out."] : [];
  for (const each of given) {
    const text = asked.get(each.name);
    if (text === undefined) continue;
    const value = readNumber(text);
    const notice = refusal(each, value);
    if (notice) notices.push(notice);
    else values.push([each.name, value]);
  }
  return { values: Object.fromEntries(values), notices };
}

const LONGEST = 30;
const NUMBER = /^-?\d+(\.\d+)?(e[+-]?\d+)?$/;

/** The number that a text is, or NaN. */
const readNumber = (text: string): number => (text.length <= LONGEST && NUMBER.test(text) ? Number(text) : Number.NaN);

/** Why a value can't be used, in a sentence; nothing where it can. */
function refusal(given: Given, value: number): string | undefined {
  const stays = `${printed(given.value, given)} is used`;
  if (!Number.isFinite(value)) return `${given.label}: what the address asks for is no number; ${stays}.`;
  const { from, to } = quantityOf(given.quantity) ?? given;
  if (value >= from && value <= to) return undefined;
  const line = { ...given, circle: false };
  const asked = String(value).replaceAll("-", "−");
  return `${given.label}: the address asks for ${asked}, outside ${printed(from, line)} to ${printed(to, line)}; ${stays}.`;
}
