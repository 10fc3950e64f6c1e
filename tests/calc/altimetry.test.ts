import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  coldTemperatureError,
  coldTemperatureErrorByRule,
  isaAltitude,
  isaTemperature,
  lagError,
  pressureAltitude,
  settingError,
  settingErrorByRule,
} from "../../src/calc/index.ts";
import table from "../reference/cold-temperature-error.json" with { type: "json" };
import { between } from "./evenly.ts";

const pressure = between(950, 1050);

describe("settingError", () => {
  test("is what two altimeters differ by that stand at one pressure altitude", () => {
    fc.assert(
      fc.property(pressure, pressure, between(0, 10_000), (set, actual, altitude) => {
        const indicated = pressureAltitude(altitude, actual) - isaAltitude(set);
        expect(settingError(set, actual)).toBeCloseTo(indicated - altitude, 6);
      }),
    );
  });

  test("over-reads on too high a setting and turns its sign with the pressures changed about", () => {
    fc.assert(
      fc.property(pressure, pressure, (set, actual) => {
        fc.pre(Math.abs(set - actual) > 1e-6);
        expect(settingError(set, actual)).toBe(-settingError(actual, set));
        expect(Math.sign(settingError(set, actual))).toBe(Math.sign(set - actual));
      }),
    );
  });

  test("puts 550 ft, to ten, between both signs of 10 hPa", () => {
    expect(Math.abs(settingError(1013, 1003) - settingError(1003, 1013) - 550)).toBeLessThan(5);
  });
});

describe("settingErrorByRule", () => {
  test("takes 30 ft for each hectopascal, or what is given", () => {
    expect(settingErrorByRule(1013, 1003)).toBe(300);
    expect(settingErrorByRule(1003, 1013)).toBe(-300);
    expect(settingErrorByRule(1013, 1003, 27)).toBe(270);
  });
});

describe("coldTemperatureError", () => {
  const cells = table.rows.flatMap(({ degC, ft }) =>
    Object.entries(ft).map(([height, printed]) => ({ degC, height: Number(height), printed })),
  );

  test.each(cells)("rounded up to ten feet is the printed $printed ft at $height ft and $degC °C", (cell) => {
    expect(Math.ceil(coldTemperatureError(cell.height, cell.degC) / 10) * 10).toBe(cell.printed);
  });

  test("adds 476 ft at 2,000 ft and −40 °C", () => {
    expect(coldTemperatureError(2000, -40).toFixed(0)).toBe("476");
  });

  // The same height at one elevation: 273 + 15 − 0.00099 × 4000 = 284.04 K of mean standard temperature.
  test("takes the temperature down to sea level and the mean temperature half-way up from there", () => {
    const t0 = -20 + 0.00198 * 3000;
    expect(coldTemperatureError(1000, -20, 3000)).toBeCloseTo((1000 * (15 - t0)) / (273 + t0 - 0.00198 * 2000), 9);
  });

  test("comes within a per cent of the hydrostatic balance it stands for, at a sea-level aerodrome", () => {
    fc.assert(
      fc.property(between(200, 5000), between(-50, 10), (height, celsius) => {
        const exact = hydrostaticError(height, celsius);
        expect(Math.abs(coldTemperatureError(height, celsius) / exact - 1)).toBeLessThan(0.01);
      }),
    );
  });

  test("is nothing in standard air, at any elevation, and negative in warmer", () => {
    for (const elevation of [0, 500, 4000]) {
      const standard = 15 - 0.00198 * elevation;
      expect(coldTemperatureError(3000, standard, elevation)).toBeCloseTo(0, 9);
      expect(coldTemperatureError(3000, standard + 10, elevation)).toBeLessThan(0);
    }
    expect(coldTemperatureError(3000, 15)).toBe(0);
  });
});

describe("coldTemperatureErrorByRule", () => {
  test("adds 440 ft at 2,000 ft and −40 °C, where the formula adds 476", () => {
    expect(coldTemperatureErrorByRule(2000, -40)).toBeCloseTo(440, 9);
  });

  test("counts from the standard temperature of the aerodrome", () => {
    expect(coldTemperatureErrorByRule(1000, 15 - 1.98 - 10, 1000)).toBeCloseTo(40, 9);
  });

  test("adds too little below −23 °C and too much above, near the ground", () => {
    const gap = (celsius: number) => coldTemperatureErrorByRule(10, celsius) - coldTemperatureError(10, celsius);
    expect(gap(-22.9)).toBeGreaterThan(0);
    expect(gap(-23.1)).toBeLessThan(0);
  });
});

describe("lagError", () => {
  test("settles at the height climbed in a time constant, and is negative climbing", () => {
    expect(lagError(600, 5)).toBe(-50);
    expect(lagError(-600, 5)).toBe(50);
  });

  test("solves lag′ = −VS − lag / τ from nothing", () => {
    fc.assert(
      fc.property(between(-2000, 2000), between(1, 20), between(0, 60), (verticalSpeed, τ, time) => {
        const later = 0.001;
        const slope = (lagError(verticalSpeed, τ, time + later) - lagError(verticalSpeed, τ, time)) / later;
        const middle = lagError(verticalSpeed, τ, time + later / 2);
        expect(slope).toBeCloseTo(-verticalSpeed / 60 - middle / τ, 5);
      }),
    );
    expect(lagError(700, 3, 0)).toBe(0);
  });
});

/**
 * Height to add by integrating dp = −p g dh / (R T) twice: up the standard atmosphere to the pressure that a height
 * indicates, and up the cold air to the same pressure. In equal steps of pressure the heights of both grow as their
 * temperatures.
 */
function hydrostaticError(height: number, celsius: number): number {
  const steps = 2000;
  let colder = 0;
  for (let i = 0; i < steps; i++) {
    const standard = isaTemperature(((i + 0.5) * height) / steps) + 273.15;
    colder += ((height / steps) * (standard + celsius - 15)) / standard;
  }
  // The aeroplane is to fly at the published height: the indicated one is in the ratio by which the air has shrunk.
  return height * (height / colder - 1);
}
