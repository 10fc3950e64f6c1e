import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  maximumDrift,
  maximumDriftByRule,
  OutOfRange,
  shortestTurn,
  trackMadeGood,
  turnInWind,
  windComponents,
  windTriangle,
} from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const direction = between(0, 359.999);
const tas = between(60, 200);
const windSpeed = between(0, 50);

describe("windTriangle", () => {
  test("is undone by trackMadeGood", () => {
    fc.assert(
      fc.property(direction, tas, direction, windSpeed, (course, V, from, W) => {
        const { heading, groundSpeed, correction } = windTriangle(course, V, from, W)!;
        const made = trackMadeGood(heading, V, from, W);
        expect(Math.abs(shortestTurn(course, made.track))).toBeLessThan(1e-9);
        expect(made.groundSpeed).toBeCloseTo(groundSpeed, 9);
        expect(Math.abs(shortestTurn(correction, shortestTurn(course, heading)))).toBeLessThan(1e-9);
      }),
    );
  });

  test("corrects into a wind from the right and slows down in a headwind", () => {
    expect(windTriangle(90, 100, 180, 50)).toEqual({
      heading: expect.closeTo(120, 9),
      groundSpeed: expect.closeTo(100 * Math.cos(Math.PI / 6), 9),
      correction: expect.closeTo(30, 9),
    });
    expect(windTriangle(350, 100, 350, 20)).toMatchObject({ heading: 350, groundSpeed: expect.closeTo(80, 9) });
    expect(windTriangle(0, 100, 180, 20)!.groundSpeed).toBeCloseTo(120, 9);
  });

  test("has no answer where the crosswind exceeds the true airspeed or the headwind leaves no ground speed", () => {
    expect(windTriangle(0, 50, 90, 50.001)).toBeNull();
    expect(windTriangle(0, 50, 0, 50)).toBeNull();
    expect(windTriangle(0, 50, 30, 60)).toBeNull();
    expect(windTriangle(0, 50, 150, 60)!.groundSpeed).toBeGreaterThan(50);
  });

  test("takes a crosswind as strong as the true airspeed where the wind also helps along", () => {
    const { crosswind, headwind } = windComponents(0, 150, 100);
    expect(windTriangle(0, crosswind, 150, 100)).toEqual({
      heading: expect.closeTo(90, 6),
      groundSpeed: expect.closeTo(-headwind, 6),
      correction: expect.closeTo(90, 6),
    });
  });

  // The greatest change of arcsin(25 sin θ / 90) over 20° of θ is that from a wind along the course.
  test("costs 5.5° where 20° of variation was forgotten, at 25 kt and 90 kt", () => {
    const wrong = Array.from({ length: 361 }, (_, from) =>
      Math.abs(windTriangle(0, 90, from + 20, 25)!.correction - windTriangle(0, 90, from, 25)!.correction),
    );
    expect(Math.max(...wrong).toFixed(1)).toBe("5.5");
  });
});

describe("trackMadeGood", () => {
  test("drifts downwind", () => {
    expect(trackMadeGood(0, 100, 270, 100)).toEqual({
      track: expect.closeTo(45, 9),
      groundSpeed: expect.closeTo(100 * Math.SQRT2, 9),
    });
    expect(trackMadeGood(90, 100, 180, 100).track).toBeCloseTo(45, 9);
    expect(trackMadeGood(90, 100, 0, 100).track).toBeCloseTo(135, 9);
  });
});

describe("windComponents", () => {
  test.each([
    [0, 0, 20, 0],
    [90, 180, 0, 20],
    [90, 0, 0, -20],
    [30, 210, -20, 0],
    [350, 20, 20 * Math.cos(Math.PI / 6), 10],
  ])("on course %d° with 20 kt from %d° is %d kt ahead and %d kt from the right", (course, from, ahead, across) => {
    const { headwind, crosswind } = windComponents(course, from, 20);
    expect(headwind).toBeCloseTo(ahead, 9);
    expect(crosswind).toBeCloseTo(across, 9);
  });
});

describe("maximumDrift", () => {
  test("is the largest correction of windTriangle over all winds of a strength", () => {
    const largest = Math.max(...Array.from({ length: 360 }, (_, from) => windTriangle(0, 90, from, 30)!.correction));
    expect(maximumDrift(90, 30)).toBeCloseTo(largest, 9);
  });

  test("is upright in a wind as strong as the true airspeed, and has no answer beyond", () => {
    expect(maximumDrift(50, 50)).toBeCloseTo(90, 9);
    expect(maximumDrift(50, 50.01)).toBeNull();
    expect(maximumDrift(50, 0)).toBe(0);
  });

  test("is under the rule by one part in twenty in a light wind", () => {
    expect(maximumDriftByRule(90, 15)).toBe(10);
    expect(maximumDriftByRule(1000 / 10, 0.01) / maximumDrift(100, 0.01)!).toBeCloseTo((60 * Math.PI) / 180, 6);
  });
});

describe("turnInWind", () => {
  test("meets the path stepped through with the same heading and wind", () => {
    const turn = fc.tuple(direction, between(-400, 400), tas, between(1, 6), direction, windSpeed);
    fc.assert(
      fc.property(turn, (values) => {
        const stepped = steppedTurn(...values);
        const { north, east, time } = turnInWind(...values);
        expect(north).toBeCloseTo(stepped.north, 5);
        expect(east).toBeCloseTo(stepped.east, 5);
        expect(time).toBeCloseTo(stepped.time, 9);
      }),
    );
  });

  test("reverses 0.95 NM across in 60 s at 90 kt and rate one", () => {
    const { north, east, time } = turnInWind(0, 180, 90, 3, 0, 0);
    expect(east.toFixed(2)).toBe("0.95");
    expect(north).toBeCloseTo(0, 12);
    expect(time).toBe(60);
    expect(turnInWind(0, -180, 90, 3, 0, 0).east.toFixed(2)).toBe("-0.95");
  });

  test("carries a circle two thirds of a mile downwind in 20 kt", () => {
    const { north, east } = turnInWind(40, 360, 90, 3, 270, 20);
    expect(east).toBeCloseTo(2 / 3, 9);
    expect(north).toBeCloseTo(0, 9);
  });

  test("ignores the sign of the rate, stays for no turn and refuses a rate of nothing", () => {
    expect(turnInWind(10, 90, 90, -3, 200, 20)).toEqual(turnInWind(10, 90, 90, 3, 200, 20));
    expect(turnInWind(10, 0, 90, 3, 200, 20)).toEqual({ north: 0, east: 0, time: 0 });
    expect(() => turnInWind(10, 90, 90, 0, 200, 20)).toThrow(OutOfRange);
    expect(turnInWind(10, 90, 90, 0.5, 200, 20).time).toBe(180);
  });
});

/** Ten thousand short straight pieces, each on the heading of its middle. */
function steppedTurn(heading: number, change: number, V: number, rate: number, from: number, W: number) {
  const time = Math.abs(change) / rate;
  const pieces = 10_000;
  const hours = time / 3600 / pieces;
  let [north, east] = [0, 0];
  for (let i = 0; i < pieces; i++) {
    const ψ = ((heading + ((i + 0.5) / pieces) * change) * Math.PI) / 180;
    const δ = (from * Math.PI) / 180;
    north += (V * Math.cos(ψ) - W * Math.cos(δ)) * hours;
    east += (V * Math.sin(ψ) - W * Math.sin(δ)) * hours;
  }
  return { north, east, time };
}
