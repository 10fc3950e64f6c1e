import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BankModel, bankModels, heightInUncompensatedBank } from "../../src/calc/index.ts";
import { between } from "./arbitrary.ts";

const g = 9.80665;
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const model = fc.constantFrom(...bankModels);
const time = between(0.1, 15);

/** Height in ft by another route: forces as vectors in north, east, up, and short straight steps of the velocity. */
function flown(tas: number, bank: number, seconds: number, model: BankModel, liftOverDrag: number, zeroLift: number) {
  const V0 = (tas * 1852) / 3600;
  const [φ, α0] = [radians(bank), radians(zeroLift)];
  const dt = 1e-4;
  let [along, up, height] = [V0, 0, 0];
  for (let t = 0; t < seconds; t += dt) {
    const V = Math.hypot(along, up);
    const angle = { "vertical-force": 0, "angle-of-attack-held": α0, "attitude-held": attackAt(up / V, φ) + α0 }[model];
    const lift = model === "vertical-force" ? 1 : (angle / α0) * (V / V0) ** 2;
    const thrustLessDrag = model === "vertical-force" ? up / V : (1 - lift) / liftOverDrag;
    // Only lift across the path and in its vertical plane turns it there; the rest turns the heading.
    const across = lift * Math.cos(φ);
    const upward = g * ((thrustLessDrag * up) / V + (across * along) / V - 1);
    along += g * ((thrustLessDrag * along) / V - (across * up) / V) * dt;
    height += (up + (upward * dt) / 2) * dt;
    up += upward * dt;
  }
  return height / 0.3048;
}

/** Angle of attack of a fuselage held level in a bank: from its axes, seen along the path, without sideslip. */
function attackAt(sinePath: number, φ: number): number {
  return Math.asin(-sinePath / Math.cos(φ));
}

describe("heightInUncompensatedBank", () => {
  test.each<[BankModel, number]>([
    ["vertical-force", -95],
    ["angle-of-attack-held", -56],
    ["attitude-held", -9],
  ])("with %s at 100 kt, 20° and 10 s is %d ft", (held, height) => {
    expect(Math.round(heightInUncompensatedBank(100, 20, 10, held))).toBe(height);
  });

  test.each(bankModels)("with %s is what forces as vectors give", (held) => {
    for (const [tas, bank, seconds, ratio, angle] of [
      [100, 20, 10, 10, 5],
      [80, -35, 6, 8, 9],
      [140, 10, 14, 15, 3],
    ] as const) {
      const height = heightInUncompensatedBank(tas, bank, seconds, held, {
        liftOverDrag: ratio,
        angleFromZeroLift: angle,
      });
      expect(height / flown(tas, bank, seconds, held, ratio, angle)).toBeCloseTo(1, 3);
    }
  });

  test("is never above the start, is the same to either side, and is zero at once", () => {
    fc.assert(
      fc.property(between(50, 250), between(0, 60), time, model, (tas, bank, seconds, held) => {
        const height = heightInUncompensatedBank(tas, bank, seconds, held);
        expect(height).toBeLessThanOrEqual(0);
        expect(heightInUncompensatedBank(tas, -bank, seconds, held)).toBe(height);
        expect(heightInUncompensatedBank(tas, bank, 0, held)).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  test("takes a lift over drag of 10 and an angle from zero lift of 5° unless told", () => {
    for (const held of bankModels) {
      const told = heightInUncompensatedBank(100, 20, 10, held, { liftOverDrag: 10, angleFromZeroLift: 5 });
      expect(heightInUncompensatedBank(100, 20, 10, held)).toBe(told);
      expect(heightInUncompensatedBank(100, 20, 10, held, {})).toBe(told);
    }
  });

  test("stays at zero with the wings level, whatever is held", () => {
    for (const held of bankModels) expect(heightInUncompensatedBank(100, 0, 15, held)).toBeCloseTo(0, 9);
  });

  test("with 'vertical-force' starts as the fall of the missing vertical lift: g (1 − cos φ) t² / 2", () => {
    const fall = -((g * (1 - Math.cos(radians(20)))) / 2) / 0.3048;
    expect(heightInUncompensatedBank(100, 20, 1, "vertical-force") / fall).toBeCloseTo(1, 3);
    expect(heightInUncompensatedBank(100, 20, 1, "angle-of-attack-held") / fall).toBeCloseTo(1, 1);
  });

  test("with 'vertical-force' does not know of drag or angle; with 'attitude-held' loses more the larger the angle", () => {
    const force = heightInUncompensatedBank(100, 20, 10, "vertical-force");
    const other = { liftOverDrag: 20, angleFromZeroLift: 9 };
    expect(heightInUncompensatedBank(100, 20, 10, "vertical-force", other)).toBeCloseTo(force, 6);
    const attitude = [3, 5, 9].map((angleFromZeroLift) =>
      heightInUncompensatedBank(100, 20, 10, "attitude-held", { angleFromZeroLift }),
    );
    expect(attitude).toEqual(attitude.toSorted((a, b) => b - a));
    expect(attitude[2]! / attitude[0]!).toBeGreaterThan(2);
  });

  test("with 'angle-of-attack-held' refuses more than 15 s, with the others more than 60", () => {
    expect(() => heightInUncompensatedBank(100, 20, 15.01, "angle-of-attack-held")).toThrow(/at most 15/);
    expect(() => heightInUncompensatedBank(100, 20, 15, "angle-of-attack-held")).not.toThrow();
    expect(() => heightInUncompensatedBank(100, 20, 60.01, "attitude-held")).toThrow(/at most 60/);
    expect(() => heightInUncompensatedBank(100, 20, 60, "vertical-force")).not.toThrow();
  });

  test("stays finite at the corners of its limits", () => {
    for (const held of bankModels)
      for (const tas of [20, 700])
        for (const liftOverDrag of [5, 60])
          for (const angleFromZeroLift of [1, 20]) {
            const seconds = held === "angle-of-attack-held" ? 15 : 60;
            const height = heightInUncompensatedBank(tas, 60, seconds, held, { liftOverDrag, angleFromZeroLift });
            expect(height).toSatisfy(Number.isFinite);
          }
  });
});
