import katex from "katex";
import { describe, expect, test } from "vitest";
import { catalogue, convert, type Formula, type Step, type Unit, units } from "../../src/calc/index.ts";

type Value = number | string;

const renders = (tex: string) => () => katex.renderToString(tex, { throwOnError: true, strict: "error" });

describe.each(catalogue.map((formula) => [formula.name, formula] as const))("%s", (_, formula) => {
  test("has TeX that typesets, in its formula, symbols and working", () => {
    for (const tex of [formula.tex, formula.symbol, ...formula.args.map(({ symbol }) => symbol)]) {
      expect(renders(tex), tex).not.toThrow();
    }
    for (const { tex = "", symbol } of working(formula, examples(formula))) {
      expect(renders(tex), tex).not.toThrow();
      expect(renders(symbol), symbol).not.toThrow();
    }
  });

  test("works its examples and values about them row by row to what it gives", () => {
    for (const values of [examples(formula), about(formula, 0.8), about(formula, 1.1)]) {
      const rows = working(formula, values);
      for (const row of rows.slice(0, -1)) expectAgrees(evaluated(row), leading(row.comes), row);
      const last = rows.at(-1);
      if (last) expectLastRow(formula, values, last);
    }
  });
});

function expectLastRow(formula: Formula, values: readonly Value[], row: Step): void {
  expect(row.comes).toBeUndefined();
  const result = call(formula, values);
  const [, printed] = row.numbers.split(" = ");
  if (printed !== undefined) expectAgrees(evaluated(row), leading(printed), row);
  if (typeof result !== "number" || !("unit" in formula.result)) return;
  const inPrintedUnit = printed === undefined ? result : converted(result, formula.result.unit, unitOf(printed));
  expectAgrees(printed === undefined ? evaluated(row) : leading(printed), inPrintedUnit, row);
}

/** Numbers that were printed rounded agree within their rounding: a part in a thousand covers all workings. */
function expectAgrees(one: number | undefined, other: number | undefined, { numbers }: Step): void {
  if (one === undefined || other === undefined) return;
  expect(Math.abs(one - other), `${numbers}: ${one} is not ${other}`).toBeLessThanOrEqual(
    Math.max(0.001 * Math.abs(other), 1e-6),
  );
}

function working(formula: Formula, values: readonly Value[]): readonly Step[] {
  const steps = formula.steps as unknown as ((...values: readonly Value[]) => readonly Step[]) | undefined;
  return steps?.(...values) ?? [];
}

function call({ call }: Formula, values: readonly Value[]): unknown {
  return (call as unknown as (...values: readonly Value[]) => unknown)(...values);
}

function examples({ args }: Formula): Value[] {
  return args.map(({ example }) => example);
}

function about({ args }: Formula, factor: number): Value[] {
  return args.map(({ example, from = -Infinity, to = Infinity }) =>
    typeof example === "number" ? Math.min(to, Math.max(from, Number((example * factor).toFixed(6)))) : example,
  );
}

/** The number a printed quantity begins with. */
function leading(text = ""): number | undefined {
  const number = /^−?[\d.]+/.exec(text)?.[0];
  return number === undefined ? undefined : Number(number.replace("−", "-"));
}

function unitOf(text: string): string {
  const unit = text.replace(/^−?[\d.]+ ?/, "");
  return { "°": "deg", "°/s": "deg/s" }[unit] ?? unit;
}

function converted(value: number, from: string, to: string): number | undefined {
  if (to === "rad/s" && from === "deg/s") return convert(value, "deg", "rad");
  const known = (unit: string): unit is Unit => (units as readonly string[]).includes(unit);
  return known(from) && known(to) ? convert(value, from, to) : from === to ? value : undefined;
}

/** What the printed numbers come to, taken as a student would key them in; undefined where they are words. */
function evaluated({ numbers }: Step): number | undefined {
  const keyed = numbers
    .split(" = ")[0]!
    .replaceAll("−", "-")
    .replaceAll("×", "*")
    .replaceAll("²", "**2")
    .replaceAll("³", "**3")
    .replaceAll("^", "**")
    .replaceAll("√(", "sqrt(")
    .replace(/(sin|cos|tan|ln) ?(-?[\d.]+°?)/g, "$1($2)")
    .replace(/(sin|cos|tan|ln) \(/g, "$1(")
    .replace(/(sin|cos|tan)\((-?[\d.]+)\)°/g, "$1($2°)")
    .replaceAll("°", "*degree");
  const words = keyed.match(/[a-zA-Z]+/g) ?? [];
  if (!words.every((word) => word in keys)) return undefined;
  const value: unknown = new Function(...Object.keys(keys), `return ${keyed}`)(...Object.values(keys));
  return typeof value === "number" ? value : undefined;
}

const inDegrees = (inverse: (x: number) => number) => (x: number) => (inverse(x) * 180) / Math.PI;
const keys: Readonly<Record<string, unknown>> = {
  degree: Math.PI / 180,
  sqrt: Math.sqrt,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  ln: Math.log,
  arcsin: inDegrees(Math.asin),
  arccos: inDegrees(Math.acos),
  arctan: inDegrees(Math.atan),
};
