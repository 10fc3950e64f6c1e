import { expect, test } from "vitest";
import { fixed, plain, significant, term } from "../../src/calc/catalogue/printed.ts";

test("fixed prints so many digits after the point with a typographic minus", () => {
  expect(fixed(2.345, 1)).toBe("2.3");
  expect(fixed(-12, 2)).toBe("−12.00");
});

test("fixed prints what rounds to zero without a sign", () => {
  expect(fixed(-0.004, 2)).toBe("0.00");
  expect(fixed(-0.4, 0)).toBe("0");
  expect(fixed(-0.6, 0)).toBe("−1");
});

test.each([
  [48.8722, 4, "48.87"],
  [0.0523599, 4, "0.05236"],
  [999.96, 4, "1000"],
  [0.099999, 3, "0.100"],
  [12345, 3, "12300"],
  [-7.5, 3, "−7.50"],
  [1e-7, 2, "0.00000010"],
  [0, 3, "0"],
  [-0, 3, "0"],
])("significant(%d, %d) prints %s", (value, figures, text) => {
  expect(significant(value, figures)).toBe(text);
});

test("significant prints infinity as its sign", () => {
  expect(significant(-Infinity, 3)).toBe("−∞");
});

test("plain prints a given number as it was given, without the noise of binary fractions", () => {
  expect(plain(0.1 + 0.2)).toBe("0.3");
  expect(plain(95)).toBe("95");
  expect(plain(-2.5)).toBe("−2.5");
});

test("term brackets a negative number and leaves any other alone", () => {
  expect(term("−3")).toBe("(−3)");
  expect(term("3")).toBe("3");
});
