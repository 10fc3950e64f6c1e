import { isaPressure, rollOutLead, turnRadius } from "../../src/calc/index.ts";
import type { Measured } from "./budget.ts";
import { median } from "./summary.ts";

const rounds = 15;
const calls = 300_000;

/** The same formulas written by hand, without limits: what an evaluation costs at the least. */
const byHand: Record<string, [ours: (x: number) => number, inline: (x: number) => number]> = {
  turnRadius: [
    (tas) => turnRadius(tas, tas / 5),
    (tas) => ((tas * 1852) / 3600) ** 2 / (9.80665 * Math.abs(Math.tan(((tas / 5) * Math.PI) / 180))) / 1852,
  ],
  rollOutLead: [
    (tas) => rollOutLead(tas, tas / 5, 5),
    (tas) =>
      ((9.80665 / (((tas * 1852) / 3600) * ((5 * Math.PI) / 180))) *
        -Math.log(Math.cos(((tas / 5) * Math.PI) / 180)) *
        180) /
      Math.PI,
  ],
  isaPressure: [
    (altitude) => isaPressure(altitude * 100),
    (altitude) =>
      1013.25 * (1 - (0.0065 * altitude * 100 * 0.3048) / 288.15) ** (9.80665 / ((8314.32 / 28.9644) * 0.0065)),
  ],
};

/** Evaluations a second of hot functions, and their cost against the same formula inline, by turns in one run. */
export function measureEvaluating(): Measured[] {
  return Object.entries(byHand).flatMap(([name, [ours, inline]]) => {
    const times = Array.from({ length: rounds }, () => [timed(ours), timed(inline)] as const);
    const [own, hand] = [median(times.map(([a]) => a)), median(times.map(([, b]) => b))];
    return [
      { what: `${name}, evaluations a second`, measured: calls / (own / 1000) / 1e6, unit: "million" },
      { what: `${name}, time against the same formula inline`, measured: own / hand, unit: "" },
    ];
  });
}

let sink = 0;

function timed(formula: (x: number) => number): number {
  const from = performance.now();
  let sum = 0;
  for (let i = 0; i < calls; i++) sum += formula(60 + (i % 100));
  sink += sum;
  if (Number.isNaN(sink)) throw new Error("A formula gave no number");
  return performance.now() - from;
}
