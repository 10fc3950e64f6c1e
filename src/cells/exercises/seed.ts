import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import type { Draw } from "./exercise.ts";

export type Stream = RandomGenerator;

/** A stream of chance that the words alone decide, the same on every machine. */
export const streamOf = (...words: readonly string[]): Stream =>
  xoroshiro128plus(hash(words.join("\n").normalize("NFC")));

/** One value of a draw. Whole numbers are drawn and scaled, so that no rounding of the machine's own shows. */
export function pick(stream: Stream, draw: Draw): number | string {
  if ("list" in draw) return draw.list[uniformInt(stream, 0, draw.list.length - 1)]!;
  return onGrid(draw, uniformInt(stream, 0, stepsOf(draw)));
}

/** How many steps a grid takes from its start to the last value not beyond its end. */
export const stepsOf = ({ from, to, step }: { from: number; to: number; step: number }): number =>
  Math.floor((to - from) / step + 1e-9);

/** The digits after the point that a number is written with: 2 for 0.25, 0 for 300. */
export function decimalsOf(value: number): number {
  const [mantissa = "", exponent = "0"] = String(value).split("e");
  return Math.max(0, (mantissa.split(".")[1]?.length ?? 0) - Number(exponent));
}

/** The same things in an order decided by the stream. */
export function shuffled<T>(stream: Stream, things: readonly T[]): T[] {
  const order = [...things];
  for (let last = order.length - 1; last > 0; last--) {
    const other = uniformInt(stream, 0, last);
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
}

function onGrid({ from, step }: { from: number; step: number }, steps: number): number {
  const scale = 10 ** Math.max(decimalsOf(from), decimalsOf(step));
  return (Math.round(from * scale) + steps * Math.round(step * scale)) / scale;
}

/** 32 bits from a string: FNV-1a over its code units, then mixed so that its last letters reach every bit. */
function hash(text: string): number {
  let bits = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) bits = Math.imul(bits ^ text.charCodeAt(at), 0x01000193);
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}
