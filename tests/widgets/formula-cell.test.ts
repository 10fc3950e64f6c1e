import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { catalogue, type Formula, isaTemperature } from "../../src/calc/index.ts";
import { printed } from "../../src/cells/printed.ts";
import { type Calculation, calculate } from "../../src/widgets/formula-cell/calculation.ts";
import { differenceText } from "../../src/widgets/formula-cell/comparison.ts";
import { calculatorOf } from "../../src/widgets/formula-cell/fields.ts";
import { noSolution } from "../../src/widgets/formula-cell/no-solution.ts";

const named = (name: string): Formula => catalogue.find((formula) => formula.name === name)!;
const every = catalogue.map((formula) => [formula.name, formula] as const);
const rules = every.filter(([, { kind }]) => kind === "rule");

function at(name: string, texts: Record<string, string> = {}): Calculation {
  return calculate(calculatorOf(named(name)), new Map(Object.entries(texts)));
}
const shown = ({ results }: Calculation): string[] => results.map(({ number, unit }) => `${number} ${unit}`.trim());

describe("calculate", () => {
  test.each(every)("calculate gives %s an answer at its examples, and nothing to mend", (name, { result }) => {
    const { results, notices } = at(name);
    expect([...notices]).toEqual([]);
    expect(results).toHaveLength("fields" in result ? Object.keys(result.fields).length : 1);
  });

  test("calculate puts beside a rule the exact value at the same numbers, and its error with sign and unit", () => {
    // ω = 3°/s, V = 95 kt: arctan(48.87 × 0.05236 / 9.807) = 14.62°; 95 / 10 + 7 = 16.5.
    const { comparisons } = at("bankByTenthPlusSevenRule", { tas: "95" });
    expect(comparisons).toHaveLength(1);
    expect(comparisons[0]).toMatchObject({ formula: { name: "bankForRate" }, note: "" });
    expect(comparisons[0]!.lines).toEqual([{ label: "", value: "14.6°", difference: "error +1.9° (+13\u00a0%)" }]);
  });

  test("calculate puts beside an exact value each rule that stands for it", () => {
    const { comparisons } = at("bankForRate", { tas: "200" });
    expect(comparisons.map(({ formula }) => formula.name)).toEqual([
      "bankByTenthPlusSevenRule",
      "bankByFifteenPercentRule",
    ]);
    // 102.89 m/s: 28.78°; the rules give 27 and 30.
    expect(comparisons.map(({ lines }) => lines[0]!.value)).toEqual(["27.0°", "30.0°"]);
    expect(comparisons.map(({ lines }) => lines[0]!.difference)).toEqual([
      "error −1.8° (−6.2\u00a0%)",
      "error +1.2° (+4.2\u00a0%)",
    ]);
  });

  test("calculate says of a rule for a model that it differs from it, not that it errs", () => {
    // 500 ft/min at 0.05 g: 2.54² / (2 × 0.4903) = 6.579 m = 21.6 ft; a tenth of 500 is 50.
    const [comparison] = at("levelOffLeadByRule", { verticalSpeed: "500", extraLoad: "0.05" }).comparisons;
    expect(comparison!.lines[0]!.difference).toBe("differs from the model by +28\u00a0ft (+132\u00a0%)");
    expect(at("levelOffLead").comparisons[0]!.lines[0]!.difference).toMatch(/^differs from the model by /);
  });

  test.each(rules)(
    "calculate finds a difference for %s from either side, and it is the same",
    (name, { standsFor }) => {
      const mine = at(name).comparisons[0]!.lines.map(({ difference }) => difference);
      expect(mine.length).toBeGreaterThan(0);
      for (const words of mine) expect(words).toMatch(/^(error|differs from the model by) \S/);
      const texts = Object.fromEntries([...at(name).values].map(([key, value]) => [key, `${value}`]));
      const back = at(standsFor!, texts).comparisons.find(({ formula }) => formula.name === name)!;
      expect(back.lines.map(({ difference }) => difference)).toEqual(mine);
    },
  );

  test("calculate asks once for an altitude that the two formulas name differently", () => {
    const keys = calculatorOf(named("trueAirspeedByRule")).fields.map(({ key }) => key);
    expect(keys).toEqual(["cas", "pressureAltitude", "temperature"]);
    // At sea level in the standard atmosphere calibrated and true airspeed are one, and so is the rule's.
    const { comparisons } = at("trueAirspeedByRule", { cas: "100", pressureAltitude: "0" });
    expect(comparisons[0]!.lines[0]).toMatchObject({ value: "100\u00a0kt", difference: "no error" });
  });

  test("calculate lets the temperature follow the altitude until one is typed", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1000, max: 40000 }), (altitude) => {
        const followed = at("trueAirspeedByRule", { pressureAltitude: `${altitude}` }).values.get("temperature");
        expect(Math.abs(Number(followed) - isaTemperature(altitude))).toBeLessThanOrEqual(0.05 + 1e-9);
        const typed = at("trueAirspeedByRule", { pressureAltitude: `${altitude}`, temperature: "20" });
        expect(typed.values.get("temperature")).toBe(20);
      }),
    );
  });

  test("calculate compares a hold's outbound time with that from abeam the fix: like with like", () => {
    const [heading, time] = at("holdOutboundByRule").comparisons[0]!.lines;
    const exact = at("holdOutbound");
    const fromAbeam = exact.results.find(({ label }) => label === "Time from abeam")!;
    expect(heading!.label).toBe("Heading");
    expect(time).toMatchObject({ label: "Time from abeam", value: `${fromAbeam.number}\u00a0s` });
  });

  test.each([
    ["bankByTenthPlusSevenRule", { rate: "1.5" }, "3\u00a0°/s"],
    ["bankForRate", { rate: "6" }, "3\u00a0°/s"],
    ["verticalSpeedByRule", { angle: "4" }, "3°"],
  ])("calculate says of %s at %o that the rule is made for something else", (name, texts, made) => {
    for (const { note } of at(name, texts).comparisons)
      expect(note).toMatch(new RegExp(`^the rule is made for .*${made}$`));
    for (const { note } of at(name).comparisons) expect(note).toBe("");
  });

  test("calculate names the quantity and its limits at the field that is out of range, and gives no value", () => {
    const { notices, results, comparisons } = at("rollOutLead", { bank: "95" });
    expect([...notices]).toEqual([["bank", "Bank must be over −90 and under 90°."]]);
    expect(results).toEqual([]);
    expect(comparisons[0]).toMatchObject({ lines: [], note: "no value at these numbers" });
  });

  test("calculate finds the field that is out of range among several of one quantity", () => {
    expect([...at("fitRollRate", { bank2: "95" }).notices.keys()]).toEqual(["bank2"]);
  });

  test("calculate keeps its own value where only the other formula is out of range", () => {
    const calculation = at("rollOutLeadByRule", { tas: "900" });
    expect(shown(calculation)).toEqual(["7.5 °"]);
    expect([...calculation.notices]).toEqual([["tas", "True airspeed must be over 0 and at most 700\u00a0kt."]]);
  });

  test("calculate says at the field why a text can't be read", () => {
    const { notices, results } = at("turnRate", { tas: "fast" });
    expect(notices.get("tas")).toMatch(/a speed is wanted, in kt/);
    expect(results).toEqual([]);
  });

  test.each([
    ["1,85 km/h", "= 0.9989\u00a0kt"],
    ["1 852 km/h", "= 1000\u00a0kt"],
    ["50 m/s", "= 97.19\u00a0kt"],
  ])("calculate reads '%s' as a speed in knots and says so", (text, read) => {
    expect(at("verticalSpeedForAngle", { groundSpeed: text }).read.get("groundSpeed")).toBe(read);
  });

  test("calculate reads decimals with a comma or a point alike", () => {
    expect(shown(at("turnRate", { bank: "12,5" }))).toEqual(shown(at("turnRate", { bank: "12.5" })));
    expect(at("turnRate", { bank: "12,5" }).values.get("bank")).toBe(12.5);
  });

  test("calculate takes the default for a field left empty that has one, and asks for one that has none", () => {
    const left = at("bankForRate", { rate: "" });
    expect(left.values.get("rate")).toBe(3);
    expect(left.read.get("rate")).toBe("left out: 3\u00a0°/s");
    expect(at("bankForRate", { tas: "" }).notices.get("tas")).toMatch(/^Nothing was written/);
  });

  test("calculate says in words why there is no solution", () => {
    const { noSolution: why, results, notices } = at("windTriangle", { windSpeed: "120", windFrom: "180" });
    expect(why).toMatch(/wind/);
    expect([results, [...notices]]).toEqual([[], []]);
  });

  test("every formula that may have no solution has words for it", () => {
    const nullable = catalogue.filter(({ result }) => result.nullable).map(({ name }) => name);
    expect(Object.keys(noSolution).toSorted()).toEqual(nullable.toSorted());
  });

  test("calculate converts between units of a kind and says where they are of two", () => {
    expect(shown(at("convert", { value: "10", from: "NM", to: "km" }))).toEqual(["18.520 km"]);
    expect([...at("convert", { from: "kt", to: "ft" }).notices.keys()]).toEqual(["to"]);
  });
});

describe("differenceText", () => {
  test("differenceText goes the short way round for a direction", () => {
    expect(differenceText(359, 2, { unit: "deg", digits: 0, circle: true })).toBe("−3°");
    expect(differenceText(2, 359, { unit: "deg", digits: 0, circle: true })).toBe("+3°");
  });

  test("differenceText never prints nought for a difference: it says under what it lies", () => {
    expect(differenceText(100.3, 100, { unit: "kt", digits: 0 })).toBe("under 0.5\u00a0kt");
    expect(differenceText(14.62, 14.6, { unit: "deg", digits: 1 })).toBe("under 0.05°");
    expect(differenceText(100, 100, { unit: "kt", digits: 0 })).toBe("");
  });

  test("differenceText is the printed difference of unrounded values", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 1e6 }), (a, b) => {
        fc.pre(a !== b);
        const [sign, size] = [a > b ? "+" : "−", printed(Math.abs(a - b), { unit: "ft", digits: 0 })];
        expect(differenceText(a, b, { unit: "ft", digits: 0 })).toMatch(new RegExp(`^\\${sign}${size}( \\(|$)`));
      }),
    );
  });
});
