import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { convert, OutOfRange, shortestTurn, type Unit, UnitMismatch, unitKind, units } from "../../src/calc/index.ts";
import { between } from "./arbitrary.ts";

const unit = fc.constantFrom(...units);
const pairs = units.flatMap((from) => units.filter((to) => unitKind(to) === unitKind(from)).map((to) => [from, to]));

describe("convert", () => {
  // Definitions, exact: ICAO Annex 5 for mile and foot, the international yard for the statute mile.
  test.each<[number, Unit, number, Unit]>([
    [1, "NM", 1852, "m"],
    [1, "ft", 0.3048, "m"],
    [1, "mi", 1.609344, "km"],
    [1, "kt", 1.852, "km/h"],
    [3.6, "km/h", 1, "m/s"],
    [60, "ft/min", 0.3048, "m/s"],
    [1, "inHg", 33.8639, "hPa"],
    [0, "degC", 273.15, "K"],
    [0, "degC", 32, "degF"],
    [100, "degC", 212, "degF"],
    [-40, "degC", -40, "degF"],
    [0, "K", -459.67, "degF"],
    [180, "deg", Math.PI, "rad"],
    [1.5, "h", 90, "min"],
    [2, "min", 120, "s"],
  ])("takes %d %s for %d %s", (value, from, other, to) => {
    expect(convert(value, from, to)).toBeCloseTo(other, 10);
    expect(convert(other, to, from)).toBeCloseTo(value, 10);
  });

  test("meets the printed pair 29.92 inHg and 1013.2 hPa to half a printed digit", () => {
    expect(Math.abs(convert(1013.25, "hPa", "inHg") - 29.92)).toBeLessThanOrEqual(0.005);
  });

  test("takes a knot for a nautical mile an hour: 101.3 ft/min", () => {
    expect(convert(1, "kt", "ft/min")).toBeCloseTo(1852 / 0.3048 / 60, 12);
  });

  test("undoes itself, whatever the units", () => {
    fc.assert(
      fc.property(between(-1e6, 1e6), fc.constantFrom(...pairs), (value, [from, to]) => {
        const back = convert(convert(value, from!, to!), to!, from!);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1000, Math.abs(value)));
      }),
    );
  });

  test("leaves a value in its own unit untouched, to the bit", () => {
    fc.assert(fc.property(between(-1e15, 1e15), unit, (value, own) => convert(value, own, own) === value));
  });

  test("gives no negative zero", () => {
    expect(convert(-0, "kt", "kt")).toBe(0);
    expect(convert(-0, "m", "ft")).toBe(0);
  });

  test("refuses units of different kinds with an error that names both", () => {
    fc.assert(
      fc.property(unit, unit, (from, to) => {
        fc.pre(unitKind(from) !== unitKind(to));
        const problem = caught(() => convert(1, from, to));
        expect(problem).toBeInstanceOf(UnitMismatch);
        expect(problem).toBeInstanceOf(OutOfRange);
        expect(problem).toMatchObject({ name: "UnitMismatch", from, into: to, value: Number.NaN });
        expect((problem as Error).message).toContain(`${from} is a unit of ${unitKind(from)}`);
        expect((problem as Error).message).toContain(`${to} one of ${unitKind(to)}`);
      }),
    );
  });

  test("keeps the load 'g' apart from the acceleration 'kt/s'", () => {
    expect(() => convert(1, "g", "kt/s")).toThrow(UnitMismatch);
  });
});

test.each<[string, Unit[]]>([
  ["speed", ["kt", "m/s", "km/h", "ft/min"]],
  ["length", ["ft", "m", "NM", "km", "mi"]],
  ["pressure", ["hPa", "inHg"]],
  ["temperature", ["degC", "degF", "K"]],
  ["angle", ["deg", "rad"]],
  ["rate", ["deg/s"]],
  ["acceleration", ["kt/s"]],
  ["gradient", ["ft/NM"]],
  ["time", ["s", "min", "h"]],
  ["load", ["g"]],
])("unitKind knows what measures %s", (kind, members) => {
  expect(units.filter((member) => unitKind(member) === kind)).toEqual(members);
});

test("unitKind refuses a word that is no unit, an object's own words among them", () => {
  for (const word of ["knots", "toString", "__proto__", ""]) {
    expect(() => unitKind(word as Unit)).toThrow(OutOfRange);
  }
});

describe("shortestTurn", () => {
  test.each([
    [350, 20, 30],
    [20, 350, -30],
    [0, 180, 180],
    [180, 0, 180],
    [90, 271, -179],
    [360, 0, 0],
    [-10, 730, 20],
  ])("from %d to %d is %d", (from, to, turn) => {
    expect(shortestTurn(from, to)).toBe(turn);
  });

  test("reaches the heading and is never the longer way", () => {
    fc.assert(
      fc.property(between(-1000, 1000), between(-1000, 1000), (from, to) => {
        const turn = shortestTurn(from, to);
        expect(turn).toBeGreaterThan(-180);
        expect(turn).toBeLessThanOrEqual(180);
        const circles = (from + turn - to) / 360;
        expect(Math.abs(circles - Math.round(circles))).toBeLessThan(1e-12);
      }),
    );
  });
});

function caught(act: () => unknown): unknown {
  try {
    return act();
  } catch (problem) {
    return problem;
  }
}
