import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compared, curveOf, judged, needsOf, type Standing } from "../../src/widgets/error-atlas/model.ts";
import type { AtlasRule } from "../../src/widgets/error-atlas/rule.ts";
import { rules } from "../../src/widgets/error-atlas/rules.ts";
import { aircraft, anyValues, named, valuesOf } from "./atlas-of.ts";

const each = rules.map((rule): [string, AtlasRule] => [rule.key, rule]);

/** How an error evaluated directly stands to a tolerance. */
function direct(error: number | undefined, tolerance: number): Standing {
  if (error === undefined) return "none";
  if (Math.abs(error) <= tolerance * (1 + 1e-9)) return "within";
  return error > 0 ? "over" : "under";
}

describe.each(each)("judged of %s", (_, rule) => {
  const { across, tolerance: need } = needsOf(rule);
  const range = rule.across.range(aircraft);
  const span = range[1] - range[0];
  const line = fc.constantFrom(...rule.lines);

  test("agrees with direct evaluation everywhere but next to a crossing", () => {
    const places = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 40, maxLength: 40 });
    fc.assert(
      fc.property(line, anyValues(rule), places, (one, values, parts) => {
        const { stretches } = judged(rule, one, values, range, values[need]!);
        for (const part of parts) {
          const x = range[0] + part * span;
          const { from, to, is } = stretches.find((stretch) => x <= stretch.to) ?? stretches.at(-1)!;
          if (Math.min(Math.abs(x - from), Math.abs(x - to)) < 1e-6 * span) continue;
          const error = compared(rule, one, { ...values, [across]: x })?.error;
          expect(is, `${across} ${x}, error ${error}`).toBe(direct(error, values[need]!));
        }
      }),
      { numRuns: 60 },
    );
  });

  test("covers the range without a gap, and finds a change of standing between neighbouring stretches", () => {
    fc.assert(
      fc.property(line, anyValues(rule), (one, values) => {
        const tolerance = values[need]!;
        const { stretches } = judged(rule, one, values, range, tolerance);
        const at = (x: number) => direct(compared(rule, one, { ...values, [across]: x })?.error, tolerance);
        expect([stretches[0]!.from, stretches.at(-1)!.to]).toEqual(range);
        stretches.slice(1).forEach((after, i) => {
          const before = stretches[i]!;
          expect(after.from - before.to).toBeLessThan(2e-9 * Math.max(1, Math.abs(after.from)));
          expect([at(before.to), at(after.from)]).toEqual([before.is, after.is]);
          expect(before.is).not.toBe(after.is);
        });
      }),
      { numRuns: 60 },
    );
  });

  test("its greatest error is met where it says, and nowhere surpassed", () => {
    fc.assert(
      fc.property(line, anyValues(rule), fc.double({ min: 0, max: 1, noNaN: true }), (one, values, part) => {
        const { greatest } = judged(rule, one, values, range, values[need]!);
        const at = (x: number) => compared(rule, one, { ...values, [across]: x })?.error;
        const somewhere = at(range[0] + part * span);
        if (greatest) expect(at(greatest.x)).toBe(greatest.error);
        else expect(somewhere).toBeUndefined();
        // A kink, as where the time outbound falls to nothing, is met to the accuracy of the search.
        if (greatest && somewhere !== undefined)
          expect(Math.abs(somewhere)).toBeLessThanOrEqual(Math.abs(greatest.error) * (1 + 1e-6) + 1e-9);
      }),
      { numRuns: 100 },
    );
  });
});

describe("where there is nothing to compare", () => {
  test("compared gives nothing, and judged no greatest error, for a card tilted past the dip", () => {
    const rule = named("rollOutHeadingByRule");
    const values = valuesOf(rule, { bank: 25, dip: 70 });
    expect(compared(rule, rule.lines[0], values)).toBeUndefined();
    const { stretches, greatest } = judged(rule, rule.lines[0], values, [0, 360], 10);
    expect(stretches).toEqual([{ from: 0, to: 360, is: "none" }]);
    expect(greatest).toBeUndefined();
  });

  test("judged ends where the wind is stronger than the true airspeed, whose drift has no value", () => {
    const rule = named("maximumDriftByRule");
    const { stretches } = judged(rule, rule.lines[0], valuesOf(rule, { tas: 40 }), [0, 63], 1);
    const last = stretches.at(-1)!;
    expect(last.is).toBe("none");
    expect(last.from).toBeCloseTo(40, 6);
  });

  test("curveOf has no row where there is no value, and each other as evaluated", () => {
    const rule = named("maximumDriftByRule");
    const values = valuesOf(rule, { tas: 40 });
    const { x, exact, rule: byRule, error } = curveOf(rule, rule.lines[0], values, [0, 63], [40, 12.345]);
    expect(x).toContain(12.345);
    expect(x.at(-1)).toBe(40);
    expect(x.map((windSpeed) => compared(rule, rule.lines[0], { ...values, windSpeed }))).toEqual(
      x.map((_, i) => ({ exact: exact[i], rule: byRule[i], error: error[i] })),
    );
  });

  test("compared takes the difference of two headings the short way round", () => {
    const rule = named("holdOutboundHeadingByRule");
    const line = { ...rule.lines[0], value: () => 10 };
    const { error } = compared({ ...rule, exact: () => 350 }, line, valuesOf(rule))!;
    expect(error).toBe(20);
  });
});
