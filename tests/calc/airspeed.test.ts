import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  calibratedAirspeed,
  convert,
  equivalentAirspeed,
  isaAltitude,
  isaDensity,
  isaPressure,
  isaTemperature,
  machNumber,
  OutOfRange,
  trueAirspeed,
  trueAirspeedByRule,
} from "../../src/calc/index.ts";
import table from "../reference/static-over-total-pressure.json" with { type: "json" };
import { between } from "./arbitrary.ts";

const soundAtSeaLevel = convert(340.294, "m/s", "kt");

// U.S. Standard Atmosphere 1976: speed of sound 340.294 m/s at 288.15 K and 295.07 m/s at 216.65 K.
test.each([
  [15, 340.294, 0.0005],
  [-56.5, 295.07, 0.005],
])("machNumber at %d °C is 1 at %d m/s", (celsius, metresPerSecond, half) => {
  const least = machNumber(convert(metresPerSecond - half, "m/s", "kt"), celsius);
  const most = machNumber(convert(metresPerSecond + half, "m/s", "kt"), celsius);
  expect(least).toBeLessThanOrEqual(1);
  expect(most).toBeGreaterThanOrEqual(1);
});

describe("trueAirspeed", () => {
  test("is the calibrated airspeed at sea level in the standard atmosphere", () => {
    fc.assert(
      fc.property(between(0, 660), (cas) => {
        expect(trueAirspeed(cas, 0, 15)).toBeCloseTo(cas, 6);
      }),
    );
  });

  /**
   * Two rows of the compressible-flow table fix a case: the impact pressure of the slower at sea level, met at the
   * altitude where it makes the Mach number of the faster.
   */
  const rows = table.rows.map(([mach, ratio]) => ({ mach: mach!, ratio: ratio! }));
  const pairs = rows.flatMap((slow) => rows.filter(({ mach }) => mach > slow.mach).map((fast) => ({ slow, fast })));
  const cases = pairs.map(({ slow, fast }) => ({
    slow,
    fast,
    pressure: (1013.25 * (1 / slow.ratio - 1)) / (1 / fast.ratio - 1),
  }));

  test.each(cases.filter(({ pressure }) => pressure > 100))(
    "reaches Mach $fast.mach where Mach $slow.mach at sea level has its impact pressure, by the table",
    ({ slow, fast, pressure }) => {
      const at = isaAltitude(pressure);
      const tas = trueAirspeed(slow.mach * soundAtSeaLevel, at, -30);
      const impactOf = (ratio: number) => 1 / ratio - 1;
      // Half a printed digit of either ratio, carried into the impact pressure, of which Mach takes half and less.
      const loose = [slow, fast].map(({ ratio }) => impactOf(ratio - 0.00005) / impactOf(ratio) - 1);
      const tolerance = (fast.mach / 2) * (loose[0]! + loose[1]!) + 1e-6;
      expect(Math.abs(machNumber(tas, -30) - fast.mach)).toBeLessThanOrEqual(tolerance);
    },
  );

  // 95 kt of true airspeed, as the needle shows them in the standard atmosphere.
  test.each([
    [2400, 92],
    [8000, 84],
  ])("of 95 kt at %d ft needs a calibrated %d kt", (at, cas) => {
    expect(Math.round(calibratedAirspeed(95, at, isaTemperature(at)))).toBe(cas);
    expect(Math.abs(trueAirspeed(cas, at, isaTemperature(at)) - 95)).toBeLessThan(0.6);
  });

  test("undoes calibratedAirspeed", () => {
    fc.assert(
      fc.property(between(1, 480), between(-2000, 60000), between(-70, 50), (tas, at, celsius) => {
        expect(trueAirspeed(calibratedAirspeed(tas, at, celsius), at, celsius)).toBeCloseTo(tas, 6);
      }),
    );
  });

  test("refuses what would be faster than sound", () => {
    expect(() => trueAirspeed(400, 45000, -56.5)).toThrow(OutOfRange);
    expect(() => equivalentAirspeed(400, 45000)).toThrow(/Mach number must be at least 0 and at most 1/);
    expect(() => calibratedAirspeed(600, 36000, -56.5)).toThrow(/Mach number/);
    expect(() => calibratedAirspeed(650, -16000, 15)).toThrow(/calibrated airspeed/);
  });

  test("is 16.4 % more than a low calibrated airspeed at 10,000 ft in the standard atmosphere, where the rule says 20", () => {
    const slow = 10;
    expect(Math.abs(trueAirspeed(slow, 10000, isaTemperature(10000)) / slow - 1.164)).toBeLessThanOrEqual(0.0005);
    expect(trueAirspeedByRule(slow, 10000) / slow).toBeCloseTo(1.2, 12);
  });
});

describe("equivalentAirspeed", () => {
  test("makes the same dynamic pressure at sea level as true airspeed aloft, at any temperature", () => {
    fc.assert(
      fc.property(between(1, 250), between(-2000, 40000), between(-70, 50), (cas, at, celsius) => {
        const density = (isaPressure(at) * 100) / ((8314.32 / 28.9644) * (celsius + 273.15));
        const tas = trueAirspeed(cas, at, celsius);
        const expected = tas * Math.sqrt(density / isaDensity(0));
        expect(equivalentAirspeed(cas, at)).toBeCloseTo(expected, 8);
      }),
    );
  });

  test("stays below calibrated airspeed aloft, by less the slower it is", () => {
    const lost = [100, 200, 300].map((cas) => 1 - equivalentAirspeed(cas, 20000) / cas);
    expect(lost[0]).toBeGreaterThan(0);
    expect(lost[1]).toBeGreaterThan(lost[0]!);
    expect(lost[2]).toBeGreaterThan(lost[1]!);
    expect(lost[0]).toBeLessThan(0.004);
  });
});

test("trueAirspeedByRule adds 2 % a thousand feet, and takes it off below sea level", () => {
  expect(trueAirspeedByRule(95, 5000)).toBeCloseTo(104.5, 12);
  expect(trueAirspeedByRule(100, -1000)).toBeCloseTo(98, 12);
});
