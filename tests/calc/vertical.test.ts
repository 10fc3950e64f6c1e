import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  angleForVerticalSpeed,
  descentDistance,
  descentDistanceByRule,
  feetPerMile,
  heightError,
  lookInterval,
  verticalSpeedByRule,
  verticalSpeedForAngle,
  verticalSpeedFromPitch,
} from "../../src/calc/index.ts";
import { airspeed, between } from "./arbitrary.ts";

const groundSpeed = between(30, 400);
const angle = between(0.5, 80);

describe("feetPerMile", () => {
  test("is 318 ft for 3°, up or down", () => {
    expect(feetPerMile(3).toFixed(0)).toBe("318");
    expect(feetPerMile(-3)).toBe(feetPerMile(3));
  });

  test("is a nautical mile up for each along at 45°", () => {
    expect(feetPerMile(45)).toBeCloseTo(1852 / 0.3048, 8);
  });
});

describe("verticalSpeedForAngle", () => {
  test("on 3° is 5.31 times the ground speed: 478 ft/min at 90 kt, 584 at 110", () => {
    expect((verticalSpeedForAngle(100, 3) / 100).toFixed(2)).toBe("5.31");
    expect(verticalSpeedForAngle(90, -3).toFixed(0)).toBe("478");
    expect(verticalSpeedForAngle(110, 3).toFixed(0)).toBe("584");
  });

  test("is zero when nothing moves over the ground", () => {
    expect(verticalSpeedForAngle(0, 3)).toBe(0);
    expect(verticalSpeedForAngle(90, -0)).toBe(0);
  });
});

test("angleForVerticalSpeed undoes verticalSpeedForAngle, in climb and descent", () => {
  fc.assert(
    fc.property(groundSpeed, between(0.1, 30), fc.constantFrom(1, -1), (speed, γ, sign) => {
      expect(angleForVerticalSpeed(speed, sign * verticalSpeedForAngle(speed, γ))).toBeCloseTo(γ, 9);
    }),
  );
});

test("verticalSpeedByRule is five times the ground speed, 6 % short of 3°", () => {
  expect(verticalSpeedByRule(90)).toBe(450);
  expect((1 - verticalSpeedByRule(120) / verticalSpeedForAngle(120, 3)).toFixed(2)).toBe("0.06");
});

describe("descentDistance", () => {
  test("loses the height at the gradient of the path", () => {
    fc.assert(
      fc.property(between(0, 40000), angle, (height, γ) => {
        expect(descentDistance(height, γ) * feetPerMile(γ)).toBeCloseTo(height, 6);
        expect(descentDistance(height, -γ)).toBe(descentDistance(height, γ));
      }),
    );
  });

  test("takes 3° unless told", () => {
    expect(descentDistance(3000)).toBe(descentDistance(3000, 3));
  });

  test("refuses a level path", () => {
    expect(() => descentDistance(3000, 0)).toThrow(/path angle must be over 0/);
  });
});

test("descentDistanceByRule is three miles a thousand feet, 4.5 % short of 3°", () => {
  expect(descentDistanceByRule(5000)).toBe(15);
  expect(1 - descentDistanceByRule(5000) / descentDistance(5000)).toBeCloseTo(0.045, 3);
});

describe("verticalSpeedFromPitch", () => {
  test("is 159 ft/min for 1° at 90 kt, up or down", () => {
    expect(verticalSpeedFromPitch(90, 1).toFixed(0)).toBe("159");
    expect(verticalSpeedFromPitch(90, -1)).toBe(-verticalSpeedFromPitch(90, 1));
    expect(verticalSpeedFromPitch(90, -0)).toBe(0);
  });

  test("is all of the airspeed straight up", () => {
    expect(verticalSpeedFromPitch(60, 90)).toBeCloseTo(1852 / 0.3048, 8);
  });
});

describe("heightError", () => {
  test("is the vertical speed over the time, with its sign", () => {
    expect(heightError(-200, 30)).toBe(-100);
    expect(heightError(159, 60)).toBe(159);
    expect(heightError(-0, 10)).toBe(0);
  });
});

describe("lookInterval", () => {
  test("is 38 s to 100 ft at 90 kt with 1° of pitch, up or down", () => {
    expect(lookInterval(90, 1, 100).toFixed(0)).toBe("38");
    expect(lookInterval(90, -1, 100)).toBe(lookInterval(90, 1, 100));
  });

  test("is when the height error reaches the tolerance", () => {
    fc.assert(
      fc.property(airspeed, between(0.1, 10), between(10, 300), (tas, pitch, tolerance) => {
        const time = lookInterval(tas, pitch, tolerance);
        fc.pre(time <= 3600);
        expect(heightError(verticalSpeedFromPitch(tas, pitch), time)).toBeCloseTo(tolerance, 8);
      }),
    );
  });

  test("is infinite without a pitch error, whatever the tolerance", () => {
    expect(lookInterval(90, 0, 100)).toBe(Infinity);
    expect(lookInterval(90, -0, 0)).toBe(Infinity);
  });
});
