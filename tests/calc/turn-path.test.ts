import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  OutOfRange,
  type Turn,
  turnLeadDistance,
  turnLeadDistanceRolling,
  turnPath,
  turnRadius,
  turnRate,
} from "../../src/calc/index.ts";
import { between } from "./arbitrary.ts";

const turn = fc.record({
  tas: between(50, 300),
  bank: between(5, 60),
  headingChange: between(-360, 360),
  rollInRate: between(2, 30),
  rollOutRate: between(2, 30),
  reaction: between(0, 3),
});
const steep: Turn = { tas: 100, bank: 45, headingChange: 180, rollInRate: 10, rollOutRate: 5 };
const end = (turn: Turn) => turnPath(turn).at(-1)!;

describe("turnPath", () => {
  test("starts and ends wings level, having turned by the heading change", () => {
    fc.assert(
      fc.property(turn, (given) => {
        const points = turnPath(given);
        expect(points[0]).toEqual({ time: 0, bank: 0, heading: 0, turned: 0, north: 0, east: 0 });
        const last = points.at(-1)!;
        expect(last.bank).toBeCloseTo(0, 9);
        expect(last.turned).toBeCloseTo(given.headingChange, 3);
        const circles = (last.heading - last.turned) / 360;
        expect(circles).toBeCloseTo(Math.round(circles), 9);
      }),
    );
  });

  test("errs sixteen times less at half the step", () => {
    const exact = end({ ...steep, step: 0.01 });
    const error = (step: number) => {
      const { north, east } = end({ ...steep, step });
      return Math.hypot(north - exact.north, east - exact.east);
    };
    for (const step of [0.5, 0.25]) {
      expect(error(step) / error(step / 2)).toBeGreaterThan(10);
      expect(error(step) / error(step / 2)).toBeLessThan(24);
    }
  });

  test("at its own step is within a tenth of a foot of half the step", () => {
    fc.assert(
      fc.property(turn, (given) => {
        const [one, half] = [end(given), end({ ...given, step: 0.125 })];
        expect(Math.hypot(one.north - half.north, one.east - half.east) * 6076).toBeLessThan(0.1);
      }),
      { numRuns: 50 },
    );
  });

  test("mirrors left and right", () => {
    const right = turnPath({ ...steep, headingChange: 90, reaction: 1 });
    const left = turnPath({ ...steep, headingChange: -90, reaction: 1 });
    for (const [i, { time, bank, turned, north, east }] of right.entries()) {
      expect(left[i]).toMatchObject({ time, north });
      expect(left[i]!.bank + bank).toBe(0);
      expect(left[i]!.turned + turned).toBe(0);
      expect(left[i]!.east + east).toBe(0);
    }
    expect(right.at(-1)!.east).toBeGreaterThan(0);
  });

  test("keeps the true airspeed along the path", () => {
    const points = turnPath({ ...steep, step: 0.1 });
    for (const [i, point] of points.slice(1).entries()) {
      const before = points[i]!;
      const flown = Math.hypot(point.north - before.north, point.east - before.east);
      // The chord of a step is shorter than its arc by a few parts in a million.
      expect((flown / (point.time - before.time)) * 3600).toBeCloseTo(100, 2);
    }
  });

  test("rolls at the given rates and holds the bank between, on the circle of that bank", () => {
    const points = turnPath({ ...steep, headingChange: 350, step: 0.1 });
    const rates = points.slice(1).map((point, i) => (point.bank - points[i]!.bank) / (point.time - points[i]!.time));
    for (const rate of rates) expect([10, 0, -5].some((known) => Math.abs(rate - known) < 1e-6)).toBe(true);
    const steady = points.filter(({ bank }) => bank === 45);
    const [first, last] = [steady[0]!, steady.at(-1)!];
    const half = ((last.turned - first.turned) * Math.PI) / 360;
    const chord = Math.hypot(last.north - first.north, last.east - first.east);
    expect(chord).toBeCloseTo(2 * turnRadius(100, 45) * Math.abs(Math.sin(half)), 6);
    expect((last.turned - first.turned) / (last.time - first.time)).toBeCloseTo(turnRate(100, 45), 6);
  });

  test("takes less bank where the heading change is too small for all of it", () => {
    const banks = turnPath({ ...steep, headingChange: 5, step: 0.01 }).map(({ bank }) => bank);
    expect(Math.max(...banks)).toBeLessThan(45);
    expect(Math.max(...banks)).toBeGreaterThan(5);
  });

  test("flies straight on during the reaction, and only so without a heading change", () => {
    const points = turnPath({ ...steep, headingChange: 0, reaction: 3.6, step: 0.5 });
    expect(points.at(-1)).toMatchObject({ bank: 0, heading: 0, east: 0 });
    expect(points.at(-1)!.north).toBeCloseTo(0.1, 12);
    expect(points.at(-1)!.time).toBeCloseTo(3.6, 12);
  });

  test("has no two points further apart than the step", () => {
    const points = turnPath({ ...steep, reaction: 1, step: 0.4 });
    for (const [i, { time }] of points.slice(1).entries()) {
      expect(time - points[i]!.time).toBeLessThanOrEqual(0.4 + 1e-9);
      expect(time).toBeGreaterThan(points[i]!.time);
    }
  });

  test("takes no reaction and a step of 0.25 s unless told", () => {
    expect(turnPath(steep)).toEqual(turnPath({ ...steep, reaction: 0, step: 0.25 }));
  });

  test("turns right for the smallest right heading change", () => {
    expect(end({ ...steep, headingChange: 0.5 }).turned).toBeCloseTo(0.5, 5);
    expect(end({ ...steep, headingChange: -0.5 }).turned).toBeCloseTo(-0.5, 5);
  });

  const limits = { tas: [20, 700], bank: [1, 85], headingChange: [-1080, 1080], reaction: [0, 60], step: [0.01, 10] };
  test.each(Object.entries(limits))("refuses a %s outside its limits", (name, [from, to]) => {
    for (const value of [from! - 1e-9, to! + 1e-9, Number.NaN, Infinity, -Infinity]) {
      expect(() => turnPath({ ...steep, [name]: value })).toThrow(OutOfRange);
    }
    for (const value of [from, to]) expect(() => turnPath({ ...steep, [name]: value })).not.toThrow();
  });

  test.each(["rollInRate", "rollOutRate"])("refuses a %s of nothing or over 360°/s", (name) => {
    for (const value of [0, -5, 360.001, Number.NaN, Infinity]) {
      expect(() => turnPath({ ...steep, [name]: value })).toThrow(OutOfRange);
    }
  });
});

describe("turnLeadDistanceRolling", () => {
  /** The lead from a heading known in closed form while rolling, summed by the midpoint rule; small, slow, separate. */
  function summed(tas: number, bank: number, change: number, rollRate: number): number {
    const V = tas / 3600;
    const spun = turnRate(tas, bank);
    const logSecant = (φ: number) => -Math.log(Math.cos((φ * Math.PI) / 180));
    const perLogSecant = (9.80665 / (tas * (1852 / 3600)) / ((rollRate * Math.PI) / 180)) * (180 / Math.PI);
    const rolled = perLogSecant * logSecant(bank);
    const rolling = bank / rollRate;
    const steady = (change - 2 * rolled) / spun;
    const headingAt = (t: number) => {
      if (t < rolling) return perLogSecant * logSecant(rollRate * t);
      if (t < rolling + steady) return rolled + spun * (t - rolling);
      return change - perLogSecant * logSecant(rollRate * (2 * rolling + steady - t));
    };
    const steps = 20000;
    const dt = (2 * rolling + steady) / steps;
    let [north, east] = [0, 0];
    for (let i = 0; i < steps; i++) {
      const ψ = (headingAt((i + 0.5) * dt) * Math.PI) / 180;
      north += V * Math.cos(ψ) * dt;
      east += V * Math.sin(ψ) * dt;
    }
    return north - east / Math.tan((change * Math.PI) / 180);
  }

  test.each([
    [95, 15, 90, 5],
    [120, 25, 45, 4],
    [90, 30, 150, 10],
    [180, 20, 120, 3],
  ])("at %d kt and %d° for %d° at %d°/s is what a plain sum gives", (tas, bank, change, rollRate) => {
    const lead = turnLeadDistanceRolling(tas, bank, change, rollRate);
    expect(lead).toBeCloseTo(summed(tas, bank, change, rollRate), 6);
  });

  test("nears the circle's tangent as the roll becomes instant", () => {
    fc.assert(
      fc.property(between(60, 200), between(10, 40), between(20, 140), (tas, bank, change) => {
        const circle = turnLeadDistance(turnRadius(tas, bank), change);
        const [slow, fast] = [60, 360].map((rate) => turnLeadDistanceRolling(tas, bank, change, rate));
        expect(fast! - circle).toBeGreaterThan(0);
        expect(fast! - circle).toBeLessThan(slow! - circle);
        // Half of the roll-in is flown as if straight on.
        expect(fast! - circle).toBeLessThan(((tas / 3600) * bank) / 360);
      }),
    );
  });

  test("is the same to either side and under either bank", () => {
    const lead = turnLeadDistanceRolling(95, 15, 60, 5, 1);
    expect(turnLeadDistanceRolling(95, 15, -60, 5, 1)).toBe(lead);
    expect(turnLeadDistanceRolling(95, -15, 60, 5, 1)).toBe(lead);
  });

  test("adds the distance flown during the reaction", () => {
    const added = turnLeadDistanceRolling(90, 20, 90, 5, 4) - turnLeadDistanceRolling(90, 20, 90, 5);
    expect(added).toBeCloseTo(0.1, 12);
    expect(turnLeadDistanceRolling(90, 20, 0, 5, 4)).toBeCloseTo(0.1, 12);
  });

  test("shrinks smoothly to nothing with the change of course, where the bank is never reached", () => {
    fc.assert(
      fc.property(between(0.001, 3), (change) => {
        const lead = turnLeadDistanceRolling(95, 30, change, 5);
        expect(lead).toBeGreaterThan(0);
        expect(turnLeadDistanceRolling(95, 30, change * 1.1, 5)).toBeGreaterThan(lead);
      }),
    );
    expect(turnLeadDistanceRolling(95, 30, 0, 5)).toBe(0);
    expect(turnLeadDistanceRolling(95, 30, 1e-6, 5)).toBeLessThan(1e-4);
  });

  test("refuses the wings level, which never turn", () => {
    expect(() => turnLeadDistanceRolling(95, 0, 90, 5)).toThrow(/bank must be at least 1/);
  });
});
