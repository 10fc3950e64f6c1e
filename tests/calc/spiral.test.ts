import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heightInUncompensatedBank, OutOfRange, spiralDive, spiralPath, turnRate } from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const G = 9.80665;
const KNOT = 1852 / 3600;
const RADIAN = Math.PI / 180;
const given = fc.record({
  trimSpeed: between(60, 150),
  bank: between(0.5, 40),
  doublingTime: between(8, 60),
  time: between(20, 100),
  liftOverDrag: between(5, 15),
  inducedShare: between(0, 1),
});

describe("spiralPath", () => {
  test("goes from 2° to 45° of bank in 90 s where bank doubles in 20 s", () => {
    expect(spiralDive(95, 2, 90).bank.toFixed(0)).toBe("45");
    expect(spiralDive(95, 2, 90, 20).bank).toBeCloseTo(2 * 2 ** 4.5, 9);
  });

  test("starts trimmed and level", () => {
    expect(spiralPath({ trimSpeed: 95, bank: 10, time: 5 })[0]).toEqual({
      ...{ time: 0, bank: 10, tas: expect.closeTo(95, 9), pathAngle: 0, turned: 0, altitude: 0, verticalSpeed: 0 },
      ...{ turnRate: expect.closeTo((turnRate(95, 10) * Math.sin(10 * RADIAN)) / Math.tan(10 * RADIAN), 9), load: 1 },
    });
  });

  test("stays level and straight without bank", () => {
    const { tas, altitude, turned, pathAngle, load } = spiralDive(95, 0, 200);
    expect([tas, altitude, turned, pathAngle, load]).toEqual([expect.closeTo(95, 9), 0, 0, 0, expect.closeTo(1, 9)]);
  });

  test("obeys the balance of forces, and its kinematics, between any two points", () => {
    fc.assert(
      fc.property(given, (spiral) => {
        const points = spiralPath({ ...spiral, step: 0.02 });
        for (let i = 1; i < points.length - 1; i += Math.ceil(points.length / 20)) {
          expectBalance(points[i - 1]!, points[i]!, points[i + 1]!, spiral);
        }
      }),
      { numRuns: 20 },
    );
  });

  test("ends at the time given, with the bank growing to 75° and no further", () => {
    fc.assert(
      fc.property(given, (spiral) => {
        const { time, bank } = spiralPath(spiral).at(-1)!;
        expect(time).toBeCloseTo(spiral.time, 9);
        const grown = spiral.bank * 2 ** (spiral.time / spiral.doublingTime);
        expect(bank).toBeCloseTo(Math.min(75, grown), 9);
      }),
      { numRuns: 20 },
    );
  });

  test("loses what a bank does that stays, at an angle of attack held", () => {
    const held = spiralDive(100, 20, 10, 1e6);
    expect(held.altitude).toBeCloseTo(heightInUncompensatedBank(100, 20, 10, "angle-of-attack-held"), 2);
  });

  test("settles at 75° where lift balances weight along the path, and drag the pull of the slope", () => {
    const { tas, pathAngle, bank, load } = spiralDive(95, 75, 300);
    const γ = pathAngle * RADIAN;
    expect(load * Math.cos(bank * RADIAN)).toBeCloseTo(Math.cos(γ), 2);
    expect(-Math.sin(γ)).toBeCloseTo(((tas / 95) ** 2 - 1) / 10, 2);
  });

  test("does not change in its printed digits with half the step", () => {
    const spiral = { trimSpeed: 95, bank: 2, time: 120 };
    const [coarse, fine] = [0.1, 0.05].map((step) => spiralPath({ ...spiral, step }).at(-1)!);
    for (const [name, value] of Object.entries(coarse!)) {
      expect(fine![name as keyof typeof fine]).toBeCloseTo(value, 2);
    }
    expect(spiralPath(spiral)).toEqual(spiralPath({ ...spiral, step: 0.1, doublingTime: 20, liftOverDrag: 10 }));
    expect(spiralPath(spiral)).toEqual(spiralPath({ ...spiral, inducedShare: 0.5 }));
  });

  test("loses more with less lift over drag, whatever share of the drag is induced", () => {
    const lost = (liftOverDrag: number) => spiralDive(95, 5, 60, 20, liftOverDrag).tas;
    expect(lost(15)).toBeGreaterThan(lost(8));
    const share = (inducedShare: number) => spiralPath({ trimSpeed: 95, bank: 5, time: 60, inducedShare }).at(-1);
    expect(share(0.2)!.tas).toBeCloseTo(share(0.9)!.tas, 9);
  });

  test.each([{ inducedShare: 1.1 }, { inducedShare: -0.1 }, { step: 0 }, { step: 10.1 }])("refuses %o", (wrong) => {
    expect(() => spiralPath({ trimSpeed: 95, bank: 5, time: 10, ...wrong })).toThrow(OutOfRange);
  });
});

type Point = ReturnType<typeof spiralDive>;

function expectBalance(before: Point, here: Point, after: Point, { trimSpeed, liftOverDrag }: typeof generated): void {
  const time = after.time - before.time;
  if (Math.abs(here.bank - 75) < 0.5) return;
  const slope = (of: (point: Point) => number) => (of(after) - of(before)) / time;
  const V = here.tas * KNOT;
  const [γ, φ] = [here.pathAngle * RADIAN, here.bank * RADIAN];
  const dynamic = (here.tas / trimSpeed) ** 2;
  expect(here.load).toBeCloseTo(dynamic, 9);
  expect(slope(({ tas }) => tas * KNOT) / G).toBeCloseTo((1 - dynamic) / liftOverDrag - Math.sin(γ), 3);
  const curved = (V / G) * slope(({ pathAngle }) => pathAngle * RADIAN);
  expect(curved).toBeCloseTo(dynamic * Math.cos(φ) - Math.cos(γ), 3);
  const turning = (V / G) * Math.cos(γ) * slope(({ turned }) => turned * RADIAN);
  expect(turning).toBeCloseTo(dynamic * Math.sin(φ), 3);
  expect(here.turnRate).toBeCloseTo(
    slope(({ turned }) => turned),
    1,
  );
  expect(slope(({ altitude }) => altitude) * 0.3048).toBeCloseTo(V * Math.sin(γ), 1);
  expect(here.verticalSpeed * 0.00508).toBeCloseTo(V * Math.sin(γ), 6);
}

declare const generated: { trimSpeed: number; liftOverDrag: number };
