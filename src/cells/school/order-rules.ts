import { labelOf, nameOf, type Rule, shown } from "./rule.ts";

const phase = (name: string): string => `aircraft.phases.${name}`;

const mustBeBelow = (lower: string, upper: string): Rule =>
  compared(lower, upper, (low, high) => low >= high, "not above");

const mayBeAtMost = (lower: string, upper: string): Rule => compared(lower, upper, (low, high) => low > high, "below");

function compared(lower: string, upper: string, fails: (low: number, high: number) => boolean, is: string): Rule {
  return (number) => {
    const [low, high] = [number(lower), number(upper)];
    if (!fails(low, high)) return undefined;
    return {
      field: upper,
      also: [lower],
      message: `${labelOf(upper)}, ${shown(upper, high)}, is ${is} ${nameOf(lower)}, ${shown(lower, low)}.`,
      mend: "Compare both with the flight manual and the school’s orders.",
    };
  };
}

/** What lies below what. */
export const below: readonly Rule[] = (
  [
    ["aircraft.stall", "aircraft.approach"],
    ["aircraft.approach", "aircraft.cruiseIas"],
    ["aircraft.cruiseIas", "aircraft.neverExceed"],
    ["aircraft.descent", "aircraft.neverExceed"],
    ["aircraft.climb", "aircraft.neverExceed"],
    ["aircraft.altitudeFrom", "aircraft.altitudeTo"],
    [phase("slowCruise.speed"), "aircraft.cruiseIas"],
    [phase("cruise.pitch"), phase("slowCruise.pitch")],
    [phase("descent.pitch"), phase("climb.pitch")],
    [phase("climb.altitude"), phase("climbMiddle.altitude")],
    [phase("climbMiddle.altitude"), phase("climbHigh.altitude")],
    ["technique.fasterAttitude", "technique.fasterPower"],
    ["place.elevation", "place.floor"],
    ["place.floor", "aircraft.altitudeTo"],
  ] as const
).map(([lower, upper]) => mustBeBelow(lower, upper));

/** What is at most what. */
export const atMost: readonly Rule[] = (
  [
    ["aircraft.climbBankLimit", "aircraft.bankLimit"],
    ["technique.turnBank", "aircraft.bankLimit"],
    ["technique.climbTurnBank", "aircraft.climbBankLimit"],
    ["aircraft.altitudeFrom", "aircraft.cruiseAltitude"],
    ["aircraft.cruiseAltitude", "aircraft.altitudeTo"],
    ["aircraft.cruiseAltitude", phase("climbHigh.altitude")],
    [phase("climbHigh.altitude"), "aircraft.altitudeTo"],
    [phase("climbMiddle.verticalSpeed"), phase("climb.verticalSpeed")],
    [phase("climbHigh.verticalSpeed"), phase("climbMiddle.verticalSpeed")],
    [phase("climbMiddle.speed"), "aircraft.neverExceed"],
    [phase("climbHigh.speed"), "aircraft.neverExceed"],
  ] as const
).map(([lower, upper]) => mayBeAtMost(lower, upper));
