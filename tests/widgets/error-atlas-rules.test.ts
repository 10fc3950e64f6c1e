import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/calc/index.ts";
import { atlasRules } from "../../src/cells/atlas-rules.ts";
import { quantityOf } from "../../src/cells/quantities.ts";
import { kindOf, safeWords } from "../../src/widgets/error-atlas/answer.ts";
import { compared, needsOf } from "../../src/widgets/error-atlas/model.ts";
import { tasRangeOf } from "../../src/widgets/error-atlas/ranges.ts";
import type { AtlasRule, Values } from "../../src/widgets/error-atlas/rule.ts";
import { rules } from "../../src/widgets/error-atlas/rules.ts";
import { isTolerance } from "../../src/widgets/error-atlas/tolerances.ts";
import { aircraft, named, valuesOf } from "./atlas-of.ts";

/** The error of one line of a rule at these values, the others as the atlas opens. */
function errorOf(key: keyof typeof atlasRules, values: Values, line = 0): number {
  const rule = named(key);
  return compared(rule, rule.lines[line]!, valuesOf(rule, values))!.error;
}

describe("the list of rules", () => {
  test("rules measures every rule of thumb in the catalogue, and nothing that isn't one", () => {
    const inCatalogue = catalogue.filter(({ kind }) => kind === "rule").map(({ name }) => name);
    expect(inCatalogue.length).toBeGreaterThan(12);
    expect([...new Set(rules.map(({ name }) => name))].sort()).toEqual(inCatalogue.sort());
  });

  test("rules has one entry for each word a chapter may choose by", () => {
    expect(rules.map(({ key }) => key).sort()).toEqual(Object.keys(atlasRules).sort());
  });

  describe.each(rules.map((rule): [string, AtlasRule] => [rule.key, rule]))("%s", (_, rule) => {
    const { across, tolerance } = needsOf(rule);
    const formula = catalogue.find(({ name }) => name === rule.name)!;
    const reference = catalogue.find(({ name }) => name === formula.standsFor)!;

    test("its result has the unit that the catalogue gives to the rule and to what it stands for", () => {
      for (const { result } of [formula, reference]) {
        const units = "fields" in result ? Object.values(result.fields).map(({ unit }) => unit) : [result.unit];
        expect(units).toContain(rule.result.unit);
      }
      expect(kindOf(rule)).toBe(reference.kind);
    });

    test("it needs quantities the workbook knows, a tolerance in the unit of its result last", () => {
      for (const need of atlasRules[rule.key].needs) expect(quantityOf(need), need).toBeDefined();
      expect(isTolerance(tolerance)).toBe(true);
      expect(quantityOf(tolerance)!.unit).toBe(rule.result.unit);
    });

    test("it answers all over the aircraft's range, which lies within what its formulas take", () => {
      const [from, to] = rule.across.range(aircraft);
      expect(from).toBeLessThan(to);
      for (const line of rule.lines)
        for (const x of [from, (from + to) / 2, to])
          expect(compared(rule, line, valuesOf(rule, { [across]: x })), `${x}`).toBeDefined();
      const [least, most] = rule.holds[across]!;
      expect([least <= from, to <= most]).toEqual([true, true]);
    });

    test("it says which sign is safe and why, in whole sentences", () => {
      expect(safeWords(rule)).toMatch(rule.safe ? /^Safe side: [a-z].*\. [A-Z].*\.$/ : /^Neither sign .*\.$/);
    });
  });
});

describe("known anchors (MECHANICS.md)", () => {
  test("a tenth and seven errs +4.7° at 40 kt, nothing near 140 kt and −2.5° at 250 kt", () => {
    expect(errorOf("bankByTenthPlusSevenRule", { tas: 40 })).toBeCloseTo(4.7, 1);
    expect(Math.abs(errorOf("bankByTenthPlusSevenRule", { tas: 140 }))).toBeLessThan(0.1);
    expect(errorOf("bankByTenthPlusSevenRule", { tas: 250 })).toBeCloseTo(-2.5, 1);
  });

  test("15 % of the speed errs under 0.4° from 40 to 160 kt, and more beyond", () => {
    for (let tas = 40; tas <= 160; tas++)
      expect(Math.abs(errorOf("bankByFifteenPercentRule", { tas })), `${tas} kt`).toBeLessThan(0.4);
    expect(errorOf("bankByFifteenPercentRule", { tas: 200 })).toBeGreaterThan(0.4);
  });

  test("half of the bank fits a roll of about 3 °/s, a third 4.5 °/s, at the bank for 3 °/s", () => {
    const [tas, bank] = [95, 14.6];
    expect(Math.abs(errorOf("rollOutLeadByRule", { tas, bank, rollRate: 3 }, 0))).toBeLessThan(0.25);
    expect(Math.abs(errorOf("rollOutLeadByRule", { tas, bank, rollRate: 4.5 }, 1))).toBeLessThan(0.25);
  });

  test("at 500 ft/min and 0.05 g a tenth gives 50 ft where the model gives 22 ft", () => {
    expect(errorOf("levelOffLeadByRule", { verticalSpeed: 500, extraLoad: 0.05, reaction: 0 })).toBeCloseTo(28, 0);
  });

  test("one second a knot is about half enough at 90 kt, where the small wind on the nose takes two from abeam", () => {
    // t (V + W) = 60 (V − W) − 120 W, and abeam is passed 60 W / V before wings level: 180 W / V shorter in all.
    expect(errorOf("holdOutboundTimeByRule", { windSpeed: 1, windFrom: 360, tas: 90 })).toBeCloseTo(1, 1);
    expect(errorOf("holdOutboundTimeByRule", { windSpeed: 1, windFrom: 180, tas: 90 })).toBeCloseTo(-1, 1);
  });

  test("three times the drift is the limit of a small wind, twice isn't", () => {
    const at = { windSpeed: 0.1, windFrom: 90, tas: 95 };
    expect(Math.abs(errorOf("holdOutboundHeadingByRule", at, 0))).toBeLessThan(0.001);
    expect(Math.abs(errorOf("holdOutboundHeadingByRule", at, 1))).toBeGreaterThan(0.05);
  });

  test("a cold correction by 4 % falls short only where it is bitterly cold", () => {
    expect(errorOf("coldTemperatureErrorByRule", { aerodromeTemperature: 0, height: 2000 })).toBeGreaterThan(0);
    expect(errorOf("coldTemperatureErrorByRule", { aerodromeTemperature: -40, height: 2000 })).toBeLessThan(0);
  });
});

test("tasRangeOf runs from the stalling speed low down to never-exceed speed high up, as true airspeed", () => {
  const [from, to] = tasRangeOf(aircraft);
  expect(from).toBe(aircraft.facts["stall"]!.value);
  // 158 kt at 10,000 ft: the square root of 1 over a density ratio of 0.7385, less a knot or so of compressibility.
  expect(Math.abs(to - 158 / Math.sqrt(0.7385))).toBeLessThan(1.5);
});
