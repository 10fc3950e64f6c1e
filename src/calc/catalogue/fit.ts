import {
  fitExtraLoad,
  fitLag,
  fitRollRate,
  NOTED_BANK,
  NOTED_HEIGHT,
  NOTED_SHOWN,
  NOTED_TIME,
  NOTED_VERTICAL_SPEED,
  SOME_VERTICAL_SPEED,
} from "../fit.ts";
import type { Limits } from "../limits.ts";
import { argument } from "./argument.ts";
import type { Argument, Formula } from "./formula.ts";

const fields = (unit: string) => ({
  fields: { value: { unit }, standardError: { unit }, low: { unit }, high: { unit } },
});
const scatter =
  "The interval from low to high is that of 95 %, as wide as the scatter of so few readings leaves it; it knows nothing of an error common to all.";
const leastSquares = "least squares, Student's t";

export const fit: readonly Formula[] = [
  {
    name: "fitRollRate",
    topic: "panel",
    words: "roll rate from three roll-outs",
    symbol: "p",
    args: readings(
      [NOTED_BANK, "bank", "\\varphi"],
      [NOTED_TIME, "time", "t"],
      [
        [15, 3.1],
        [30, 5.9],
        [20, 4.1],
      ],
    ),
    result: fields("deg/s"),
    digits: 1,
    tex: "\\frac{\\sum\\varphi^2}{\\sum\\varphi\\,t}",
    call: (bank1: number, time1: number, bank2: number, time2: number, bank3: number, time3: number) =>
      fitRollRate([
        { bank: bank1, time: time1 },
        { bank: bank2, time: time2 },
        { bank: bank3, time: time3 },
      ]),
    kind: "exact",
    assumes: `From each bank to wings level at one rate; the watch scatters. ${scatter}`,
    source: leastSquares,
  },
  {
    name: "fitExtraLoad",
    topic: "panel",
    words: "extra load from three level-offs",
    symbol: "\\Delta n",
    args: readings(
      [NOTED_VERTICAL_SPEED, "verticalSpeed", "w"],
      [NOTED_HEIGHT, "height", "h"],
      [
        [500, 22],
        [1000, 80],
        [700, 45],
      ],
    ),
    result: fields("g"),
    digits: 3,
    tex: "\\frac{\\sum x^2}{\\sum x\\,h},\\quad x = \\frac{w^2}{2g}",
    call: (speed1: number, height1: number, speed2: number, height2: number, speed3: number, height3: number) =>
      fitExtraLoad([
        { verticalSpeed: speed1, height: height1 },
        { verticalSpeed: speed2, height: height2 },
        { verticalSpeed: speed3, height: height3 },
      ]),
    kind: "exact",
    assumes: `Height from the beginning of the pull to level; the height scatters. ${scatter}`,
    source: leastSquares,
  },
  {
    name: "fitLag",
    topic: "panel",
    words: "time constant of a vertical speed indicator from three readings",
    symbol: "\\tau",
    args: [
      argument(SOME_VERTICAL_SPEED, { name: "verticalSpeed", symbol: "w", example: 500 }),
      ...readings(
        [NOTED_TIME, "time", "t"],
        [NOTED_SHOWN, "shown", "r"],
        [
          [2, 240],
          [4, 360],
          [8, 480],
        ],
      ),
    ],
    result: fields("s"),
    digits: 1,
    tex: "\\operatorname*{arg\\,min}_\\tau \\sum\\left(r - w\\left(1 - e^{-t/\\tau}\\right)\\right)^2",
    call: (
      verticalSpeed: number,
      time1: number,
      shown1: number,
      time2: number,
      shown2: number,
      time3: number,
      shown3: number,
    ) =>
      fitLag(verticalSpeed, [
        { time: time1, shown: shown1 },
        { time: time2, shown: shown2 },
        { time: time3, shown: shown3 },
      ]),
    kind: "model",
    assumes: `From level flight to a steady vertical speed at once; the instrument follows by first order. ${scatter}`,
    source: leastSquares,
  },
];

type Noted = readonly [limits: Limits, name: string, symbol: string];

/** The arguments of three readings, each of two numbers. */
function readings(first: Noted, second: Noted, examples: readonly (readonly [number, number])[]): Argument[] {
  return examples.flatMap((pair, i) =>
    [first, second].map(([limits, name, symbol], j) =>
      argument(limits, { name: `${name}${i + 1}`, symbol: `${symbol}_{${i + 1}}`, example: pair[j]! }),
    ),
  );
}
