import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  compassAccelerating,
  compassHeading,
  compassInTurn,
  magneticDip,
  OutOfRange,
  rollOutHeadingByRule,
  rollOutReading,
  shortestTurn,
  timedTurn,
  trueHeading,
} from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const heading = between(0, 359.999);
const dip = between(-70, 70);
const gentle = between(-18, 18);
const RADIAN = Math.PI / 180;
const apart = (a: number, b: number) => Math.abs(shortestTurn(a, b));

describe("magneticDip", () => {
  test("meets tan I = 2 tan λ", () => {
    fc.assert(
      fc.property(between(-85, 85), (λ) => {
        expect(Math.tan(magneticDip(λ) * RADIAN)).toBeCloseTo(2 * Math.tan(λ * RADIAN), 9);
      }),
    );
  });

  test("is level on the equator and upright at the poles", () => {
    expect(magneticDip(0)).toBe(0);
    expect(magneticDip(90)).toBeCloseTo(90, 9);
    expect(magneticDip(-90)).toBeCloseTo(-90, 9);
  });
});

describe("compassInTurn", () => {
  test.each([
    [0, -30],
    [30, -36],
    [40, -37],
    [330, -21],
  ])("at dip 66 and 15° right reads wrong on %d° by %d°", (on, error) => {
    expect(shortestTurn(on, compassInTurn(on, 66, 15)).toFixed(0)).toBe(String(error));
  });

  test("is 24° wrong on north at 40° of latitude and 15° of bank, to half a degree", () => {
    expect(apart(0, compassInTurn(0, magneticDip(40), 15))).toBeCloseTo(23.5, 1);
  });

  test("lags on north by the latitude at 30° of bank", () => {
    fc.assert(
      fc.property(between(0, 40), (latitude) => {
        expect(apart(compassInTurn(0, magneticDip(latitude), 30), -latitude)).toBeLessThan(1e-9);
      }),
    );
  });

  test("reads what a needle free in the plane of the tilted card points to", () => {
    fc.assert(
      fc.property(heading, dip, gentle, (on, I, φ) => {
        expect(apart(compassInTurn(on, I, φ), needleOnCard(on, I, rolled(φ)))).toBeLessThan(1e-9);
      }),
    );
  });

  test("mirrors left and right", () => {
    fc.assert(
      fc.property(heading, dip, gentle, (on, I, φ) => {
        expect(apart(compassInTurn(-on, I, -φ), -compassInTurn(on, I, φ))).toBeLessThan(1e-9);
      }),
    );
  });

  test("mirrors north and south", () => {
    fc.assert(
      fc.property(heading, dip, gentle, (on, I, φ) => {
        expect(apart(compassInTurn(180 - on, -I, φ), 180 - compassInTurn(on, I, -φ))).toBeLessThan(1e-9);
      }),
    );
  });

  test("reads right wings level; and on north and south where there is no dip", () => {
    fc.assert(
      fc.property(heading, dip, gentle, (on, I, φ) => {
        expect(apart(compassInTurn(on, I, 0), on)).toBeLessThan(1e-9);
        expect(apart(compassInTurn(0, 0, φ), 0)).toBeLessThan(1e-9);
        expect(apart(compassInTurn(180, 0, φ), 180)).toBeLessThan(1e-9);
      }),
    );
  });

  test.each([24, -24])("refuses %d° of bank at a dip of 66, either way, and takes a hair less", (bank) => {
    for (const I of [66, -66]) {
      expect(() => compassInTurn(10, I, bank)).toThrow(OutOfRange);
      expect(compassInTurn(10, I, bank * 0.9999)).toBeGreaterThanOrEqual(0);
    }
  });
});

describe("compassAccelerating", () => {
  test("on east at 60° of dip and 1 kt/s turns about 5° toward north", () => {
    expect(compassAccelerating(90, 60, 1)).toBeCloseTo(84.82, 2);
    expect(compassAccelerating(270, 60, 1)).toBeCloseTo(275.18, 2);
    expect(compassAccelerating(90, 60, -1)).toBeCloseTo(95.18, 2);
  });

  test("reads what a needle free in the plane of the tilted card points to", () => {
    fc.assert(
      fc.property(heading, dip, between(-5, 5), (on, I, acceleration) => {
        const tilt = Math.atan((acceleration * 1852) / 3600 / 9.80665);
        expect(apart(compassAccelerating(on, I, acceleration), needleOnCard(on, I, pitched(tilt)))).toBeLessThan(1e-9);
      }),
    );
  });

  test("mirrors left and right, north and south", () => {
    fc.assert(
      fc.property(heading, dip, between(-5, 5), (on, I, a) => {
        expect(apart(compassAccelerating(-on, I, a), -compassAccelerating(on, I, a))).toBeLessThan(1e-9);
        expect(apart(compassAccelerating(180 - on, -I, a), 180 - compassAccelerating(on, I, a))).toBeLessThan(1e-9);
      }),
    );
  });

  test("reads right at a steady speed, and on east where there is no dip", () => {
    fc.assert(
      fc.property(heading, dip, between(-5, 5), (on, I, a) => {
        expect(apart(compassAccelerating(on, I, 0), on)).toBeLessThan(1e-9);
        expect(apart(compassAccelerating(90, 0, a), 90)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("rollOutHeadingByRule", () => {
  // FAA-H-8083-15B: from the north, latitude and lead before north, latitude less lead past south.
  test.each([
    [0, "right", 50, 7, 303],
    [0, "left", 50, 7, 57],
    [180, "right", 50, 7, 223],
    [180, "left", 50, 7, 137],
    [90, "right", 50, 7, 83],
    [270, "left", 50, 7, 277],
    [180, "right", -35, 7, 138],
    [180, "left", -35, 7, 222],
    [0, "right", -35, 7, 28],
    [0, "left", -35, 7, 332],
    [0, "right", -5, 7, 358],
    [60, "right", 50, 0, 35],
  ] as const)(
    "on to %d° turning %s at latitude %d with a lead of %d starts at %d",
    (target, turn, latitude, lead, at) => {
      expect(rollOutHeadingByRule(target, turn, latitude, lead)).toBeCloseTo(at, 9);
    },
  );

  test("leaves only the lead on the equator", () => {
    fc.assert(
      fc.property(heading, between(0, 20), (target, lead) => {
        expect(apart(rollOutHeadingByRule(target, "right", 0, lead), target - lead)).toBeLessThan(1e-9);
        expect(apart(rollOutHeadingByRule(target, "left", 0, lead), target + lead)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("rollOutReading", () => {
  test("is the reading of the card on the heading that is the lead short of the target", () => {
    expect(rollOutReading(360, "right", 66, 15, 7)).toBeCloseTo(compassInTurn(353, 66, 15), 9);
    expect(rollOutReading(360, "left", 66, 15, 7)).toBeCloseTo(compassInTurn(7, 66, -15), 9);
    expect(rollOutReading(360, "left", 66, -15, 7)).toBeCloseTo(compassInTurn(7, 66, -15), 9);
  });

  test("agrees with the rule on north and south at 30° of bank without a lead", () => {
    fc.assert(
      fc.property(between(5, 40), fc.constantFrom("left", "right"), (latitude, turn) => {
        for (const target of [0, 180]) {
          const reading = rollOutReading(target, turn, magneticDip(latitude), 30, 0);
          expect(apart(reading, rollOutHeadingByRule(target, turn, latitude, 0))).toBeLessThan(1e-6);
        }
      }),
    );
  });
});

describe("trueHeading", () => {
  test("adds east and takes off west", () => {
    expect(trueHeading(270, 2, -5)).toBe(267);
    expect(trueHeading(358, 1, 4)).toBe(3);
  });

  test("is undone by compassHeading", () => {
    fc.assert(
      fc.property(heading, between(-20, 20), between(-40, 40), (compass, deviation, variation) => {
        const back = compassHeading(trueHeading(compass, deviation, variation), deviation, variation);
        expect(apart(back, compass)).toBeLessThan(1e-9);
      }),
    );
    expect(compassHeading(3, 1, 4)).toBe(358);
  });
});

describe("timedTurn", () => {
  test("takes 30 s for 90° at rate one, to either side", () => {
    expect(timedTurn(90)).toBe(30);
    expect(timedTurn(-90)).toBe(30);
    expect(timedTurn(90, -1.5)).toBe(60);
  });

  test("never ends without a rate, and needs no time for no turn", () => {
    expect(timedTurn(1, 0)).toBe(Infinity);
    expect(timedTurn(0, 0)).toBe(0);
  });
});

type Vector = readonly [number, number, number];

/** Nose and right wing of the card's plane for an aeroplane on a heading: north, east, down. */
type Tilt = (on: number) => { nose: Vector; wing: Vector };

function rolled(bank: number): Tilt {
  const φ = (bank * Math.PI) / 180;
  return (on) => {
    const { nose, wing } = level(on);
    return { nose, wing: sum(scaled(wing, Math.cos(φ)), scaled([0, 0, 1], Math.sin(φ))) };
  };
}

/** Its bob hangs back, so that the card's fore side dips. */
function pitched(tilt: number): Tilt {
  return (on) => {
    const { nose, wing } = level(on);
    return { nose: sum(scaled(nose, Math.cos(tilt)), scaled([0, 0, 1], Math.sin(tilt))), wing };
  };
}

function level(on: number): { nose: Vector; wing: Vector } {
  const H = (on * Math.PI) / 180;
  return { nose: [Math.cos(H), Math.sin(H), 0], wing: [-Math.sin(H), Math.cos(H), 0] };
}

/** The heading that a card shows whose needle lies along the field's part in the card's plane. */
function needleOnCard(on: number, dip: number, tilt: Tilt): number {
  const field: Vector = [1, 0, Math.tan((dip * Math.PI) / 180)];
  const { nose, wing } = tilt(on);
  return (Math.atan2(-dot(field, wing), dot(field, nose)) * 180) / Math.PI;
}

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const scaled = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
const sum = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
