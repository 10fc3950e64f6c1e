import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  OutOfRange,
  type Recovery,
  type RecoveryPoint,
  recoveryCost,
  recoveryOrders,
  recoveryPath,
} from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const G = 9.80665;
const KNOT = 1852 / 3600;
const RADIAN = Math.PI / 180;
const dive: Recovery = { tas: 130, trimSpeed: 95, bank: 60, pathAngle: -20, order: "power-bank-pitch" };
const given = fc.record({
  tas: between(100, 150),
  trimSpeed: between(85, 100),
  bank: between(20, 70),
  pathAngle: between(-40, -5),
  order: fc.constantFrom(...recoveryOrders),
  delay: between(0.1, 5),
  between: between(0.1, 3),
  rollRate: between(10, 40),
  pull: between(1.1, 1.6),
  doublingTime: between(10, 60),
  liftOverDrag: between(7, 14),
  inducedShare: between(0.2, 0.8),
});

describe("recoveryPath", () => {
  test("starts from the dive as it was recognised and ends level, unless it glides on for two minutes", () => {
    fc.assert(
      fc.property(given, (recovery) => {
        const path = recoveryPath(recovery);
        const { tas, bank, pathAngle } = recovery;
        expect(path[0]).toMatchObject({ time: 0, bank, altitude: 0, tas: expect.closeTo(tas, 9) });
        expect(path[0]!.pathAngle).toBeCloseTo(pathAngle, 9);
        if (path.at(-1)!.time < 120) expect(path.at(-1)!.pathAngle).toBeCloseTo(0, 6);
        expect(path.slice(0, -1).every((point) => point.pathAngle <= 0)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  test("lets the bank grow until it is rolled off at a steady rate", () => {
    const path = recoveryPath({ ...dive, tas: 110, bank: 30, pathAngle: -50, delay: 2, between: 1 });
    for (const { time, bank } of path) {
      const grown = 30 * 2 ** (Math.min(time, 3) / 20);
      expect(bank).toBeCloseTo(time < 3 ? grown : Math.max(0, grown - 20 * (time - 3)), 9);
    }
    expect(path.at(-1)!.bank).toBe(0);
  });

  test("lets the bank grow no further than 75°", () => {
    const path = recoveryPath({ ...dive, bank: 70, delay: 6, doublingTime: 10 });
    expect(Math.max(...path.map(({ bank }) => bank))).toBe(75);
    const [first, second] = recoveryPath({ ...dive, bank: 75 });
    expect([first!.bank, second!.bank]).toEqual([75, 75]);
    expect(second!.time).toBeGreaterThan(0);
  });

  test("obeys the balance of forces, with the thrust off and the pull on when their turn has come", () => {
    fc.assert(
      fc.property(given, (recovery) => {
        const path = recoveryPath({ ...recovery, step: 0.01 });
        for (let i = 1; i < path.length - 1; i += 7) {
          expectBalance(path[i - 1]!, path[i]!, path[i + 1]!, recovery);
        }
      }),
      { numRuns: 30 },
    );
  });

  test("stops after two minutes where drag lets the path settle into a glide", () => {
    const draggy = { ...dive, tas: 95, bank: 30, pathAngle: 0, rollRate: 1, pull: 1, liftOverDrag: 3 };
    const path = recoveryPath(draggy);
    expect(path.at(-1)!.time).toBe(120);
    expect(Math.sin(path.at(-1)!.pathAngle * RADIAN)).toBeCloseTo(-((path.at(-1)!.tas / 95) ** 2) / 3, 2);
  });

  test("never gives −0 for a level path or no bank", () => {
    const [first] = recoveryPath({ ...dive, tas: 95, pathAngle: -0, bank: -0, delay: -0 });
    expect(first).toMatchObject({ time: 0, bank: 0, pathAngle: 0, altitude: 0 });
  });
});

describe("recoveryCost", () => {
  test("is the lowest altitude, the highest speed and load of the path, and its time", () => {
    fc.assert(
      fc.property(given, (recovery) => {
        const path = recoveryPath(recovery);
        const cost = recoveryCost(recovery);
        expect(cost.altitudeLost).toBe(-Math.min(...path.map(({ altitude }) => altitude)));
        expect(cost.highestSpeed).toBe(Math.max(...path.map(({ tas }) => tas)));
        expect(cost.highestLoad).toBe(Math.max(...path.map(({ load }) => load)));
        expect(cost.time).toBe(path.at(-1)!.time);
      }),
      { numRuns: 40 },
    );
  });

  test("is the same in any order where all three begin at once", () => {
    const costs = recoveryOrders.map((order) => recoveryCost({ ...dive, order, between: 0, delay: 0 }));
    for (const cost of costs) expect(cost).toEqual(costs[0]);
  });

  test("grows with the delay in each order", () => {
    for (const order of recoveryOrders) {
      const lost = [0, 2, 4].map((delay) => recoveryCost({ ...dive, order, delay }).altitudeLost);
      expect(lost).toEqual(lost.toSorted((a, b) => a - b));
      expect(lost[2]! - lost[0]!).toBeGreaterThan(100);
    }
  });

  test("costs more altitude at 60° of bank where the pull comes before the roll", () => {
    const lost = (order: Recovery["order"]) => recoveryCost({ ...dive, order, between: 2 }).altitudeLost;
    expect(lost("pitch-bank-power")).toBeGreaterThan(lost("bank-pitch-power"));
    expect(lost("power-pitch-bank")).toBeGreaterThan(lost("power-bank-pitch"));
  });

  // Far more digits than are printed: a step across the end of the roll would show.
  test("does not change in six digits of a foot with half the step, through the end of a roll", () => {
    const steep = { ...dive, pathAngle: -50, order: "bank-power-pitch", between: 2 } as const;
    const [coarse, fine] = [0.05, 0.025].map((step) => recoveryCost({ ...steep, step }).altitudeLost);
    expect(fine).toBeCloseTo(coarse!, 6);
  });

  test("does not change in its printed digits with half the step", () => {
    for (const order of recoveryOrders) {
      const [coarse, fine] = [0.05, 0.025].map((step) => recoveryCost({ ...dive, order, between: 2, step }));
      expect(fine!.altitudeLost).toBeCloseTo(coarse!.altitudeLost, 3);
      expect(fine!.highestSpeed).toBeCloseTo(coarse!.highestSpeed, 2);
      expect(fine!.highestLoad).toBeCloseTo(coarse!.highestLoad, 3);
      expect(fine!.time).toBeCloseTo(coarse!.time, 5);
    }
  });

  test("takes its defaults for what is left out", () => {
    const filled = { delay: 1, between: 1, rollRate: 20, pull: 1.3, doublingTime: 20, step: 0.05 };
    const cost = recoveryCost({ ...dive, ...filled, liftOverDrag: 10, inducedShare: 0.5 });
    expect(recoveryCost(dive)).toEqual(cost);
  });

  test.each([
    { inducedShare: 1.1 },
    { inducedShare: -0.1 },
    { step: 0 },
    { step: 10.1 },
    { liftOverDrag: 2 },
    { doublingTime: 0 },
  ])("refuses %o", (wrong) => {
    expect(() => recoveryCost({ ...dive, ...wrong })).toThrow(OutOfRange);
  });
});

function expectBalance(before: RecoveryPoint, here: RecoveryPoint, after: RecoveryPoint, recovery: Recovery): void {
  const { trimSpeed, order, delay = 1, between: pause = 1, liftOverDrag = 10, inducedShare = 0.5 } = recovery;
  const begins = (action: string) => delay + pause * order.split("-").indexOf(action);
  const jumps = ["power", "pitch", "bank"].map(begins);
  const smooth = (time: number) => before.time > time || after.time < time;
  const even = Math.abs(after.time + before.time - 2 * here.time) < 1e-9 && after.time > before.time;
  if (!even || !jumps.every(smooth) || here.bank === 0 || here.bank === 75) return;
  const pull = here.time > begins("pitch") ? (recovery.pull ?? 1.3) : 1;
  const thrust = here.time > begins("power") ? 0 : 1;
  const slope = (of: (point: RecoveryPoint) => number) => (of(after) - of(before)) / (after.time - before.time);
  const [V, γ, φ] = [here.tas * KNOT, here.pathAngle * RADIAN, here.bank * RADIAN];
  const dynamic = (here.tas / trimSpeed) ** 2;
  expect(here.load).toBeCloseTo(pull * dynamic, 9);
  const drag = dynamic * (1 - inducedShare + inducedShare * pull ** 2);
  expect(slope(({ tas }) => tas * KNOT) / G).toBeCloseTo((thrust - drag) / liftOverDrag - Math.sin(γ), 2);
  const curved = (V / G) * slope(({ pathAngle }) => pathAngle * RADIAN);
  expect(curved).toBeCloseTo(here.load * Math.cos(φ) - Math.cos(γ), 2);
  expect(slope(({ altitude }) => altitude) * 0.3048).toBeCloseTo(V * Math.sin(γ), 1);
}
