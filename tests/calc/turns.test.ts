import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bankByFifteenPercentRule,
  bankByTenthPlusSevenRule,
  bankForRadius,
  bankForRate,
  convert,
  loadFactor,
  stallSpeedInTurn,
  turnRadius,
  turnRate,
  turnTime,
} from "../../src/calc/index.ts";
import chart from "../reference/load-factor.json" with { type: "json" };
import { airspeed, bank, between, someBank } from "./arbitrary.ts";

describe("turnRate", () => {
  // ICAO Doc 8168 gives the rate as 3431 tan φ / (π V) with V in knots, and as 6355 tan φ / (π V) in km/h.
  test.each([
    [3431, "kt"],
    [6355, "km/h"],
  ] as const)("meets the printed constant %d for a speed in %s", (printed, unit) => {
    fc.assert(
      fc.property(airspeed, someBank, (tas, φ) => {
        const V = convert(tas, "kt", unit);
        const constant = (turnRate(tas, φ) * Math.PI * V) / Math.tan(convert(φ, "deg", "rad"));
        expect(Math.abs(constant - printed)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  test("turns left as fast as right and has the sign of the bank", () => {
    fc.assert(
      fc.property(airspeed, someBank, (tas, φ) => {
        expect(turnRate(tas, -φ)).toBe(-turnRate(tas, φ));
        expect(turnRate(tas, φ)).toBeGreaterThan(0);
      }),
    );
  });

  test("is zero with the wings level", () => {
    expect(turnRate(90, 0)).toBe(0);
    expect(turnRate(90, -0)).toBe(0);
  });

  test("goes from rate one at 95 kt to 3.8°/s at 75 kt under the same 14.6°", () => {
    expect(bankForRate(95).toFixed(1)).toBe("14.6");
    expect(turnRate(75, 14.6).toFixed(1)).toBe("3.8");
  });
});

describe("turnRadius", () => {
  // ICAO Doc 8168: r = V / (20 π R), with V in knots, R in °/s and r in nautical miles.
  test("meets V / (20 π R), for either side", () => {
    fc.assert(
      fc.property(airspeed, bank, (tas, φ) => {
        fc.pre(Math.abs(φ) > 0.01);
        expect(turnRadius(tas, φ) / (tas / (20 * Math.PI * Math.abs(turnRate(tas, φ))))).toBeCloseTo(1, 12);
      }),
    );
  });

  test("is infinite with the wings level", () => {
    expect(turnRadius(90, 0)).toBe(Infinity);
  });
});

describe("bankForRate", () => {
  test("undoes turnRate", () => {
    fc.assert(
      fc.property(airspeed, bank, (tas, φ) => {
        expect(bankForRate(tas, turnRate(tas, φ))).toBeCloseTo(φ, 9);
      }),
    );
  });

  test("takes rate one, 3°/s, unless told", () => {
    fc.assert(fc.property(airspeed, (tas) => bankForRate(tas) === bankForRate(tas, 3)));
  });

  test("is zero for no rate", () => {
    expect(bankForRate(90, -0)).toBe(0);
  });
});

test("bankForRadius undoes turnRadius", () => {
  fc.assert(
    fc.property(airspeed, someBank, (tas, φ) => {
      expect(bankForRadius(tas, turnRadius(tas, φ))).toBeCloseTo(φ, 9);
    }),
  );
});

describe("rules for the bank of rate one", () => {
  test.each([
    [40, 4.7],
    [90, 2.1],
    [250, -2.5],
  ])("bankByTenthPlusSevenRule at %d kt is %d° off", (tas, error) => {
    expect(Math.abs(bankByTenthPlusSevenRule(tas) - bankForRate(tas) - error)).toBeLessThanOrEqual(0.05);
  });

  test("bankByTenthPlusSevenRule is right about 140 kt", () => {
    expect(Math.abs(bankByTenthPlusSevenRule(140) - bankForRate(140))).toBeLessThan(0.1);
  });

  test("bankByFifteenPercentRule is under 0.4° off from 40 to 160 kt, then errs more and more", () => {
    const error = (tas: number) => bankByFifteenPercentRule(tas) - bankForRate(tas);
    fc.assert(fc.property(between(40, 160), (tas) => Math.abs(error(tas)) < 0.4));
    expect(error(200)).toBeGreaterThan(0.4);
    expect(error(250)).toBeGreaterThan(error(200));
  });
});

describe("turnTime", () => {
  test("at rate one is a second for each three degrees, whichever way", () => {
    fc.assert(
      fc.property(airspeed, between(-720, 720), fc.constantFrom(1, -1), (tas, change, side) => {
        expect(turnTime(tas, side * bankForRate(tas), change)).toBeCloseTo(Math.abs(change) / 3, 8);
      }),
    );
  });

  test("is infinite with the wings level", () => {
    expect(turnTime(90, 0, 90)).toBe(Infinity);
    expect(turnTime(90, 0, 0)).toBe(Infinity);
  });
});

// The chart cuts off behind its last digit: 1/cos 30° = 1.1547 is printed 1.154, 1/cos 70° = 2.9238 is printed 2.923.
test.each(chart.rows.map(([φ, n]) => ({ φ: φ!, n: n! })))("loadFactor meets the chart's $n g at $φ°", ({ φ, n }) => {
  expect(loadFactor(φ)).toBeGreaterThanOrEqual(n - 1e-12);
  expect(loadFactor(φ)).toBeLessThan(n + 0.001);
  expect(loadFactor(-φ)).toBe(loadFactor(φ));
});

describe("stallSpeedInTurn", () => {
  test("grows with the root of the load factor: by 19 % at 45°, by 41 % at 60°", () => {
    expect(stallSpeedInTurn(100, 45)).toBeCloseTo(118.92, 2);
    expect(stallSpeedInTurn(50, -60)).toBeCloseTo(70.71, 2);
  });

  test("is the stall speed itself with the wings level", () => {
    expect(stallSpeedInTurn(48, 0)).toBe(48);
  });
});
