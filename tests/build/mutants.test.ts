import { expect, test } from "vitest";
import { mutants, mutated } from "../../src/build/mutants.ts";

const all = (source: string) => mutants(source).map((mutant) => mutated(source, mutant));

test("mutants changes an operator between two terms, past letters beyond ASCII", () => {
  expect(all("const φ = Δψ * (ω);")).toEqual(["const φ = Δψ / (ω);"]);
});

test("mutants shifts a comparison and turns an equality round", () => {
  expect(all("export const low = (a, b) => a < b;")).toEqual(["export const low = (a, b) => a <= b;"]);
  expect(all("if (a === b) c();")).toEqual(["if (a !== b) c();"]);
});

test("mutants drops a sign", () => {
  expect(all("const a = -b;")).toEqual(["const a = b;"]);
  expect(all("const a = !b;")).toEqual(["const a = b;"]);
});

test("mutants moves a constant and turns a flag", () => {
  expect(all("const a = 3;")).toEqual(["const a = 4;"]);
  expect(all("const a = 0.5;")).toEqual(["const a = 0.505;"]);
  expect(all("const a = true;")).toEqual(["const a = false;"]);
});

test("mutants leaves a check of limits out", () => {
  expect(all("const a = within(LIMITS, tas);")).toEqual(["const a = (tas);"]);
});

test("mutants takes one function of Math for another", () => {
  expect(all("const a = Math.max(b, c);")).toEqual(["const a = Math.min(b, c);"]);
});

test("mutants leaves types, texts and comments alone", () => {
  expect(all('type A = 1 | 2; const a = "3 - 4" as "3 - 4"; // 5 * 6')).toEqual([]);
  expect(all("const f = (a: 1, b?: -1): 2 => a;")).toEqual([]);
});

test("mutants gives each change with its line", () => {
  expect(mutants("const a =\n  b + c;")).toMatchObject([{ line: 2, change: "+ → -" }]);
});

test("mutants refuses what does not parse", () => {
  expect(() => mutants("const = ;", "broken.ts")).toThrow(/broken\.ts/);
});
