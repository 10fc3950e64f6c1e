import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bankForRate, stallSpeedInTurn, turnRadius, turnRate } from "../../src/calc/turns.ts";
import { rateOneRules } from "../../src/widgets/rate-one-rules/figure.ts";
import { ruledAt, rulesModel } from "../../src/widgets/rate-one-rules/model.ts";
import { turnRateRadius } from "../../src/widgets/turn-rate-radius/figure.ts";
import { radiusSeries, rateSeries, stallingBank, turnModel } from "../../src/widgets/turn-rate-radius/model.ts";
import { dunlin } from "./dunlin.ts";

const tas = fc.double({ min: 20, max: 400, noNaN: true });
const bank = fc.double({ min: 0, max: 85, noNaN: true });
const turn = fc.record({ tas, bank });
const showTurn = (values: { tas: number; bank: number }, kept?: typeof values) =>
  turnRateRadius.show({ values, kept, aircraft: dunlin });
const showRules = (speed: number) => rateOneRules.show({ values: { tas: speed }, aircraft: dunlin });

describe("the turn's model", () => {
  test("turnModel's axes hold the present and the kept turn, a radius over 100 NM apart", () => {
    fc.assert(
      fc.property(turn, fc.option(turn, { nil: undefined }), (now, kept) => {
        const { axes, ...model } = turnModel(now, kept, dunlin);
        for (const one of [model.now, model.kept]) {
          if (!one) continue;
          expect(one.bank).toBeLessThanOrEqual(axes.bank);
          expect(one.rate).toBeLessThanOrEqual(axes.rate);
          expect(Math.min(one.radius, 100)).toBeLessThanOrEqual(axes.radius);
        }
      }),
    );
  });

  test("rateSeries and radiusSeries follow the formulas and stay on the axes", () => {
    fc.assert(
      fc.property(turn, (now) => {
        const { axes } = turnModel(now, undefined, dunlin);
        const [rates, radii] = [rateSeries(now.tas, axes), radiusSeries(now.tas, axes)];
        expect(rates.value).toEqual(rates.bank.map((at) => turnRate(now.tas, at)));
        expect(radii.value).toEqual(radii.bank.map((at) => turnRadius(now.tas, at)));
        expect(Math.max(...rates.value)).toBeLessThanOrEqual(axes.rate * (1 + 1e-12));
        expect(Math.max(...radii.value, 0)).toBeLessThanOrEqual(axes.radius * (1 + 1e-12));
      }),
    );
  });

  test("stallingBank is where the stalling speed in the turn has come up to the speed flown", () => {
    fc.assert(
      fc.property(fc.double({ min: 1.001, max: 5, noNaN: true }), (times) => {
        const speed = 47 * times;
        expect(stallSpeedInTurn(47, stallingBank(speed, 47))).toBeCloseTo(speed, 6);
      }),
    );
  });

  test("turnModel finds no turn the aircraft can fly at or under its stalling speed, nor over never-exceed", () => {
    expect(turnModel({ tas: 47, bank: 5 }, undefined, dunlin).beyond).toEqual({ from: 0, why: "stalled" });
    expect(turnModel({ tas: 159, bank: 5 }, undefined, dunlin).beyond).toEqual({ from: 0, why: "too fast" });
    expect(turnModel({ tas: 158, bank: 5 }, undefined, dunlin).beyond?.why).toBe("stalls");
  });
});

describe("the turn's figure", () => {
  test("its readouts at 95 kt and 15° are those of the handbooks' formulas", () => {
    // By hand: V = 48.87 m/s, g tan 15° = 2.6277 m/s², ω = 0.05377 rad/s, R = 909 m; atan(3°/s · V / g) = 14.6°.
    expect(showTurn({ tas: 95, bank: 15 }).readouts.map(({ number, unit }) => number + unit)).toEqual([
      "3.08°/s",
      "0.49NM",
      "14.6°",
    ]);
  });

  test("its kept readouts are the kept turn's own, bank included", () => {
    const kept = { tas: 120, bank: 30 };
    const numbers = showTurn(kept).readouts.map(({ number }) => number);
    const beside = showTurn({ tas: 95, bank: 15 }, kept).readouts.map((one) => one.kept?.replace("°", ""));
    expect(beside).toEqual(numbers);
  });

  test("its notice names whose limit is passed, and is empty within all limits", () => {
    expect(showTurn({ tas: 95, bank: 30 }).notice).toBe("");
    expect(showTurn({ tas: 95, bank: 31 }).notice).toMatch(/31° .*school’s bank limit of 30°/);
    expect(showTurn({ tas: 200, bank: 15 }).notice).toMatch(
      /200\u00a0kt .*never-exceed speed of 158\u00a0kt \(Dunlin\)/,
    );
    expect(showTurn({ tas: 45, bank: 15 }).notice).toMatch(
      /45\u00a0kt .*stalling speed, 47\u00a0kt wings level \(Dunlin\)/,
    );
    expect(showTurn({ tas: 55, bank: 45 }).notice).toMatch(
      /^From 43° of bank 55\u00a0kt is below .* beyond the school’s/,
    );
  });

  test("its table marks the rows nearest the present and the kept bank", () => {
    const table = showTurn({ tas: 95, bank: 17 }, { tas: 120, bank: 45 }).table();
    expect(table.rows[table.here]![0]).toBe(15);
    expect(table.rows[table.was!]![0]).toBe(45);
    expect(table.rows.every((row) => row.length === table.columns.length)).toBe(true);
  });

  test("it says that wings level is no turn", () => {
    expect(showTurn({ tas: 95, bank: 0 }).description).toContain("wings level: no turn");
  });
});

describe("the rules' figure", () => {
  // The errors that the course promises of both rules.
  test.each([
    [40, 4.7],
    [140, 0],
    [250, -2.5],
  ])("ruledAt errs by a tenth and seven at %d kt by %f°, to a tenth", (speed, error) => {
    expect(Math.abs(ruledAt(speed).tenthError - error)).toBeLessThanOrEqual(0.05);
  });

  test("ruledAt errs by 15 % of the speed by no more than 0.4° from 40 to 160 kt", () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 160, noNaN: true }), (speed) => {
        expect(Math.abs(ruledAt(speed).fifteenError)).toBeLessThanOrEqual(0.4);
      }),
    );
  });

  test("rulesModel's axes hold every bank and error at the present and the kept speed", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 400, noNaN: true }),
        fc.double({ min: 10, max: 400, noNaN: true }),
        (now, kept) => {
          const { axes, ...model } = rulesModel(now, kept, dunlin);
          for (const one of [model.now, model.kept!]) {
            expect(one.exact).toBe(bankForRate(one.tas));
            const within = ([from, to]: readonly [number, number], value: number) => value >= from && value <= to;
            expect(within(axes.tas, one.tas)).toBe(true);
            expect([one.exact, one.tenth, one.fifteen].every((value) => within(axes.bank, value))).toBe(true);
            expect([one.tenthError, one.fifteenError].every((value) => within(axes.error, value))).toBe(true);
          }
        },
      ),
    );
  });

  test("its readouts give each rule beside the exact bank with its signed error", () => {
    // The exact bank at 95 kt is 14.6°: a tenth and seven is 16.5°, 15 % is 14.25°.
    expect(showRules(95).readouts.map(({ number, aside }) => [number, aside])).toEqual([
      ["14.6", undefined],
      ["16.5", "error +1.9°"],
      ["14.3", "error −0.4°"],
    ]);
  });

  test("its notice names the aircraft outside its own speeds", () => {
    expect(showRules(95).notice).toBe("");
    expect(showRules(240).notice).toContain("(Dunlin)");
    expect(showRules(40).notice).toContain("47\u00a0kt wings level (Dunlin)");
  });
});
