import { DOUBLING_TIME, GLIDE_RATIO, SPIRAL_BANK, TRIM_SPEED } from "../point-mass.ts";
import {
  BETWEEN,
  DELAY,
  DIVE_PATH,
  DIVE_SPEED,
  PULL,
  RECOVERY_ORDERS,
  type RecoveryOrder,
  ROLL_OUT_RATE,
  recoveryCost,
} from "../recovery.ts";
import { SPIRAL_TIME, spiralDive } from "../spiral.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";

const trimSpeed = argument(TRIM_SPEED, { name: "trimSpeed", symbol: "V_0", example: 95 });
const doublingTime = argument(DOUBLING_TIME, { name: "doublingTime", symbol: "T", default: 20, example: 20 });
const liftOverDrag = argument(GLIDE_RATIO, { name: "liftOverDrag", symbol: "L/D", default: 10, example: 10 });
const pointMass =
  "Illustrative, no aeroplane's own: a point mass in air of constant density, trimmed for level flight, angle of attack held; half of the trimmed drag is induced.";
const forces = "balance of forces along and across the path";

export const spiral: readonly Formula[] = [
  {
    name: "spiralDive",
    topic: "panel",
    words: "spiral dive that tightens hands off",
    symbol: "s",
    args: [
      trimSpeed,
      argument(SPIRAL_BANK, { name: "bank", symbol: "\\varphi_0", example: 2 }),
      argument(SPIRAL_TIME, { name: "time", symbol: "t", example: 90 }),
      doublingTime,
      liftOverDrag,
    ],
    result: {
      fields: {
        time: { unit: "s" },
        bank: { unit: "deg" },
        tas: { unit: "kt" },
        pathAngle: { unit: "deg" },
        turned: { unit: "deg" },
        altitude: { unit: "ft" },
        verticalSpeed: { unit: "ft/min" },
        turnRate: { unit: "deg/s" },
        load: { unit: "g" },
      },
    },
    digits: 0,
    tex: "\\dot V = g\\left(\\tfrac{T-D}{W} - \\sin\\gamma\\right),\\quad \\dot\\gamma = \\tfrac{g}{V}(n\\cos\\varphi - \\cos\\gamma),\\quad n = \\left(\\tfrac{V}{V_0}\\right)^2,\\quad \\varphi = \\varphi_0\\,2^{t/T}",
    call: spiralDive,
    kind: "model",
    assumes: `${pointMass} The bank doubles in each doubling time and grows no more at 75°; thrust stays.`,
    source: forces,
  },
  {
    name: "recoveryCost",
    topic: "panel",
    words: "cost of a recovery from a spiral dive",
    symbol: "c",
    args: [
      argument(DIVE_SPEED, { name: "tas", symbol: "V", example: 130 }),
      argument(SPIRAL_BANK, { name: "bank", symbol: "\\varphi", example: 60 }),
      argument(DIVE_PATH, { name: "pathAngle", symbol: "\\gamma", example: -20 }),
      trimSpeed,
      {
        name: "order",
        words: "order of actions",
        symbol: "o",
        unit: "word",
        options: RECOVERY_ORDERS,
        example: "power-bank-pitch",
      },
      argument(DELAY, { name: "delay", symbol: "t_d", default: 1, example: 1 }),
      argument(BETWEEN, { name: "between", symbol: "t_b", default: 1, example: 1 }),
      argument(ROLL_OUT_RATE, { name: "rollRate", symbol: "p", default: 20, example: 20 }),
      argument(PULL, { name: "pull", symbol: "k", default: 1.3, example: 1.3 }),
      doublingTime,
      liftOverDrag,
    ],
    result: {
      fields: {
        altitudeLost: { unit: "ft" },
        highestSpeed: { unit: "kt" },
        highestLoad: { unit: "g" },
        time: { unit: "s" },
      },
    },
    digits: 0,
    tex: "\\dot V = g\\left(\\tfrac{T-D}{W} - \\sin\\gamma\\right),\\quad \\dot\\gamma = \\tfrac{g}{V}(n\\cos\\varphi - \\cos\\gamma),\\quad n = k\\left(\\tfrac{V}{V_0}\\right)^2",
    call: (
      tas: number,
      bank: number,
      pathAngle: number,
      trimmed: number,
      order: RecoveryOrder,
      delay = 1,
      between = 1,
      rollRate = 20,
      pull = 1.3,
      doubling = 20,
      ratio = 10,
    ) =>
      recoveryCost({
        ...{ tas, bank, pathAngle, trimSpeed: trimmed, order, delay, between, rollRate, pull },
        ...{ doublingTime: doubling, liftOverDrag: ratio },
      }),
    kind: "model",
    assumes: `${pointMass} Bank grows until it is rolled off; 'power' takes all thrust off; 'pitch' multiplies the angle of attack by k; actions begin one after another and do not wait for the last to end. The wing does not stall. From recognising the spiral to the lowest point; where drag lets it settle into a glide, for 120 s. It ranks no order: the flight manual's governs.`,
    source: forces,
  },
];
