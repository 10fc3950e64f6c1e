const MOST_TICKS = 15;

/** How many equal parts a slider's ticks divide its range into: whole steps where they fit, never crowded. */
export function rangeTicks(from: number, to: number, step: number): number {
  const steps = (to - from) / step;
  for (const size of [1, 2, 5, 6, 10, 20, 50, 100]) {
    const parts = steps / size;
    if (parts <= MOST_TICKS && Math.abs(parts - Math.round(parts)) < 1e-9) return Math.max(1, Math.round(parts));
  }
  return 10;
}

/** A number as it is typed: a drawn minus, no more digits than it has. */
export const typedText = (value: number): string => String(Math.round(value * 1e6) / 1e6).replace("-", "−");
