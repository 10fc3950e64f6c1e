import { describe, expect, test } from "vitest";
import { catalogue, OutOfRange, within } from "../../src/calc/index.ts";

/** The limits that doc comments promise, in the order of the arguments; a round bracket is an open end. */
const promised: Readonly<Record<string, readonly string[]>> = {
  convert: ["[-1000000000000000, 1000000000000000] plain", "word", "word"],
  shortestTurn: ["[-100000, 100000] deg", "[-100000, 100000] deg"],
  isaTemperature: ["[-16000, 100000] ft"],
  isaPressure: ["[-16000, 100000] ft"],
  isaDensity: ["[-16000, 100000] ft"],
  isaAltitude: ["[10, 1770] hPa"],
  pressureAltitude: ["[-16000, 100000] ft", "[800, 1100] hPa"],
  pressureAltitudeByRule: ["[-16000, 100000] ft", "[800, 1100] hPa", "(0, 100] plain"],
  densityAltitude: ["[-16000, 65000] ft", "[-100, 80] degC"],
  feetPerHectopascal: ["[-16000, 65000] ft"],
  trueAirspeed: ["[0, 660] kt", "[-16000, 65000] ft", "[-100, 80] degC"],
  calibratedAirspeed: ["[0, 700] kt", "[-16000, 65000] ft", "[-100, 80] degC"],
  machNumber: ["[0, 700] kt", "[-100, 80] degC"],
  equivalentAirspeed: ["[0, 660] kt", "[-16000, 65000] ft"],
  trueAirspeedByRule: ["[0, 660] kt", "[-2000, 50000] ft"],
  turnRate: ["(0, 700] kt", "(-90, 90) deg"],
  turnRadius: ["(0, 700] kt", "(-90, 90) deg"],
  bankForRate: ["(0, 700] kt", "[-3600, 3600] deg/s"],
  bankForRadius: ["(0, 700] kt", "(0, 1000] NM"],
  bankByTenthPlusSevenRule: ["(0, 700] kt"],
  bankByFifteenPercentRule: ["(0, 600) kt"],
  turnTime: ["(0, 700] kt", "(-90, 90) deg", "[-100000, 100000] deg"],
  loadFactor: ["(-90, 90) deg"],
  stallSpeedInTurn: ["(0, 300] kt", "(-90, 90) deg"],
  rollOutLead: ["(0, 700] kt", "(-90, 90) deg", "(0, 360] deg/s", "[0, 60] s"],
  rollOutLeadByRule: ["(-90, 90) deg", "[0, 1] plain"],
  turnLeadDistance: ["[0, 1000] NM", "(-180, 180) deg"],
  turnLeadDistanceRolling: ["[20, 700] kt", "[-85, 85] deg", "(-180, 180) deg", "(0, 360] deg/s", "[0, 60] s"],
  levelOffLead: ["[-30000, 30000] ft/min", "[-5, 5] g", "[0, 60] s"],
  levelOffLeadByRule: ["[-30000, 30000] ft/min", "[0, 1] plain"],
  feetPerMile: ["(-90, 90) deg"],
  verticalSpeedForAngle: ["[0, 1000] kt", "(-90, 90) deg"],
  angleForVerticalSpeed: ["(0, 1000] kt", "[-30000, 30000] ft/min"],
  verticalSpeedByRule: ["[0, 1000] kt"],
  descentDistance: ["[0, 65000] ft", "(-90, 90) deg"],
  descentDistanceByRule: ["[0, 65000] ft"],
  verticalSpeedFromPitch: ["(0, 700] kt", "[-90, 90] deg"],
  heightError: ["[-30000, 30000] ft/min", "[0, 3600] s"],
  lookInterval: ["(0, 700] kt", "[-90, 90] deg", "[0, 10000] ft"],
  heightInUncompensatedBank: ["[20, 700] kt", "[-60, 60] deg", "[0, 60] s", "word", "[5, 60] plain", "[1, 20] deg"],
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

describe("within", () => {
  const half = { quantity: "speed", unit: "kt", from: 0, to: 10, openFrom: true };

  test("gives back a value inside its limits, a closed end included", () => {
    expect(within(half, 10)).toBe(10);
    expect(within(half, 0.001)).toBe(0.001);
  });

  test.each([0, -1, 10.001, Number.NaN, Infinity, -Infinity])("refuses %d", (value) => {
    expect(() => within(half, value)).toThrow(OutOfRange);
  });

  test("says in words what it wanted and what it was given", () => {
    expect(() => within(half, 12)).toThrow("speed must be over 0 kt and at most 10 kt, not 12");
    expect(() => within({ ...half, openFrom: false, openTo: true, unit: "plain" }, 10)).toThrow(
      "speed must be at least 0 and under 10, not 10",
    );
    expect(() => within({ ...half, from: -Infinity, to: Infinity }, Number.NaN)).toThrow(
      "speed must be a finite number, not NaN",
    );
  });

  test("carries quantity, unit, limits and value on its error, a RangeError", () => {
    const problem = new OutOfRange(half, 12);
    expect(problem).toBeInstanceOf(RangeError);
    expect(problem).toMatchObject({ name: "OutOfRange", quantity: "speed", unit: "kt", limits: half, value: 12 });
  });
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
