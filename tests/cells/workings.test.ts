import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/calc/index.ts";
import { OutOfRange } from "../../src/calc/limits.ts";
import { ExpressionError, type Value } from "../../src/cells/expressions/index.ts";
import { type Row, spoken, type WorkingOptions, workingOf } from "../../src/cells/workings.ts";
import { fewFormulas } from "./few-formulas.ts";

type Values = Readonly<Record<string, Value>>;
const present: Values = { tas: 90, bank: 20, low: -3, long: 12.3456789, qnh: 1013.25, turn: "left", none: null };

function working(text: string, values: Values = {}, options: WorkingOptions = {}): Row[] {
  const all = { ...present, ...values };
  const named = (name: string) => (Object.hasOwn(all, name) ? all[name] : undefined);
  return workingOf(text, "deg", 1, "Result", named, { formulas: fewFormulas, ...options });
}
const lines = (rows: readonly Row[]) => rows.map(({ what, numbers, comes }) => [what, numbers, comes]);
/** What a page builds once and keeps while numbers change. */
const form = (rows: readonly Row[]) => rows.map(({ what, symbol, tex, formula }) => ({ what, symbol, tex, formula }));
const unbroken = (text: string) => text.replaceAll(" ", "\u00a0");

describe("workingOf", () => {
  test("gives the steps of a bare call, the last named and printed as asked", () => {
    const rows = workingOf("leaning(tas, bank)", "deg/s", 1, "Lean of the day", (name) => present[name], {
      formulas: fewFormulas,
    });
    expect(rows).toEqual([
      {
        ...{ what: "Product", symbol: "p", numbers: "90 × 20", comes: unbroken("1800 kt·deg"), formula: "leaning" },
        spoken: "90 times 20",
      },
      {
        ...{
          what: "Lean of the day",
          symbol: "\\lambda",
          tex: "\\frac{p}{1000}",
          numbers: "1800 / 1000",
          formula: "leaning",
        },
        ...{ comes: unbroken("1.8 °/s"), spoken: "1800 divided by 1000" },
      },
    ]);
  });

  test("puts a row of arithmetic after the steps, values of formulas in it with a digit more than they print", () => {
    expect(lines(working("180 / leaning(91, 22.7)"))).toEqual([
      ["Product", "91 × 22.7", unbroken("2065.7 kt·deg")],
      ["Leaning", "2065.7 / 1000", unbroken("2.07 °/s")],
      ["Result", "180 / 2.066", "87.1°"],
    ]);
  });

  test("works inner calls first, each once", () => {
    const rows = working("reach(tas, reach(tas) * 40) + reach(tas)");
    expect(lines(rows)).toEqual([
      ["Reach", "90 × 36 / 3600", unbroken("0.90 NM")],
      ["Reach", "90 × 36 / 3600", unbroken("0.90 NM")],
      ["Result", "0.9 + 0.9", "1.8°"],
    ]);
  });

  test("gives a formula without steps one row with what goes in", () => {
    expect(lines(working("sides(tas).way", {}, { circle: true }))).toEqual([["Result", "f(90\u00a0kt)", "360.0°"]]);
    expect(lines(working("if(sideOf(bank, turn) == 'far', 1, 2)"))).toEqual([
      ["Side", "f(20°, left)", "far"],
      ["Result", "1", "1.0°"],
    ]);
    expect(lines(working("convert(1.5, 'NM', 'ft') / 2")).slice(0, 1)).toEqual([
      ["From NM into ft", unbroken("1.5 NM"), unbroken("9,114.17 ft")],
    ]);
  });

  test.each([
    ["tas", "90"],
    ["9.80665 * 2", "9.80665 × 2"],
    ["tas - low", "90 − (−3)"],
    ["low + tas", "−3 + 90"],
    ["-low", "−(−3)"],
    ["low ^ 2", "(−3)²"],
    ["-bank ^ 2", "−20²"],
    ["(tas + bank) ^ 3 / 2", "(90 + 20)³ / 2"],
    ["2 ^ (tas / bank)", "2^(90 / 20)"],
    ["tas - (bank - 3)", "90 − (20 − 3)"],
    ["tas / (bank * 3)", "90 / (20 × 3)"],
    ["tas - bank - 3", "90 − 20 − 3"],
    ["long + qnh", "12.35 + 1013.25"],
    ["tas * tan(bank)", "90 × tan 20°"],
    ["sin(tas - bank)", "sin (90 − 20)°"],
    ["sin(low)", "sin (−3)°"],
    ["asin(bank / tas)", "arcsin(20 / 90)"],
    ["sqrt(tas) * abs(low - bank)", "√(90) × |−3 − 20|"],
    ["ln(bank) + exp(low)", "ln 20 + e^(−3)"],
    ["2 * round(tas / 7, 5)", "2 × (90 / 7 to the nearest 5)"],
    ["round(tas / 7)", "90 / 7 to the nearest whole number"],
    ["floor(tas / 7)", "90 / 7 rounded down"],
    ["min(bank, tas / 10 + 7)", "90 / 10 + 7"],
    ["2 * max(bank, tas / 10 + 20)", "2 × (90 / 10 + 20)"],
    ["if(tas > 80, bank * 2, reach(0))", "20 × 2"],
    ["if(tas > 100, bank * 2, bank + 1)", "20 + 1"],
  ])("writes %s with its numbers as %s", (text, numbers) => {
    expect(working(text).at(-1)!.numbers).toBe(numbers);
  });

  test.each([
    ["bank > 30 or not tas >= 80", "20 > 30 or not 90 ≥ 80", "no"],
    ["turn == 'left' and tas != bank", "left = left and 90 ≠ 20", "yes"],
    ["turn", "left", "left"],
    ["1 / 0", "1 / 0", "no end"],
  ])("says what %s comes to in words", (text, numbers, comes) => {
    expect(lines(working(text))).toEqual([["Result", numbers, comes]]);
  });

  test("keeps its rows where there is no solution, and says so", () => {
    const [some, none] = [working("sides(tas).half * 2"), working("sides(tas).half * 2", { tas: 300 })];
    expect(form(none)).toEqual(form(some));
    expect(none.at(-1)!.comes).toBe("no solution");
    expect(form(working("leaning(none, bank)"))).toEqual(form(working("leaning(tas, bank)")));
  });

  test("keeps the rows of a branch that isn't taken, without numbers and marked idle", () => {
    const text = "if(tas > 80, leaning(tas, bank), reach(tas))";
    const [fast, slow] = [working(text), working(text, { tas: 70 })];
    expect(form(fast)).toEqual(form(slow));
    expect(fast.map(({ idle = false }) => idle)).toEqual([false, false, true, false]);
    expect(slow.map(({ idle = false }) => idle)).toEqual([true, true, false, false]);
    expect(fast[2]).toMatchObject({ numbers: "", comes: "", spoken: "" });
  });

  test("takes letters for its last row where they are given", () => {
    const [row] = working("tas * 2", {}, { symbol: "W", tex: "2V" });
    expect(row).toMatchObject({ what: "Result", symbol: "W", tex: "2V" });
  });

  test("works the time of a half turn at 95 kt and 15° as it is done by hand", () => {
    const named = (name: string) => ({ tas: 95, bank: 15 })[name];
    // 95 kt × 1852 / 3600 = 48.87 m/s; 9.80665 × 0.267949 / 48.87 = 0.05377 rad/s = 3.081°/s; 180 / 3.081 = 58.4 s
    expect(lines(workingOf("180 / turnRate(tas, bank)", "s", 0, "Half a turn", named))).toEqual([
      ["True airspeed", "95 × 0.51444", unbroken("48.87 m/s")],
      ["Rate of turn", "9.80665 × tan 15° / 48.87 = 0.05377\u00a0rad/s", unbroken("3.08 °/s")],
      ["Half a turn", "180 / 3.081", unbroken("58 s")],
    ]);
  });

  test("passes on what is out of range and what is miswritten", () => {
    expect(() => working("2 * reach(0)")).toThrow(OutOfRange);
    expect(() => working("2 * raech(90)")).toThrow(ExpressionError);
    expect(() => working("2 *")).toThrow(ExpressionError);
  });

  test("works every formula of the catalogue at its examples, ending in the result", () => {
    for (const { name, args, result } of catalogue) {
      const fields = "fields" in result ? Object.keys(result.fields).map((field) => `.${field}`) : [""];
      const given = args.map(({ example }) => (typeof example === "string" ? `"${example}"` : example)).join(", ");
      for (const field of fields) {
        const rows = workingOf(`${name}(${given})${field}`, "plain", 3, "Result", () => undefined);
        expect(rows.at(-1), name).toMatchObject({ what: "Result", formula: name });
        expect(rows.at(-1)!.comes, name).toMatch(/^(−?[\d,]+\.\d{3}|[a-z]+)$/);
        for (const { numbers, comes, spoken } of rows)
          expect(`${numbers}${comes}${spoken}`, name).not.toMatch(/NaN|undefined|null|\[/);
      }
    }
  });

  /** These read otherwise beyond a boundary: no time left, never felt, a roll-out not yet begun, a needle at its stop. */
  const otherwiseBeyond = new Set([
    "turnInWind",
    "holdOutboundByRule",
    "feltRateInTurn",
    "timeUntilUnfelt",
    "airspeedWithBlockedPitot",
    "airspeedWithBlockedStatic",
  ]);

  test("keeps rows, letters and TeX of every other formula of the catalogue while its numbers change", () => {
    for (const formula of catalogue) {
      const names = formula.args.map((_, i) => `a${i}`);
      const field = "fields" in formula.result ? `.${Object.keys(formula.result.fields)[0]}` : "";
      const rowsAt = (values: readonly (string | number)[]) =>
        workingOf(
          `${formula.name}(${names.join(", ")})${field}`,
          "plain",
          3,
          "Result",
          (name) => values[Number(name.slice(1))],
        );
      if (formula.name === "convert" || otherwiseBeyond.has(formula.name)) continue;
      const asExample = form(rowsAt(formula.args.map(({ example }) => example)));
      const values = fc.tuple(
        ...formula.args.map(({ example, from = -1000, to = 1000 }) =>
          typeof example === "string"
            ? fc.constant(example)
            : fc.double({ min: Math.max(from, -1e6), max: Math.min(to, 1e6), noNaN: true }),
        ),
      );
      fc.assert(
        fc.property(values, (each) => {
          try {
            expect(form(rowsAt(each)), formula.name).toEqual(asExample);
          } catch (error) {
            if (!(error instanceof OutOfRange)) throw error;
          }
        }),
        { numRuns: 40 },
      );
    }
  });
});

test.each([
  [
    "48.87² / (9.80665 × tan 15°) = 909 m",
    "48.87 squared divided by open bracket 9.80665 times the tangent of 15 degrees close bracket equals 909 metres",
  ],
  ["95 × 0.51444", "95 times 0.51444"],
  ["−3 + 1,200 ft", "minus 3 plus 1200 feet"],
  ["3.081 °/s", "3.081 degrees a second"],
  ["1 NM", "1 nautical mile"],
  ["0.0538 rad/s", "0.0538 radians a second"],
  ["2.5 m/s²", "2.5 metres a second squared"],
  ["2.5 m / s", "2.5 metres divided by s"],
  [
    "√(1.035)³ − |2 − 5|",
    "the square root of open bracket 1.035 close bracket cubed minus the size of open bracket 2 minus 5 close bracket",
  ],
  ["e^0.5 ≈ 1.65", "e to the power of 0.5 is about 1.65"],
  ["f(90\u00a0kt, 15°)", "f open bracket 90 knots, 15 degrees close bracket"],
  ["arctan(0.3) × 57.296", "the angle whose tangent is open bracket 0.3 close bracket times 57.296"],
  ["", ""],
])("spoken says %s in words", (text, words) => {
  expect(spoken(text)).toBe(words);
});
