import { printed, printedParts, unitWords } from "../cells/printed.ts";
import type { Readout } from "./figure.ts";

/** '95 kt', '95.5 kt', '15°': a value as it was set, with no more digits than it has, three decimals at most. */
export function asSet(value: number, unit: string): string {
  const digits = [0, 1, 2].find((count) => Number(value.toFixed(count)) === value) ?? 3;
  return printed(value, { unit, digits });
}

/** '3.08 °/s': a computed value. */
export const rounded = (value: number, unit: string, digits: number): string => printed(value, { unit, digits });

/** '+1.9°': a computed error; what rounds to zero has no sign. */
export function signed(value: number, unit: string, digits: number): string {
  const text = printed(value, { unit, digits });
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

/** A readout of a computed value. */
export function readout(
  label: string,
  { value, kept, unit, digits }: { value: number; kept?: number | undefined; unit: string; digits: number },
  more: Pick<Readout, "aside" | "line"> = {},
): Readout {
  return {
    label,
    ...printedParts(value, { unit, digits }),
    spokenUnit: unitWords(unit),
    ...(kept === undefined ? {} : { kept: printed(kept, { unit: unit === "deg" ? unit : "plain", digits }) }),
    ...more,
  };
}

/** The index of the entry nearest a value. */
export function nearest(list: readonly number[], value: number): number {
  let best = 0;
  list.forEach((entry, i) => {
    if (Math.abs(entry - value) < Math.abs(list[best]! - value)) best = i;
  });
  return best;
}
