import { labelOf, type Rule, shown } from "./rule.ts";

/** Feet a minute that one knot is. */
const KNOT = 6076.12 / 60;
/** The steepest path that a trainer's table may state, degrees. */
const STEEPEST = 15;

const phase = (name: string): string => `aircraft.phases.${name}`;

const notSteep = (verticalSpeed: string, speed: string): Rule =>
  function steep(number) {
    const sine = Math.abs(number(verticalSpeed)) / (number(speed) * KNOT);
    const angle = (Math.asin(Math.min(1, sine)) * 180) / Math.PI;
    if (!(angle > STEEPEST)) return undefined;
    return {
      field: verticalSpeed,
      also: [speed],
      message: `${labelOf(verticalSpeed)}: ${shown(verticalSpeed, number(verticalSpeed))} at ${shown(speed, number(speed))} is a path of ${Math.round(angle)}°.`,
      mend: `Give a path under ${STEEPEST}°.`,
    };
  };

const signed = (id: string, climbs: boolean): Rule =>
  function sign(number) {
    const value = number(id);
    if (!(climbs ? value <= 0 : value >= 0)) return undefined;
    return {
      field: id,
      message: `${labelOf(id)}: ${shown(id, value)} is no ${climbs ? "climb" : "descent"}.`,
      mend: climbs ? "Give a rate over 0; a table ends below the ceiling." : "Write it with a minus.",
    };
  };

const climbs = ["climb", "climbMiddle", "climbHigh"] as const;

/** What the table of phases asks of itself. */
export const tableRules: readonly Rule[] = [
  ...climbs.map((key) => signed(phase(`${key}.verticalSpeed`), true)),
  signed(phase("approach.verticalSpeed"), false),
  notSteep(phase("climb.verticalSpeed"), "aircraft.climb"),
  notSteep(phase("climbMiddle.verticalSpeed"), phase("climbMiddle.speed")),
  notSteep(phase("climbHigh.verticalSpeed"), phase("climbHigh.speed")),
  notSteep(phase("approach.verticalSpeed"), "aircraft.approach"),
  notSteep("aircraft.descentRate", "aircraft.descent"),
];
