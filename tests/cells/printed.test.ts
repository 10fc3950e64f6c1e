import fc from "fast-check";
import { expect, test } from "vitest";
import { units } from "../../src/calc/units.ts";
import { looseNumber, type Print, printed, printedParts, unitWords, widest } from "../../src/cells/printed.ts";

const as = (unit: string, digits = 0, circle = false): Print => ({ unit, digits, circle });
/** Written with plain spaces below; printed with spaces that don't break. */
const unbroken = (text: string) => text.replaceAll(" ", "\u00a0");

test.each([
  [0.4907, as("NM", 2), "0.49 NM"],
  [15, as("deg"), "15°"],
  [3.081, as("deg/s", 2), "3.08 °/s"],
  [2400, as("ft"), "2,400 ft"],
  [999.5, as("ft"), "1,000 ft"],
  [999.4, as("ft"), "999 ft"],
  [1234567.891, as("ft", 2), "1,234,567.89 ft"],
  [1.23456, as("plain", 4), "1.2346"],
  [-5, as("degC"), "−5 °C"],
  [1.035, as("g", 2), "1.04 g"],
  [-1500, as("ft/min"), "−1,500 ft/min"],
  [-0.4, as("ft"), "0 ft"],
  [-0, as("ft", 1), "0.0 ft"],
  [-0.04, as("kt", 1), "0.0 kt"],
  [12.5, as("kt"), "13 kt"],
  [-12.5, as("kt"), "−13 kt"],
  [1.005, as("NM", 2), "1.01 NM"],
  [8.345, as("NM", 2), "8.35 NM"],
  [1.225, as("kg/m3", 3), "1.225 kg/m³"],
  [3, as("deg/s", 1), "3.0 °/s"],
  [1e-9, as("s", 2), "0.00 s"],
  [5e-324, as("s", 1), "0.0 s"],
  [1e21, as("plain"), "1,000,000,000,000,000,000,000"],
  [2 ** 53, as("plain", 2), "9,007,199,254,740,992.00"],
])("printed prints %d as %j: %s", (value, print, text) => {
  expect(printed(value, print)).toBe(unbroken(text));
});

test.each([
  [0, 0, "360°"],
  [360, 0, "360°"],
  [5, 0, "005°"],
  [45.5, 0, "046°"],
  [359.6, 0, "360°"],
  [0.4, 0, "360°"],
  [-10, 0, "350°"],
  [725, 0, "005°"],
  [0.04, 1, "360.0°"],
  [5.25, 1, "005.3°"],
])("printed prints the direction %d with %d digits as %s", (value, digits, text) => {
  expect(printed(value, as("deg", digits, true))).toBe(text);
});

test("printed says 'no end' for an infinite value and shows a dash for one that is no number, without a unit", () => {
  expect(printed(Number.POSITIVE_INFINITY, as("NM", 2))).toBe("no end");
  expect(printed(Number.NaN, as("deg", 0, true))).toBe("—");
});

test("printed never strays over half its last digit, whatever the value", () => {
  const value = fc.double({ min: -1e9, max: 1e9, noNaN: true });
  fc.assert(
    fc.property(value, fc.integer({ min: 0, max: 5 }), (x, digits) => {
      const text = printed(x, as("plain", digits));
      expect(text).toMatch(/^−?\d{1,3}(,\d{3})*(\.\d+)?$/);
      expect(text.split(".")[1]?.length ?? 0).toBe(digits);
      const read = Number(text.replace("−", "-").replaceAll(",", ""));
      // Reading the text and taking the difference each round once, by a few parts in 2^53 of the value.
      expect(Math.abs(read - x)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 4 * Number.EPSILON * Math.abs(x));
    }),
  );
});

test("printed gives a value and its negative the same digits", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 1e9, noNaN: true }), (x) => {
      expect(printed(-x, as("ft"))).toBe(`−${printed(x, as("ft"))}`);
    }),
  );
});

test("printedParts parts the number from its unit", () => {
  expect(printedParts(2400, as("ft"))).toEqual({ number: "2,400", unit: "ft" });
  expect(printedParts(7, as("deg", 0, true))).toEqual({ number: "007", unit: "°" });
  expect(printedParts(Number.POSITIVE_INFINITY, as("s"))).toEqual({ number: "no end", unit: "" });
});

test("unitWords has words for every unit that convert knows, and none for a plain number", () => {
  for (const unit of units) expect(unitWords(unit), unit).toMatch(/^(g|[a-zA-Z ]{4,})$/);
  expect(unitWords("kt")).toBe("knots");
  expect(unitWords("deg/s")).toBe("degrees a second");
  expect(unitWords("plain")).toBe("");
});

test.each([
  [as("ft/min"), -2000, 2000, "−2,000 ft/min"],
  [as("deg/s", 1), 0, 10, "10.0 °/s"],
  [as("deg", 0, true), 0, 360, "360°"],
  [as("ft"), 5, 999.7, "1,000 ft"],
])("widest of %j from %d to %d holds %s", (print, from, to, text) => {
  expect(widest(print, from, to)).toBe(text.length);
});

test("widest holds every value between its ends", () => {
  const end = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(end, end, fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean(), (a, b, part, circle) => {
      const value = Math.min(a, b) + part * Math.abs(a - b);
      const print = as("deg", 1, circle);
      expect(printed(Math.min(value, Math.max(a, b)), print).length).toBeLessThanOrEqual(widest(print, a, b));
    }),
  );
});

test.each([
  [95, "95"],
  [12345.6, "12346"],
  [1234.56, "1235"],
  [48.8712, "48.87"],
  [3.1, "3.1"],
  [2.0001, "2"],
  [0.123456, "0.1235"],
  [0.00123449, "0.001234"],
  [99.999, "100"],
  [0.99999, "1"],
  [-3.5, "−3.5"],
  [100, "100"],
  [0, "0"],
  [-0, "0"],
  [0.1 + 0.2, "0.3"],
  [Number.POSITIVE_INFINITY, "∞"],
])("looseNumber prints %d as %s", (value, text) => {
  expect(looseNumber(value)).toBe(text);
});
