import type { Numeral } from "./numeral.ts";
import { kindOf } from "./spelling.ts";

const HOURS = "(?:h|hr|hrs|hours?)";
const MINUTES = "(?:m|min|mins|minutes?|')";
const SECONDS = '(?:s|sec|secs|seconds?|")';
const CLOCK = new RegExp(`^(\\d+):(\\d\\d)(?::(\\d\\d))?(?:[.,](\\d+))?(?: ?(${HOURS}|${MINUTES}|${SECONDS}))?$`);
const MINUTES_SECONDS = new RegExp(`^(\\d+) ?${MINUTES} ?(\\d+)(?:[.,](\\d+))? ?${SECONDS}?$`);
const HOURS_MINUTES = new RegExp(`^(\\d+) ?${HOURS} ?(\\d+) ?${MINUTES}?$`);

/**
 * A time of two or three parts, in seconds: 1:30, 1 min 30 s, 1 h 10 min, 1:05:30. Two parts by a colon are minutes and
 * seconds, unless hours are wanted or written. Undefined for any other text.
 */
export function durationIn(text: string, wanted: string): Numeral | "other kind" | undefined {
  const isTime = kindOf(wanted) === "time";
  const [, first = "", second = "", third, decimals = "", unit = wanted] = CLOCK.exec(text) ?? [];
  if (first !== "") {
    if (!isTime) return "other kind";
    if (third !== undefined) return seconds([first, second, third], decimals);
    return new RegExp(`^${HOURS}$`).test(unit)
      ? seconds([first, second, "0"], "")
      : seconds(["0", first, second], decimals);
  }
  if (!isTime) return undefined;
  const [, minutes = "", rest = "", tenths = ""] = MINUTES_SECONDS.exec(text) ?? [];
  if (minutes !== "") return seconds(["0", minutes, rest], tenths);
  const [, hours = "", after = ""] = HOURS_MINUTES.exec(text) ?? [];
  return hours === "" ? undefined : seconds([hours, after, "0"], "");
}

/** Undefined where minutes or seconds reach 60 beside a larger part. */
function seconds(parts: readonly [string, string, string], decimals: string): Numeral | undefined {
  const [hours, minutes, rest] = parts.map(Number) as [number, number, number];
  if (rest >= 60 || (hours > 0 && minutes >= 60)) return undefined;
  const value = Number(`${hours * 3600 + minutes * 60 + rest}.${decimals || "0"}`);
  const figures = parts.join("").replace(/^0+/, "").length + decimals.length;
  return { value, decimals: decimals.length, grains: figures >= 2 ? [Number(`1e${-decimals.length}`)] : [] };
}
