import { expect, test } from "vitest";
import { fill, holesIn } from "../../src/cells/exercises/fill.ts";

test.each([
  ["{a} and {a}", "1 and 1"],
  ["{aircraft.cruise} at {b}", "95 kt at {b}"],
  ["$\\frac{a}{2}$ is {a}", "$\\frac{a}{2}$ is 1"],
  ["$$\n{a}\n$$ {a}", "$$\n{a}\n$$ 1"],
  ["`{a}` ``x ` {a}`` {a}", "`{a}` ``x ` {a}`` 1"],
  ["\\{a} {a}", "\\{a} 1"],
  ["$5 and {a} for $6", "$5 and 1 for $6"],
  ["{ a } {} {1}", "{ a } {} {1}"],
  ["{toString} {__proto__}", "{toString} {__proto__}"],
])("fill makes of %j %j", (template, filled) => {
  expect(fill(template, { a: "1", "aircraft.cruise": "95 kt" })).toBe(filled);
});

test("fill leaves alone what it put in", () => {
  expect(fill("{a} {b}", { a: "{b}", b: "$&" })).toBe("{b} $&");
});

test("holesIn finds each hole and where its brace stands", () => {
  expect(holesIn("`{a}` {b} $x$ {c.d}")).toEqual([
    { name: "b", at: 6 },
    { name: "c.d", at: 14 },
  ]);
});

test("holesIn takes no longer than a moment over a text made to delay it", () => {
  const hostile = `${"`".repeat(50_000)}${"a".repeat(50_000)}${"$ {".repeat(20_000)}{a}`;
  expect(holesIn(hostile).length).toBeLessThanOrEqual(1);
});
