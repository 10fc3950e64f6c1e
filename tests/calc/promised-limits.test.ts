import { expect, test } from "vitest";
import { catalogue, OutOfRange } from "../../src/calc/index.ts";

const circle = "[-100000, 100000] deg";
const tas = "(0, 700] kt";
const wind = [circle, "[0, 300] kt"];
const hold = [circle, tas, ...wind, "(0, 3600] s", "word", "[-60, 60] deg/s"];
const feet = "[-20000, 20000] ft";
const setting = "[800, 1100] hPa";
const cold = ["[0, 40000] ft", "[-100, 80] degC", "[-2000, 16000] ft"];
const line = ["[0, 660] kt", "[-16000, 65000] ft", "[-16000, 65000] ft"];
const canal = "(0, 100] s";
const long = "[0, 100000] s";
const dip = "(-90, 90) deg";
const trim = "[20, 400] kt";
const noted = "(0, 600] s";

/** The limits that doc comments promise, in the order of the arguments; a round bracket is an open end. */
const promised: Readonly<Record<string, readonly string[]>> = {
  settingError: [setting, setting],
  settingErrorByRule: [setting, setting, "(0, 100] plain"],
  coldTemperatureError: cold,
  coldTemperatureErrorByRule: cold,
  lagError: ["[-30000, 30000] ft/min", "(0, 600] s", "[0, Infinity] s"],
  altimeterErrorBudget: [feet, feet, feet, feet, feet],
  magneticDip: ["[-90, 90] deg"],
  compassInTurn: [circle, dip, "(-90, 90) deg"],
  compassAccelerating: [circle, dip, "[-20, 20] kt/s"],
  rollOutReading: [circle, "word", dip, "(-90, 90) deg", "[0, 90] deg"],
  rollOutHeadingByRule: [circle, "word", "[-90, 90] deg", "[0, 90] deg"],
  trueHeading: [circle, "[-180, 180] deg", "[-180, 180] deg"],
  compassHeading: [circle, "[-180, 180] deg", "[-180, 180] deg"],
  timedTurn: [circle, "[-60, 60] deg/s"],
  windTriangle: [circle, tas, ...wind],
  trackMadeGood: [circle, tas, ...wind],
  windComponents: [circle, ...wind],
  maximumDrift: [tas, "[0, 300] kt"],
  maximumDriftByRule: [tas, "[0, 300] kt"],
  turnInWind: [circle, circle, tas, "[-60, 60] deg/s", ...wind],
  holdEntry: [circle, circle, "word"],
  holdOutbound: hold,
  holdOutboundByRule: [...hold, "[0, 10] plain"],
  trackError: ["[-1000, 1000] NM", "(0, 1000] NM"],
  trackErrorByOneInSixty: ["[-1000, 1000] NM", "(0, 1000] NM"],
  slantRange: ["[0, 1000] NM", "[0, 100000] ft"],
  groundDistance: ["[0, 1000] NM", "[0, 100000] ft"],
  minutesToStation: ["[0, 600] min", "(0, 90) deg"],
  minutesToStationByRule: ["[0, 600] min", "(0, 90) deg"],
  interceptLead: ["[0, 100] NM", "(0, 1000] NM", "[0, 180] deg"],
  arcLead: ["(0, 1000] NM", "[0, 100] NM", "word"],
  pathHeight: ["[0, 1000] NM", "[0, 45] deg", "[-2000, 30000] ft"],
  courseHalfWidth: ["[0, 90) deg", "[0, 1000] NM"],
  feltRate: ["[-60, 60] deg/s", long, canal],
  feltRateInTurn: ["[-60, 60] deg/s", long, long, long, long, canal],
  timeUntilUnfelt: ["[-60, 60] deg/s", "(0, 60] deg/s", canal],
  airspeedWithBlockedPitot: [...line, "word"],
  airspeedWithBlockedStatic: line,
  shownVerticalSpeed: ["[-30000, 30000] ft/min", "[-30000, 30000] ft/min", long, "(0, 120] s"],
  turnNeedle: ["[-60, 60] deg/s", "(-90, 90) deg"],
  turnCoordinator: ["[-60, 60] deg/s", "(-90, 90) deg", "[-360, 360] deg/s", "[0, 60] deg"],
  gyroDrift: ["[-90, 90] deg", "[0, 1440] min"],
  pitchAttitude: ["[-20, 20] deg", "[-45, 45] deg", "[-60, 60] deg", "[0, 20] deg"],
  dragInTurn: ["[-60, 60] deg", "[0, 1] plain"],
  climbLostInTurn: [tas, "[-60, 60] deg", "[1, 80] plain", "[0, 1] plain"],
  levelOffTime: ["(0, 1] plain"],
  levelOffLoad: ["[-30000, 30000] ft/min", "(0, 1] plain"],
  levelOffMiss: ["[-30000, 30000] ft/min", "(0, 5] g", "[0, 20000] ft", "[0, 60] s"],
  spiralDive: [trim, "[0, 75] deg", "[0, 300] s", "[1, 1000000] s", "[3, 60] plain"],
  recoveryCost: [
    ...[trim, "[0, 75] deg", "[-60, 0] deg", trim, "word", "[0, 30] s", "[0, 10] s"],
    ...["[1, 360] deg/s", "[1, 3] plain", "[1, 1000000] s", "[3, 60] plain"],
  ],
  fitRollRate: Array.from({ length: 3 }, () => ["(0, 90) deg", noted]).flat(),
  fitExtraLoad: Array.from({ length: 3 }, () => ["[-20000, 20000] ft/min", "(0, 20000] ft"]).flat(),
  fitLag: ["[1, 20000] ft/min", ...Array.from({ length: 3 }, () => [noted, "[-40000, 40000] ft/min"]).flat()],
};

test.each(Object.entries(promised))("%s keeps the limits that its comment promises", (name, limits) => {
  const formula = catalogue.find((formula) => formula.name === name)!;
  const example = formula.args.map((argument) => argument.example);
  const call = formula.call as unknown as (...values: readonly unknown[]) => unknown;
  const kept = formula.args.map(({ unit }, i) =>
    unit === "word" ? unit : bracketed(() => call(...example.with(i, Number.NaN))),
  );
  expect(kept).toEqual(limits);
});

function bracketed(act: () => unknown): string {
  try {
    act();
  } catch (problem) {
    if (!(problem instanceof OutOfRange)) throw problem;
    const { from, to, openFrom, openTo, unit } = problem.limits;
    return `${openFrom ? "(" : "["}${from}, ${to}${openTo ? ")" : "]"} ${unit}`;
  }
  return "takes NaN";
}
