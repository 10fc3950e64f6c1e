import { FROM_ZERO_LIFT, LEVEL_PITCH, MODERATE_BANK, PATH, pitchAttitude } from "../attitude.ts";
import { TIME, TURN_RATE } from "../bounds.ts";
import {
  BEFORE,
  DRIFT_TIME,
  GIMBAL_TILT,
  gyroDrift,
  INDICATOR_TIME_CONSTANT,
  LATITUDE,
  ROLLING,
  shownVerticalSpeed,
  turnCoordinator,
  turnNeedle,
} from "../panel.ts";
import { AIRSPEED, airspeedWithBlockedPitot, airspeedWithBlockedStatic, BLOCKED_AT, DRAINS } from "../pitot-static.ts";
import { BANK, PRESSURE_ALTITUDE, VERTICAL_SPEED } from "../ranges.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";
import { blockedPitotSteps, blockedStaticSteps, pitchSteps } from "./panel-steps.ts";
import { plain } from "./printed.ts";
import { given } from "./signs.ts";

const airspeed = argument(AIRSPEED, { name: "airspeed", symbol: "V_C", example: 90 });
const blockedAt = argument(BLOCKED_AT, { name: "blockedAt", symbol: "h_0", example: 2000 });
const pressureAltitude = argument(PRESSURE_ALTITUDE, { name: "pressureAltitude", symbol: "h", example: 3000 });
const rate = argument(TURN_RATE, { name: "rate", symbol: "\\omega", example: 3 });
const bank = argument(BANK, { name: "bank", symbol: "\\varphi", example: 15 });
const lines = "Pressures of the standard atmosphere. No reading, where the pressure in the static line is the higher.";

export const panel: readonly Formula[] = [
  {
    name: "airspeedWithBlockedPitot",
    topic: "panel",
    words: "airspeed read with a blocked pitot head",
    symbol: "V_r",
    args: [
      airspeed,
      blockedAt,
      pressureAltitude,
      {
        name: "drain",
        words: "drain hole",
        symbol: "d",
        unit: "word",
        options: DRAINS,
        default: "blocked",
        example: "blocked",
      },
    ],
    result: { unit: "kt" },
    digits: 0,
    tex: "a_0\\sqrt{5\\left[\\left(1 + \\frac{p(h_0) + q(V_C) - p(h)}{p_0}\\right)^{1/3.5} - 1\\right]}",
    call: airspeedWithBlockedPitot,
    steps: blockedPitotSteps,
    kind: "exact",
    assumes: `${lines} Drain blocked: the total pressure stays as it was. Drain open: the line empties and the reading is zero.`,
    source: "impact pressure of compressible flow",
  },
  {
    name: "airspeedWithBlockedStatic",
    topic: "panel",
    words: "airspeed read with a blocked static line",
    symbol: "V_r",
    args: [
      airspeed,
      argument(BLOCKED_AT, { name: "blockedAt", symbol: "h_0", example: 3000 }),
      argument(PRESSURE_ALTITUDE, { name: "pressureAltitude", symbol: "h", example: 2000 }),
    ],
    result: { unit: "kt" },
    digits: 0,
    tex: "a_0\\sqrt{5\\left[\\left(1 + \\frac{p(h) + q(V_C) - p(h_0)}{p_0}\\right)^{1/3.5} - 1\\right]}",
    call: airspeedWithBlockedStatic,
    steps: blockedStaticSteps,
    kind: "exact",
    assumes: `${lines} The altimeter stays at the altitude of the blockage, the vertical speed indicator at zero.`,
    source: "impact pressure of compressible flow",
  },
  {
    name: "shownVerticalSpeed",
    topic: "panel",
    words: "vertical speed shown after a change",
    symbol: "w_r",
    args: [
      argument(VERTICAL_SPEED, { name: "verticalSpeed", symbol: "w", example: 500 }),
      argument(BEFORE, { name: "before", symbol: "w_0", example: 100 }),
      argument(TIME, { name: "time", symbol: "t", example: 3 }),
      argument(INDICATOR_TIME_CONSTANT, { name: "timeConstant", symbol: "\\tau", example: 3 }),
    ],
    result: { unit: "ft/min" },
    digits: 0,
    tex: "w + (w_0 - w)\\,e^{-t/\\tau}",
    call: shownVerticalSpeed,
    steps: (after: number, before: number, time: number, constant: number) => [
      {
        what: "Shown",
        symbol: "w_r",
        tex: "w + (w_0 - w)\\,e^{-t/\\tau}",
        numbers: `${plain(after)} + (${plain(before)} − ${given(after)}) × e^(−${plain(time)} / ${plain(constant)})`,
      },
    ],
    kind: "model",
    assumes: "The vertical speed changes at once; the instrument follows by first order. Each has its own τ.",
    source: "first-order lag",
  },
  {
    name: "turnNeedle",
    topic: "panel",
    words: "rate shown by a turn needle",
    symbol: "\\omega_r",
    args: [rate, bank],
    result: { unit: "deg/s" },
    digits: 2,
    tex: "\\omega\\cos\\varphi",
    call: turnNeedle,
    steps: (turning: number, banked: number) => [
      {
        what: "Shown",
        symbol: "\\omega_r",
        tex: "\\omega\\cos\\varphi",
        numbers: `${plain(turning)} × cos ${given(banked)}°`,
      },
    ],
    kind: "exact",
    assumes: "A level turn; the gyro feels what goes about the aeroplane's own vertical axis. Pitch left out.",
    source: "resolution of the rate of turn",
  },
  {
    name: "turnCoordinator",
    topic: "panel",
    words: "rate shown by a turn coordinator",
    symbol: "\\omega_r",
    args: [
      rate,
      bank,
      argument(ROLLING, { name: "rollRate", symbol: "p", example: 5 }),
      argument(GIMBAL_TILT, { name: "tilt", symbol: "\\tau", default: 30, example: 30 }),
    ],
    result: { unit: "deg/s" },
    digits: 1,
    tex: "\\omega\\cos\\varphi + p\\tan\\tau",
    call: turnCoordinator,
    steps: (turning: number, banked: number, rolling: number, tilt: number) => [
      {
        what: "Shown",
        symbol: "\\omega_r",
        tex: "\\omega\\cos\\varphi + p\\tan\\tau",
        numbers: `${plain(turning)} × cos ${given(banked)}° + ${given(rolling)} × tan ${plain(tilt)}°`,
      },
    ],
    kind: "exact",
    assumes: "As the turn needle, and its gimbal's tilt lets it feel roll. Marked for a turn without roll; no damping.",
    source: "resolution of the rates along the tilted axis",
  },
  {
    name: "gyroDrift",
    topic: "panel",
    words: "apparent drift of a free gyro",
    symbol: "\\Delta\\psi",
    args: [
      argument(LATITUDE, { name: "latitude", symbol: "\\lambda", example: 52 }),
      argument(DRIFT_TIME, { name: "time", symbol: "t", default: 60, example: 15 }),
    ],
    result: { unit: "deg" },
    digits: 1,
    tex: "-15.041\\,\\frac{t}{60}\\sin\\lambda",
    call: gyroDrift,
    steps: (latitude: number, minutes: number) => [
      {
        what: "Drift",
        symbol: "\\Delta\\psi",
        tex: "-15.041\\,\\frac{t}{60}\\sin\\lambda",
        numbers: `−15.041 × ${plain(minutes)} / 60 × sin ${given(latitude)}°`,
      },
    ],
    kind: "exact",
    assumes: "Reading minus heading, of a perfect gyro on an aeroplane at rest: the reading falls in the north.",
    source: "the Earth's rate about the local vertical",
  },
  {
    name: "pitchAttitude",
    topic: "panel",
    words: "pitch attitude for a path and a bank",
    symbol: "\\theta",
    args: [
      argument(LEVEL_PITCH, { name: "levelPitch", symbol: "\\theta_0", example: 3 }),
      argument(PATH, { name: "path", symbol: "\\gamma", example: 4 }),
      argument(MODERATE_BANK, { name: "bank", symbol: "\\varphi", default: 0, example: 20 }),
      argument(FROM_ZERO_LIFT, { name: "angleFromZeroLift", symbol: "\\alpha_0", default: 5, example: 5 }),
    ],
    result: { unit: "deg" },
    digits: 1,
    tex: "\\arctan(\\tan\\alpha\\cos\\varphi) + \\arcsin\\frac{\\sin\\gamma}{\\sqrt{\\cos^2\\alpha + \\sin^2\\alpha\\cos^2\\varphi}},\\quad \\alpha = \\theta_0 + \\alpha_0\\left(\\frac{\\cos\\gamma}{\\cos\\varphi} - 1\\right)",
    call: pitchAttitude,
    steps: pitchSteps,
    kind: "model",
    assumes:
      "Same speed and configuration as the level pitch of the aircraft's table. Lift proportional to the angle from zero lift; no sideslip.",
    source: "attitude, angle of attack and path without sideslip",
  },
];
