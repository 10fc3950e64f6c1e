import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airspeedWithBlockedPitot, airspeedWithBlockedStatic, OutOfRange } from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const airspeed = between(60, 200);
const altitude = between(0, 10_000);

describe("airspeedWithBlockedPitot", () => {
  test.each([
    [3000, "169"],
    [1800, "62"],
    [2000, "90"],
  ])("blocked at 90 kt and 2,000 ft reads at %d ft %s kt", (now, reads) => {
    expect(airspeedWithBlockedPitot(90, 2000, now).toFixed(0)).toBe(reads);
    expect(airspeedWithBlockedPitot(90, 2000, now, "blocked").toFixed(0)).toBe(reads);
  });

  test("reads zero with the drain open, wherever it flies", () => {
    fc.assert(
      fc.property(airspeed, altitude, altitude, (speed, blockedAt, now) => {
        expect(airspeedWithBlockedPitot(speed, blockedAt, now, "open")).toBe(0);
      }),
    );
  });

  test("reads like an altimeter: more the higher it climbs, zero far enough below", () => {
    fc.assert(
      fc.property(airspeed, altitude, between(1, 500), (speed, now, climb) => {
        const lower = airspeedWithBlockedPitot(speed, 5000, now);
        const higher = airspeedWithBlockedPitot(speed, 5000, now + climb);
        expect(higher).toBeGreaterThanOrEqual(lower);
        if (lower > 0) expect(higher).toBeGreaterThan(lower);
      }),
    );
    expect(airspeedWithBlockedPitot(90, 5000, 1000)).toBe(0);
  });

  // Half of 1.225 kg/m³ × (46.3 m/s)² is 13.1 hPa, and a shade more by compression: at 28.8 ft/hPa, 380 ft.
  test("falls to zero where the pressure outside is the total pressure that was caught", () => {
    expect(airspeedWithBlockedPitot(90, 2000, 1625)).toBeGreaterThan(0);
    expect(airspeedWithBlockedPitot(90, 2000, 1615)).toBe(0);
  });

  test("refuses to read beyond the speed of sound", () => {
    expect(() => airspeedWithBlockedPitot(600, 0, 30_000)).toThrow(OutOfRange);
  });
});

describe("airspeedWithBlockedStatic", () => {
  test("blocked at 3,000 ft reads 169 kt at 2,000 ft and 90 kt", () => {
    expect(airspeedWithBlockedStatic(90, 3000, 2000).toFixed(0)).toBe("169");
  });

  test("reads right where it blocked, too much below and too little above", () => {
    fc.assert(
      fc.property(airspeed, altitude, between(1, 300), (speed, blockedAt, apart) => {
        expect(airspeedWithBlockedStatic(speed, blockedAt, blockedAt)).toBeCloseTo(speed, 6);
        expect(airspeedWithBlockedStatic(speed, blockedAt, blockedAt - apart)).toBeGreaterThan(speed);
        expect(airspeedWithBlockedStatic(speed, blockedAt, blockedAt + apart)).toBeLessThan(speed);
      }),
    );
  });

  test("reads as a blocked pitot head does with the altitudes changed about", () => {
    fc.assert(
      fc.property(airspeed, altitude, altitude, (speed, one, other) => {
        const read = airspeedWithBlockedStatic(speed, one, other);
        expect(read).toBeCloseTo(airspeedWithBlockedPitot(speed, other, one), 9);
      }),
    );
  });
});
