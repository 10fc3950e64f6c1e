import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { catalogue, type Formula, OutOfRange } from "../../src/calc/index.ts";
import { calculate } from "../../src/widgets/formula-cell/calculation.ts";
import { calculatorOf, comparedWith } from "../../src/widgets/formula-cell/fields.ts";
import { isFoundBy } from "../../src/widgets/formula-cell/find.ts";
import { isNarrow, rangeWords } from "../../src/widgets/formula-cell/limits.ts";
import { formulaShell, piecesOf } from "../../src/widgets/formula-cell/shell.ts";
import { workingFor } from "../../src/widgets/formula-cell/working.ts";
import { workingTex } from "../../src/widgets/formula-cell/working-tex.ts";

const named = (name: string): Formula => catalogue.find((formula) => formula.name === name)!;
const range = (name: string, argument: string): string => {
  const formula = named(name);
  return rangeWords(
    formula,
    formula.args.findIndex((each) => each.name === argument),
  );
};
const every = catalogue.map((formula) => [formula.name, formula] as const);
const found = (find: string): string[] => catalogue.filter((each) => isFoundBy(each, find)).map(({ name }) => name);

describe("rangeWords", () => {
  test.each([
    ["turnRate", "tas", "over 0 to 700\u00a0kt"],
    ["turnRate", "bank", "over −90 to under 90°"],
    ["windComponents", "windSpeed", "0 to 300\u00a0kt"],
    ["lagError", "time", "0\u00a0s or more"],
    ["shortestTurn", "from", "any"],
    ["dragInTurn", "inducedShare", "0 to 1"],
    ["isaTemperature", "altitude", "−16,000 to 100,000\u00a0ft"],
    ["holdEntry", "turns", "left or right"],
  ])("rangeWords says of %s's %s: %s", (name, argument, words) => {
    expect(range(name, argument)).toBe(words);
  });

  test.each(every)("rangeWords of %s says 'over' or 'under' where the end itself is refused", (_, formula) => {
    for (const [at, { from, to, unit }] of formula.args.entries()) {
      const words = rangeWords(formula, at);
      if (unit === "word" || words.startsWith("any")) continue;
      expect(words.includes("over "), words).toBe(isRefusedAsItsOwn(formula, at, from!));
      expect(words.includes("under "), words).toBe(isRefusedAsItsOwn(formula, at, to!));
    }
  });
});

/** Whether the formula refuses a value for the very end of that argument's own range. */
function isRefusedAsItsOwn({ args, call }: Formula, at: number, end: number): boolean {
  if (!Number.isFinite(end)) return false;
  try {
    (call as (...values: readonly unknown[]) => unknown)(...args.map(({ example }, i) => (i === at ? end : example)));
    return false;
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return error.quantity === args[at]!.words && (error.limits.from === end || error.limits.to === end);
  }
}

test("isNarrow holds where a model takes less of a quantity than other formulas, within reach of its example", () => {
  const bankOf = (name: string) => named(name).args.find(({ name }) => name === "bank")!;
  expect(isNarrow(bankOf("dragInTurn"), catalogue)).toBe(true);
  expect(isNarrow(bankOf("turnRate"), catalogue)).toBe(false);
});

describe("isFoundBy", () => {
  test("isFoundBy looks for every word as a part of words, name, topic or arguments, in any case and order", () => {
    expect(found("RADIUS turn")).toContain("turnRadius");
    expect(found("urnRad")).toEqual(["turnRadius"]);
    expect(found("leads rule")).toEqual(["rollOutLeadByRule", "levelOffLeadByRule"]);
    expect(found("crosswind")).toEqual(["windComponents"]);
    expect(found("inducedShare")).toEqual(found("induced share of drag"));
    expect(found("rule of thumb").toSorted()).toEqual(
      catalogue
        .filter(({ kind }) => kind === "rule")
        .map(({ name }) => name)
        .toSorted(),
    );
  });

  test("isFoundBy finds everything for nothing, and nothing for what stands nowhere", () => {
    expect(found("  ")).toHaveLength(catalogue.length);
    expect(found("bank zebra")).toEqual([]);
    expect(found(".*")).toEqual([]);
  });

  test("isFoundBy finds no more for more words", () => {
    const word = fc.constantFrom("turn", "bank", "wind", "alt", "model", "rate", "x", "of");
    fc.assert(
      fc.property(fc.array(word), word, (words, more) => {
        const fewer = new Set(found(words.join(" ")));
        expect(found([...words, more].join(" ")).every((name) => fewer.has(name))).toBe(true);
      }),
    );
  });
});

describe("workingFor", () => {
  test.each(every)("workingFor leads to what %s gives, as its calculator prints it", (_, formula) => {
    const calculator = calculatorOf(formula);
    const { results, values } = calculate(calculator, new Map());
    const rows = workingFor(formula, values).slice(-results.length);
    const texts = rows.map(({ comes }) => comes.replaceAll("\u00a0", " ").replace(/ (?=°$)/, ""));
    const wanted = results.map(({ number, unit }) => (unit === "°" || !unit ? number + unit : `${number} ${unit}`));
    expect(texts).toEqual(wanted);
  });

  const typeset = new Set(workingTex(catalogue));
  test.each(every)("workingFor of %s shows no letter or formula that workingTex leaves out", (_, formula) => {
    const { fields } = calculatorOf(formula, [formula]);
    const values = fields.map(({ key, argument: { options, example, from, to } }) => {
      const near = fc
        .double({ min: 0.5, max: 1.5, noNaN: true })
        .map((by) => Math.min(to!, Math.max(from!, by * Number(example))));
      const choice = formula.name === "convert" ? fc.constant(example) : options && fc.constantFrom(...options);
      return fc.tuple(fc.constant(key), choice ?? near) as fc.Arbitrary<[string, number | string]>;
    });
    fc.assert(
      fc.property(fc.tuple(...values), (pairs) => {
        for (const { symbol, tex } of rowsOr(formula, new Map(pairs)))
          for (const shown of [symbol, tex]) expect(!shown || typeset.has(shown), shown).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});

function rowsOr(formula: Formula, values: ReadonlyMap<string, number | string>) {
  try {
    return workingFor(formula, values);
  } catch (error) {
    if (error instanceof OutOfRange) return [];
    throw error;
  }
}

describe("formulaShell", () => {
  const shell = (name: string) => formulaShell(named(name), (tex) => `<i>${tex}</i>`, { source: 4, before: [] });

  test("formulaShell links a rule with what it stands for, both ways", () => {
    expect(shell("rollOutLeadByRule")).toContain('Stands for the <a href="#rollOutLead">lead for the roll-out</a>');
    expect(shell("rollOutLead")).toContain('Rule of thumb: <a href="#rollOutLeadByRule">');
    for (const rule of catalogue.filter(({ kind }) => kind === "rule")) {
      const [exact] = comparedWith(rule, catalogue);
      expect(comparedWith(exact!, catalogue)).toContain(rule);
    }
  });

  test("formulaShell says how a chapter calls the formula, and what stands for an argument left out", () => {
    expect(shell("bankForRate")).toContain("<code>bankForRate(tas, rate = 3)</code>");
    expect(shell("bankForRate")).toContain("; 3\u00a0°/s if left out");
  });

  test("formulaShell marks a letter as explained only where it last stood for the same thing", () => {
    const again = (before: readonly string[]) =>
      formulaShell(named("turnRadius"), (tex) => tex, { source: 1, before: before.map(named) }).match(/class="again"/g)
        ?.length ?? 0;
    expect(again([])).toBe(0);
    expect(again(["turnRate"])).toBe(2);
    expect(again(["turnRate", "equivalentAirspeed"])).toBe(2);
    expect(again(["turnRate", "verticalSpeedFromPitch"])).toBe(2);
    expect(again(["pressureAltitude"])).toBe(0);
  });

  test("piecesOf parts an equation after its commas and before its words, and leaves brackets whole", () => {
    expect(piecesOf("a = b,\\quad c = f(d,\\ e)")).toEqual(["a = b,", " c = f(d,\\ e)"]);
    expect(piecesOf("a\\quad\\text{or}\\quad b")).toEqual(["a", "\\text{or}\\quad b"]);
  });
});
