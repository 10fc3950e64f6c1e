import { isaTemperature, trueAirspeed } from "../../calc/index.ts";
import type { Facts } from "../../cells/known.ts";
import { asSet } from "../figure-words.ts";
import type { Across, Range } from "./rule.ts";

/** A number of the aircraft's, or what stands where its sheet has none. */
export function factOr(facts: Facts, name: string, otherwise: number): number {
  const value = facts.facts[name]?.value;
  return typeof value === "number" && Number.isFinite(value) ? value : otherwise;
}

/** Lowest and highest altitude at which the aircraft's numbers may be used. */
export const altitudesOf = (aircraft: Facts): Range => [
  factOr(aircraft, "altitudeFrom", 0),
  factOr(aircraft, "altitudeTo", 10_000),
];

/** Stalling speed low down to never-exceed speed high up, each as true airspeed in the standard atmosphere, whole knots. */
export function tasRangeOf(aircraft: Facts): Range {
  const [low, high] = altitudesOf(aircraft);
  const true_ = (indicated: number, altitude: number): number =>
    Math.round(trueAirspeed(indicated, altitude, isaTemperature(altitude)));
  return [true_(factOr(aircraft, "stall", 40), low), true_(factOr(aircraft, "neverExceed", 180), high)];
}

export const overTrueAirspeeds: Across = {
  range: tasRangeOf,
  limits: true,
  whose: (aircraft) => {
    const [low, high] = altitudesOf(aircraft).map((altitude) => asSet(altitude, "ft"));
    return `the ${aircraft.title}’s true airspeeds, stalling speed at ${low} to never-exceed speed at ${high}, indicated taken as calibrated`;
  },
};

export const overAltitudes: Across = {
  range: altitudesOf,
  whose: ({ title }) => `the ${title}’s altitudes`,
};

/** Heights above an aerodrome at the aircraft's lowest altitude. */
export const overHeights: Across = {
  range: (aircraft) => {
    const [low, high] = altitudesOf(aircraft);
    return [0, high - low];
  },
  whose: ({ title }) => `heights within the ${title}’s altitudes`,
};

/** Twice the steepest climb or descent of the aircraft's own table, in whole hundreds. */
export const overVerticalSpeeds: Across = {
  range: ({ facts }) => {
    const speeds = Object.entries(facts).flatMap(([name, { value, unit }]) =>
      unit === "ft/min" && typeof value === "number" && /descentRate$|verticalSpeed$/.test(name)
        ? [Math.abs(value)]
        : [],
    );
    return [0, Math.ceil(Math.max(500, ...speeds) / 50) * 100];
  },
  whose: ({ title }) => `twice the greatest vertical speed in the ${title}’s table`,
};

export const overBanks: Across = {
  range: (aircraft) => [0, factOr(aircraft, "bankLimit", 30)],
  whose: () => "wings level to the school’s bank limit",
};

/** Winds up to a third of the cruising speed: beyond it turns at 3 °/s drift as far as a minute's leg. */
export const overWinds: Across = {
  range: (aircraft) => [0, Math.round(factOr(aircraft, "cruise", 95) / 3)],
  whose: ({ title }) => `winds up to a third of the ${title}’s cruising speed`,
};

export const overPressures: Across = {
  range: () => [950, 1050],
  whose: () => "pressures that the sub-scale of an altimeter covers",
};
