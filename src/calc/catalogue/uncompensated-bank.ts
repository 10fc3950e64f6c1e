import {
  ANGLE_FROM_ZERO_LIFT,
  type BankModel,
  bankModels,
  HELD_BANK,
  HELD_SPEED,
  HELD_TIME,
  heightInUncompensatedBank,
  LIFT_OVER_DRAG,
} from "../uncompensated-bank.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";

export const uncompensatedBank: Formula = {
  name: "heightInUncompensatedBank",
  topic: "vertical",
  words: "height change in an uncompensated bank",
  symbol: "\\Delta h",
  args: [
    argument(HELD_SPEED, { name: "tas", symbol: "V_0", example: 100 }),
    argument(HELD_BANK, { name: "bank", symbol: "\\varphi", example: 20 }),
    argument(HELD_TIME, { name: "time", symbol: "t", example: 10 }),
    {
      name: "model",
      words: "what is held",
      symbol: "m",
      unit: "word",
      options: bankModels,
      example: "vertical-force",
    },
    argument(LIFT_OVER_DRAG, { name: "liftOverDrag", symbol: "L/D", default: 10, example: 10 }),
    argument(ANGLE_FROM_ZERO_LIFT, { name: "angleFromZeroLift", symbol: "\\alpha_0", default: 5, example: 5 }),
  ],
  result: { unit: "ft" },
  digits: 0,
  tex: "\\int V\\sin\\gamma\\,\\mathrm{d}t,\\quad \\dot\\gamma = \\frac{g}{V}\\left(\\frac{L}{W}\\cos\\varphi - \\cos\\gamma\\right),\\quad \\dot V = g\\left(\\frac{T-D}{W} - \\sin\\gamma\\right)",
  call: (
    tas: number,
    bank: number,
    time: number,
    model: BankModel,
    liftOverDrag?: number,
    angleFromZeroLift?: number,
  ) =>
    heightInUncompensatedBank(tas, bank, time, model, {
      ...(liftOverDrag === undefined ? {} : { liftOverDrag }),
      ...(angleFromZeroLift === undefined ? {} : { angleFromZeroLift }),
    }),
  kind: "model",
  assumes:
    "The bank is there at once and the flight stays coordinated. 'vertical-force': lift as large as the weight, airspeed constant. 'angle-of-attack-held': angle of attack and thrust constant, up to 15 s. 'attitude-held': pitch constant, lift proportional to the angle from zero lift. The three differ tenfold.",
  source: "forces along and across the path",
};
