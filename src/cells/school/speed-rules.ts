import { isaTemperature, OutOfRange, stallSpeedInTurn, trueAirspeed } from "../../calc/index.ts";
import { labelOf, nameOf, type Rule, shown } from "./rule.ts";

/** A climb or a slow cruise is flown at no less than so many stalling speeds. */
const MARGIN = 1.2;
/** How far the true airspeed may lie from what the needle's would be: instruments err, and handbooks round. */
const DISAGREEMENT = 0.06;
/** Rolling in and rolling out differ by no more than so much. */
const ROLLS_APART = 4;

const stall = "aircraft.stall";

const marginOver = (id: string): Rule =>
  function margin(number) {
    const least = MARGIN * number(stall);
    if (!(number(id) <= least)) return undefined;
    return {
      field: id,
      also: [stall],
      message: `${labelOf(id)}, ${shown(id, number(id))}, is not above ${MARGIN} times the stalling speed, ${shown(id, least, 0)}.`,
      mend: "Compare both with the flight manual.",
    };
  };

const stallInTurn = (bank: string, speed: string): Rule =>
  function turn(number) {
    const [level, limit, flown] = [number(stall), number(bank), number(speed)];
    if (!(level > 0 && limit < 90 && flown > 0)) return undefined;
    const turning = stallSpeedInTurn(level, limit);
    if (turning < flown) return undefined;
    return {
      field: bank,
      also: [stall, speed],
      message: `${labelOf(bank)}, ${shown(bank, limit)}: the aeroplane stalls there at ${shown(stall, turning, 0)}, and ${nameOf(speed)} is ${shown(speed, flown)}.`,
      mend: "Lower the limit, or compare the speeds with the flight manual.",
    };
  };

const trueAgainstShown: Rule = (number) => {
  const [tas, ias, altitude] = ["aircraft.cruise", "aircraft.cruiseIas", "aircraft.cruiseAltitude"].map(number);
  const wanted = trueAt(ias!, altitude!);
  if (!(Math.abs(tas! / wanted - 1) > DISAGREEMENT)) return undefined;
  return {
    field: "aircraft.cruise",
    also: ["aircraft.cruiseIas", "aircraft.cruiseAltitude"],
    message: `Cruise: ${shown("aircraft.cruise", ias!)} on the needle at ${shown("aircraft.cruiseAltitude", altitude!)} is ${shown("aircraft.cruise", wanted, 0)} true in the standard atmosphere, not ${shown("aircraft.cruise", tas!)}.`,
    mend: "Mend the true airspeed, the indicated one or the altitude.",
  };
};

function trueAt(ias: number, altitude: number): number {
  if (!(ias > 0)) return Number.NaN;
  try {
    return trueAirspeed(ias, altitude, isaTemperature(altitude));
  } catch (error) {
    if (error instanceof OutOfRange) return Number.NaN;
    throw error;
  }
}

const rolls: Rule = (number) => {
  const [into, out] = [number("aircraft.rollInRate"), number("aircraft.rollRate")];
  if (!(Math.max(into, out) > ROLLS_APART * Math.min(into, out))) return undefined;
  return {
    field: "aircraft.rollInRate",
    also: ["aircraft.rollRate"],
    message: `Rate of roll-in, ${shown("aircraft.rollInRate", into)}, and rate of roll-out, ${shown("aircraft.rollRate", out)}, are more than ${ROLLS_APART} times apart.`,
    mend: "Time both again; the panel of readings helps.",
  };
};

/** What speeds, banks and rates of roll ask of each other. */
export const speedRules: readonly Rule[] = [
  ...["climb", "phases.climbMiddle.speed", "phases.climbHigh.speed", "phases.slowCruise.speed"].map((key) =>
    marginOver(`aircraft.${key}`),
  ),
  stallInTurn("aircraft.bankLimit", "aircraft.approach"),
  stallInTurn("aircraft.climbBankLimit", "aircraft.climb"),
  trueAgainstShown,
  rolls,
];
