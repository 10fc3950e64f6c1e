/** The range a hand moves along; a step moves keys and never rounds what was typed. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** A direction whose range is the full circle goes round. */
  readonly circle: boolean;
}

/** Pixels that one step takes, and the most that a whole range takes. */
const PIXELS_A_STEP = 4;
const PIXELS_A_RANGE = 200;

/** The value a key of a slider leads to, or nothing where the key isn't a slider's. */
export function keyed(key: string, value: number, scale: Scale): number | undefined {
  const page = Math.max(1, Math.round((scale.to - scale.from) / 10 / scale.step));
  const steps: Record<string, number> = {
    ArrowRight: 1,
    ArrowUp: 1,
    ArrowLeft: -1,
    ArrowDown: -1,
    PageUp: page,
    PageDown: -page,
  };
  if (key === "Home") return scale.from;
  if (key === "End") return scale.to;
  return Object.hasOwn(steps, key) ? stepped(value, steps[key]!, scale) : undefined;
}

/** A value some steps on, held within the range. */
export function stepped(value: number, steps: number, { from, to, step, circle }: Scale): number {
  const moved = tidy(value + steps * step);
  if (circle && to - from === 360) return tidy(((((moved - from) % 360) + 360) % 360) + from);
  return Math.min(Math.max(to, value), Math.max(Math.min(from, value), moved));
}

/** The value a sideways drag of so many pixels leads to, in whole steps from where it began. */
export function dragged(start: number, pixels: number, scale: Scale): number {
  const perPixel = Math.max(scale.step / PIXELS_A_STEP, (scale.to - scale.from) / PIXELS_A_RANGE);
  return stepped(start, Math.round((pixels * perPixel) / scale.step), scale);
}

/** A typed number: a decimal comma, spaces and commas between thousands, a drawn minus and a unit after it are all read. */
export function typedNumber(text: string): number | undefined {
  const found = /^([+\-−]?)(\d[\d ,.\u00a0\u202f]*|[.,]\d+)\s*[^\d]*$/.exec(text.trim());
  if (!found) return undefined;
  const digits = found[2]!.replace(/[\s\u00a0\u202f]/g, "");
  const plain = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(digits) ? digits.replaceAll(",", "") : digits.replace(",", ".");
  const value = Number(plain);
  return Number.isFinite(value) ? (found[1] === "-" || found[1] === "−" ? -value : value) : undefined;
}

/** A sum of decimals without the dust of binary fractions. */
const tidy = (value: number): number => Math.round(value * 1e9) / 1e9;
