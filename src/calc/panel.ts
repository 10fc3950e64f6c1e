import { TIME, TURN_RATE } from "./bounds.ts";
import { type Limits, within } from "./limits.ts";
import type { Degrees, DegreesPerSecond, FeetPerMinute, Minutes, Seconds } from "./quantity.ts";
import { BANK, VERTICAL_SPEED } from "./ranges.ts";
import { cos, sin, tan } from "./si.ts";

export const BEFORE: Limits = { ...VERTICAL_SPEED, quantity: "vertical speed before" };
export const INDICATOR_TIME_CONSTANT: Limits = {
  quantity: "time constant of the indicator",
  unit: "s",
  from: 0,
  to: 120,
  openFrom: true,
};
export const ROLLING: Limits = { quantity: "rate of roll", unit: "deg/s", from: -360, to: 360 };
export const GIMBAL_TILT: Limits = { quantity: "tilt of the gimbal", unit: "deg", from: 0, to: 60 };
export const LATITUDE: Limits = { quantity: "latitude", unit: "deg", from: -90, to: 90 };
export const DRIFT_TIME: Limits = { quantity: "time", unit: "min", from: 0, to: 1440 };

/** The Earth turns once in a sidereal day of 86 164.1 s: degrees a minute. */
const EARTH_RATE = (360 / 86_164.1) * 60;

/**
 * What a vertical speed indicator shows after the vertical speed has changed at once.
 *
 * @param verticalSpeed since the change, −30,000 to 30,000 ft/min
 * @param before until the change, long enough to be shown, −30,000 to 30,000 ft/min
 * @param time since the change, 0 to 100 000 s
 * @param timeConstant of the indicator, over 0, at most 120 s
 * @throws {OutOfRange} outside those limits
 * @source model: a case that fills through a restriction lags by first order
 */
export function shownVerticalSpeed(
  verticalSpeed: FeetPerMinute,
  before: FeetPerMinute,
  time: Seconds,
  timeConstant: Seconds,
): FeetPerMinute {
  within(VERTICAL_SPEED, verticalSpeed);
  within(BEFORE, before);
  within(TIME, time);
  within(INDICATOR_TIME_CONSTANT, timeConstant);
  return verticalSpeed + (before - verticalSpeed) * Math.exp(-time / timeConstant) + 0;
}

/**
 * What the gyro of a turn-and-slip indicator feels in a level turn: the part of the rate about the aeroplane's own
 * vertical axis.
 *
 * @param rate of turn, −60 to 60°/s, right positive
 * @param bank under 90° either way
 * @throws {OutOfRange} outside those limits
 * @source resolution of the rate of turn: ω cos φ, pitch left out
 */
export function turnNeedle(rate: DegreesPerSecond, bank: Degrees): DegreesPerSecond {
  within(TURN_RATE, rate);
  within(BANK, bank);
  return rate * cos(bank) + 0;
}

/**
 * What a turn coordinator shows: its tilted gimbal feels roll as well as turn. It is marked for turning without roll.
 *
 * @param rate of turn, −60 to 60°/s, right positive
 * @param bank under 90° either way
 * @param rollRate −360 to 360°/s, right positive
 * @param tilt of the gimbal's axis, 0 to 60°; commonly some 30°
 * @throws {OutOfRange} outside those limits
 * @source resolution of the rates along the tilted axis: (ω cos φ cos τ + p sin τ) / cos τ
 */
export function turnCoordinator(
  rate: DegreesPerSecond,
  bank: Degrees,
  rollRate: DegreesPerSecond,
  tilt: Degrees = 30,
): DegreesPerSecond {
  within(ROLLING, rollRate);
  within(GIMBAL_TILT, tilt);
  return turnNeedle(rate, bank) + rollRate * tan(tilt) + 0;
}

/**
 * Apparent drift of a heading indicator whose gyro is free and on an aeroplane at rest: the horizon turns beneath it.
 *
 * @param latitude −90 to 90°, south negative
 * @param time since it was set, 0 to 1440 min
 * @returns degrees, indicated minus true: negative in the northern hemisphere, where the reading falls
 * @throws {OutOfRange} outside those limits
 * @source the Earth's rate about the local vertical, 15.04°/h × sin latitude
 */
export function gyroDrift(latitude: Degrees, time: Minutes = 60): Degrees {
  within(LATITUDE, latitude);
  within(DRIFT_TIME, time);
  return -EARTH_RATE * time * sin(latitude) + 0;
}
