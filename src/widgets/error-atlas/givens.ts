import { type AtlasRuleName, atlasRules } from "../../cells/atlas-rules.ts";
import type { Given } from "../../cells/chapter.ts";
import type { Facts } from "../../cells/known.ts";
import { quantityOf } from "../../cells/quantities.ts";
import { factOr } from "./ranges.ts";
import type { Range } from "./rule.ts";
import { isTolerance, tolerances } from "./tolerances.ts";

/** Every quantity that some rule of the atlas needs, at the aircraft's and the place's numbers. */
export function atlasGivens(aircraft: Facts, place: Facts): Given[] {
  const names = new Set((Object.keys(atlasRules) as AtlasRuleName[]).flatMap((key) => [...atlasRules[key].needs]));
  const start = startOf(aircraft, place);
  return [...names].map((name): Given => {
    const { label, unit, from, to, step, digits, circle = false } = quantityOf(name)!;
    const value = isTolerance(name) ? tolerances[name].value : start[name]!;
    const [low, high] = narrower[name] ?? [from, to];
    const range = { from: Math.min(low, value), to: Math.max(high, value) };
    return { name, quantity: name, label, unit, value, ...range, step, digits, circle };
  });
}

/** Where each quantity starts, tolerances aside. */
function startOf(aircraft: Facts, place: Facts): Readonly<Record<string, number>> {
  const cruise = factOr(aircraft, "cruise", 95);
  return {
    qnh: 990,
    pressureSet: 1013,
    pressureAltitude: factOr(aircraft, "cruiseAltitude", 2400),
    cas: factOr(aircraft, "cruiseIas", 92),
    isaDeviation: 0,
    tas: cruise,
    groundSpeed: cruise,
    bank: 15,
    rollRate: factOr(aircraft, "rollRate", 5),
    verticalSpeed: Math.abs(factOr(aircraft, "descentRate", 500)),
    extraLoad: factOr(aircraft, "extraLoad", 0.05),
    reaction: 0,
    pathAngle: 3,
    height: 2000,
    aerodromeTemperature: -15,
    heading: 30,
    latitude: factOr(place, "latitude", 52),
    dip: factOr(place, "dip", 67),
    windSpeed: 20,
    windFrom: 45,
    offset: 2,
    distance: 30,
    bearingChange: 10,
    elapsed: 2,
  };
}

/** Ranges that the atlas narrows. */
const narrower: Readonly<Record<string, Range>> = {
  verticalSpeed: [0, 2000],
  bank: [0, 45],
  reaction: [0, 5],
  extraLoad: [0.01, 0.3],
  height: [100, 10_000],
  aerodromeTemperature: [-40, 15],
  distance: [5, 60],
  offset: [0, 20],
  bearingChange: [5, 60],
};
