import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FeltTurn, feltRate, feltRateInTurn, timeUntilUnfelt } from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const turn = fc.record({
  rate: between(-6, 6),
  rollIn: between(0.5, 10),
  hold: between(0, 60),
  rollOut: between(0.5, 10),
  time: between(0, 120),
  timeConstant: between(4, 20),
});

describe("feltRate", () => {
  test("leaves 0.4 of 3°/s after 20 s", () => {
    expect(feltRate(3, 20).toFixed(1)).toBe("0.4");
    expect(feltRate(-3, 20).toFixed(1)).toBe("-0.4");
  });

  test("is the whole rate at first and falls to one e-th in a time constant", () => {
    expect(feltRate(3, 0)).toBe(3);
    expect(feltRate(3, 6, 6)).toBeCloseTo(3 / Math.E, 12);
  });
});

describe("feltRateInTurn", () => {
  test("meets the high-pass equation stepped through the turn", () => {
    fc.assert(
      fc.property(turn, (given) => {
        expect(feltRateInTurn(given)).toBeCloseTo(stepped(given), 4);
      }),
      { numRuns: 50 },
    );
  });

  test("opposes a one-minute turn at 3°/s by nearly 3°/s as it stops, and half a minute later no more", () => {
    const minute = { rate: 3, rollIn: 0, hold: 60, rollOut: 0 };
    expect(feltRateInTurn({ ...minute, time: 60 }).toFixed(2)).toBe("-2.99");
    expect(feltRateInTurn({ ...minute, time: 90 }).toFixed(2)).toBe("-0.15");
  });

  test("comes to feltRate where the turn begins at once and goes on", () => {
    fc.assert(
      fc.property(between(-6, 6), between(0, 50), between(4, 20), (rate, time, timeConstant) => {
        const given = { rate, rollIn: 0, hold: 60, rollOut: 0, time, timeConstant };
        expect(feltRateInTurn(given)).toBeCloseTo(feltRate(rate, time, timeConstant), 12);
      }),
    );
  });

  test("changes little where a sudden roll-in is taken for one of a moment", () => {
    const given = { rate: 3, hold: 20, rollOut: 2, time: 15, timeConstant: 10 };
    expect(feltRateInTurn({ ...given, rollIn: 1e-9 })).toBeCloseTo(feltRateInTurn({ ...given, rollIn: 0 }), 6);
  });

  test("is nothing as the turn begins", () => {
    expect(feltRateInTurn({ rate: 3, rollIn: 4, hold: 10, rollOut: 4, time: 0 })).toBe(0);
  });

  test("mirrors left and right", () => {
    fc.assert(
      fc.property(turn, (given) => {
        expect(feltRateInTurn({ ...given, rate: -given.rate })).toBeCloseTo(-feltRateInTurn(given), 12);
      }),
    );
  });
});

describe("timeUntilUnfelt", () => {
  test("is when feltRate has come down to the threshold", () => {
    fc.assert(
      fc.property(between(0.1, 6), between(0.1, 6), between(4, 20), (rate, threshold, τ) => {
        const time = timeUntilUnfelt(rate, threshold, τ);
        if (rate <= threshold) expect(time).toBe(0);
        else expect(feltRate(rate, time, τ)).toBeCloseTo(threshold, 9);
        expect(timeUntilUnfelt(-rate, threshold, τ)).toBe(time);
      }),
    );
  });

  test("takes 10 s for a time constant unless told otherwise", () => {
    expect(timeUntilUnfelt(Math.E, 1)).toBeCloseTo(10, 12);
    expect(timeUntilUnfelt(0, 1)).toBe(0);
  });
});

/** τ q′ + q = τ ω′ in steps of a thousandth of the time, the change of ω taken in the middle of each. */
function stepped({ rate, rollIn, hold, rollOut, time, timeConstant = 10 }: FeltTurn): number {
  const ends = rollIn + hold + rollOut;
  const turning = (t: number) =>
    t < rollIn ? (rate * t) / rollIn : t < rollIn + hold ? rate : t < ends ? (rate * (ends - t)) / rollOut : 0;
  const steps = 20_000;
  const step = time / steps;
  let felt = 0;
  for (let i = 0; i < steps; i++) {
    const change = turning((i + 1) * step) - turning(i * step);
    felt = felt * Math.exp(-step / timeConstant) + change * Math.exp(-step / 2 / timeConstant);
  }
  return felt;
}
