import { TIME, TURN_RATE } from "../bounds.ts";
import {
  CANAL_TIME_CONSTANT,
  feltRate,
  feltRateInTurn,
  HELD,
  ROLL_IN,
  ROLL_OUT,
  THRESHOLD,
  timeUntilUnfelt,
} from "../vestibular.ts";
import { argument } from "./argument.ts";
import type { Formula, Step } from "./formula.ts";
import { plain, term } from "./printed.ts";
import { figures, given, size } from "./signs.ts";

const rate = argument(TURN_RATE, { name: "rate", symbol: "\\omega", example: 3 });
const timeConstant = argument(CANAL_TIME_CONSTANT, { name: "timeConstant", symbol: "\\tau", default: 10, example: 10 });
const canal =
  "First-order high-pass of the semicircular canals. Published time constants run from 4 s (cupula alone) to 20 s (perception): a band, never one line.";
const canalSource = "van Egmond, Groen & Jongkees 1949";

export const vestibular: readonly Formula[] = [
  {
    name: "feltRate",
    topic: "vestibular",
    words: "turn rate felt in a steady turn",
    symbol: "q",
    args: [rate, argument(TIME, { name: "time", symbol: "t", example: 20 }), timeConstant],
    result: { unit: "deg/s" },
    digits: 1,
    tex: "\\omega\\,e^{-t/\\tau}",
    call: feltRate,
    steps: (turning: number, time: number, constant: number) => [
      {
        what: "Felt",
        symbol: "q",
        tex: "\\omega\\,e^{-t/\\tau}",
        numbers: `${plain(turning)} × e^(−${plain(time)} / ${plain(constant)})`,
      },
    ],
    kind: "model",
    assumes: `${canal} The turn begins at once.`,
    source: canalSource,
  },
  {
    name: "feltRateInTurn",
    topic: "vestibular",
    words: "turn rate felt in a turn and after it",
    symbol: "q",
    args: [
      rate,
      argument(ROLL_IN, { name: "rollIn", symbol: "t_1", example: 4 }),
      argument(HELD, { name: "hold", symbol: "t_2", example: 56 }),
      argument(ROLL_OUT, { name: "rollOut", symbol: "t_3", example: 4 }),
      argument(TIME, { name: "time", symbol: "t", example: 64 }),
      timeConstant,
    ],
    result: { unit: "deg/s" },
    digits: 1,
    tex: "\\int_0^t \\dot\\omega(s)\\,e^{-(t-s)/\\tau}\\,\\mathrm{d}s",
    call: (turning: number, rollIn: number, hold: number, rollOut: number, time: number, constant?: number) =>
      feltRateInTurn({
        ...{ rate: turning, rollIn, hold, rollOut, time },
        ...(constant === undefined ? {} : { timeConstant: constant }),
      }),
    steps: (turning: number, rollIn: number, hold: number, rollOut: number, time: number, constant: number) => {
      const onset = rampStep("Felt of the roll-in", "q_1", turning, time, rollIn, constant);
      const stop = rampStep("Felt of the roll-out", "q_2", -turning, time - rollIn - hold, rollOut, constant);
      return [
        onset,
        stop,
        {
          what: "Felt",
          symbol: "q",
          tex: "q_1 + q_2",
          numbers: `${onset.comes.slice(0, -3)} + ${term(stop.comes.slice(0, -3))}`,
        },
      ];
    },
    kind: "model",
    assumes: `${canal} The rate rises in a straight line for t₁, stays for t₂ and falls for t₃.`,
    source: canalSource,
  },
  {
    name: "timeUntilUnfelt",
    topic: "vestibular",
    words: "time until a turn is no longer felt",
    symbol: "t",
    args: [rate, argument(THRESHOLD, { name: "threshold", symbol: "\\omega_0", example: 1 }), timeConstant],
    result: { unit: "s" },
    digits: 0,
    tex: "\\tau\\ln\\frac{|\\omega|}{\\omega_0}",
    call: timeUntilUnfelt,
    steps: (turning: number, threshold: number, constant: number) => [
      Math.abs(turning) <= threshold
        ? { what: "Never felt", symbol: "t", numbers: "0" }
        : {
            what: "Time",
            symbol: "t",
            tex: "\\tau\\ln\\frac{|\\omega|}{\\omega_0}",
            numbers: `${plain(constant)} × ln (${size(turning)} / ${plain(threshold)})`,
          },
    ],
    kind: "model",
    assumes: `${canal} Published thresholds run from 0.4 to 3°/s by axis, duration and attention. Nothing is felt of a turn below the threshold.`,
    source: `${canalSource}; thresholds: Benson 1989, Grabherr 2008`,
  },
];

/** What is left of a ramp of the rate that began `since` ago and lasts `duration`. */
function rampStep(
  what: string,
  symbol: string,
  rate: number,
  since: number,
  duration: number,
  constant: number,
): Step & { readonly comes: string } {
  const [ω, τ] = [given(rate), plain(constant)];
  if (since < 0) return { what, symbol, numbers: "0", comes: "0°/s" };
  const risen = Math.min(since, duration);
  const share = duration === 0 ? 1 : (constant / duration) * (1 - Math.exp(-risen / constant));
  const left = rate * share * Math.exp((risen - since) / constant);
  const rise = duration === 0 ? "" : ` × ${τ} / ${plain(duration)} × (1 − e^(−${plain(risen)} / ${τ}))`;
  return {
    what,
    symbol,
    tex: "\\pm\\,\\omega\\,\\tfrac{\\tau}{t_n}\\left(1 - e^{-t_n/\\tau}\\right) e^{-t'/\\tau}",
    numbers: `${ω}${rise} × e^(−${plain(since - risen)} / ${τ})`,
    comes: `${figures(left, 4)}°/s`,
  };
}
