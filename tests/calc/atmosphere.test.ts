import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  densityAltitude,
  feetPerHectopascal,
  isaAltitude,
  isaDensity,
  isaPressure,
  isaTemperature,
  pressureAltitude,
  pressureAltitudeByRule,
} from "../../src/calc/index.ts";
import levels from "../reference/icao-pressure-levels.json" with { type: "json" };
import table from "../reference/us-standard-atmosphere-1976.json" with { type: "json" };
import { between, halfDigit } from "./arbitrary.ts";

const feetFromKm = (km: number) => km / 0.0003048;
const altitude = between(-16000, 100000);
const heights = levels.rows.map(([hPa, m, ft, degC]) => ({ hPa: hPa!, m: m!, ft: ft!, degC: degC! }));

describe("U.S. Standard Atmosphere 1976, printed to six figures", () => {
  /** Printed 701.086 where the formula with the table's own gas constant gives 701.0854: 8e-7 of it. */
  const moved = 3;
  const rows = table.rows.map(([km, hPa]) => ({ km: km!, hPa: hPa! }));

  test.each(rows.filter(({ km }) => km !== moved))("isaPressure meets the $hPa hPa at $km km", ({ km, hPa }) => {
    expect(Math.abs(isaPressure(feetFromKm(km)) - hPa)).toBeLessThanOrEqual(halfDigit(hPa, 6));
  });

  test("isaPressure meets the row at 3 km within the bound that the file gives, and within a digit", () => {
    const { hPa } = rows[moved]!;
    expect(Math.abs(isaPressure(feetFromKm(moved)) / hPa - 1)).toBeLessThanOrEqual(5.6e-6);
    expect(Math.abs(isaPressure(feetFromKm(moved)) - hPa)).toBeLessThanOrEqual(2 * halfDigit(hPa, 6));
  });
});

describe("ICAO pressure levels", () => {
  // The level of 900 hPa is at 988.501 m, printed 988: a thousandth of a metre over the half.
  test.each(heights)("isaAltitude meets the $ft ft and $m m of $hPa hPa", ({ hPa, ft, m }) => {
    expect(Math.abs(isaAltitude(hPa) - ft)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(isaAltitude(hPa) * 0.3048 - m)).toBeLessThanOrEqual(hPa === 900 ? 0.501 : 0.5);
  });

  /** Temperatures that the table cut off where it rounds all others: −44.57 and −52.36 by the formula. */
  const cut = new Map([
    [300, -44.57],
    [250, -52.36],
  ]);

  test.each(heights)("isaTemperature meets the $degC °C of $hPa hPa", ({ hPa, degC }) => {
    const half = cut.has(hPa) ? 0.005 : 0.05;
    expect(Math.abs(isaTemperature(isaAltitude(hPa)) - (cut.get(hPa) ?? degC))).toBeLessThanOrEqual(half);
    expect(Math.abs(isaTemperature(isaAltitude(hPa)) - degC)).toBeLessThan(0.1);
  });
});

// ICAO Doc 7488: 1.2250 kg/m³ at sea level and 0.36391 at the tropopause.
test.each([
  [0, 1.225, 0.00005],
  [11, 0.36391, 0.00001],
])("isaDensity at %d km is %d kg/m³", (km, density, tolerance) => {
  expect(Math.abs(isaDensity(feetFromKm(km)) - density)).toBeLessThanOrEqual(tolerance);
});

// ICAO Doc 7488: −56.5 °C from 11 to 20 km, then 1 °C warmer a kilometre.
test.each([
  [-2, 28],
  [0, 15],
  [11, -56.5],
  [15, -56.5],
  [20, -56.5],
  [25, -51.5],
])("isaTemperature at %d km is %d °C", (km, celsius) => {
  expect(isaTemperature(feetFromKm(km))).toBeCloseTo(celsius, 9);
});

test("isaPressure is in hydrostatic balance with isaDensity in every layer", () => {
  fc.assert(
    fc.property(between(-15000, 99000), (at) => {
      const fall = (isaPressure(at - 1) - isaPressure(at + 1)) * 100;
      expect(fall / (isaDensity(at) * 9.80665 * 2 * 0.3048)).toBeCloseTo(1, 6);
    }),
  );
});

test("isaPressure has no step between the layers", () => {
  for (const km of [11, 20]) {
    const edge = feetFromKm(km);
    expect(isaPressure(edge - 0.001) / isaPressure(edge + 0.001)).toBeCloseTo(1, 6);
  }
});

test("isaAltitude undoes isaPressure in every layer", () => {
  fc.assert(
    fc.property(altitude, (at) => {
      expect(isaAltitude(isaPressure(at))).toBeCloseTo(at, 6);
    }),
  );
});

describe("pressureAltitude", () => {
  // The ICAO levels again: standard altitude of the sub-scale's pressure, from an altitude of zero.
  test.each(heights.filter(({ hPa }) => hPa >= 800 && hPa <= 1100))("is $ft ft on QNH $hPa at sea level", (level) => {
    expect(Math.abs(pressureAltitude(0, level.hPa) - level.ft)).toBeLessThanOrEqual(0.5);
  });

  test("is the altitude itself on 1013.25, and moves foot for foot with it", () => {
    fc.assert(
      fc.property(between(-1000, 60000), between(900, 1060), (at, qnh) => {
        expect(pressureAltitude(at, 1013.25)).toBeCloseTo(at, 6);
        expect(pressureAltitude(at, qnh) - pressureAltitude(0, qnh)).toBeCloseTo(at, 6);
      }),
    );
  });

  test("is higher than the altitude when the QNH is low", () => {
    expect(pressureAltitude(2000, 1003)).toBeGreaterThan(2000);
    expect(pressureAltitude(2000, 1023)).toBeLessThan(2000);
  });
});

test("pressureAltitudeByRule counts 30 ft for each hectopascal from 1013, or what it is told", () => {
  expect(pressureAltitudeByRule(2000, 1003)).toBe(2300);
  expect(pressureAltitudeByRule(2000, 1023, 27)).toBe(1730);
});

describe("densityAltitude", () => {
  test("is the pressure altitude at standard temperature", () => {
    fc.assert(
      fc.property(between(-16000, 65000), (at) => {
        expect(densityAltitude(at, isaTemperature(at))).toBeCloseTo(at, 5);
      }),
    );
  });

  test("is where the standard atmosphere is as dense as the air of that pressure and temperature", () => {
    fc.assert(
      fc.property(between(-5000, 65000), between(-90, 60), (at, celsius) => {
        const density = (isaPressure(at) * 100) / ((8314.32 / 28.9644) * (celsius + 273.15));
        const found = densityAltitude(at, celsius);
        fc.pre(found > -16000);
        expect(isaDensity(found) / density).toBeCloseTo(1, 10);
      }),
    );
  });

  test("rises with temperature", () => {
    expect(densityAltitude(5000, 30)).toBeGreaterThan(densityAltitude(5000, 5));
  });
});

describe("feetPerHectopascal", () => {
  test("is the slope of isaAltitude", () => {
    fc.assert(
      fc.property(between(-15000, 65000), (at) => {
        const pressure = isaPressure(at);
        const slope = (isaAltitude(pressure - 0.01) - isaAltitude(pressure + 0.01)) / 0.02;
        expect(feetPerHectopascal(at) / slope).toBeCloseTo(1, 5);
      }),
    );
  });

  test("is 27 ft at sea level and 37 ft at 10,000 ft", () => {
    expect(Math.round(feetPerHectopascal(0))).toBe(27);
    expect(Math.round(feetPerHectopascal(10000))).toBe(37);
  });
});
