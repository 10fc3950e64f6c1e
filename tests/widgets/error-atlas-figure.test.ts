import fc from "fast-check";
import { parseHTML } from "linkedom";
import { describe, expect, test } from "vitest";
import { atlasRules } from "../../src/cells/atlas-rules.ts";
import type { FigureCell } from "../../src/cells/chapter.ts";
import { Drawing, drawFigure } from "../../src/widgets/drawing/index.ts";
import { answerOf } from "../../src/widgets/error-atlas/answer.ts";
import { atlasFigure } from "../../src/widgets/error-atlas/figure.ts";
import { atlasGivens } from "../../src/widgets/error-atlas/givens.ts";
import { compared, needsOf } from "../../src/widgets/error-atlas/model.ts";
import type { AtlasRule, Values } from "../../src/widgets/error-atlas/rule.ts";
import { rules } from "../../src/widgets/error-atlas/rules.ts";
import type { FigureState } from "../../src/widgets/figure.ts";
import { outsideOf } from "../../src/widgets/figure-cell.ts";
import { figureShell } from "../../src/widgets/figure-shell.ts";
import { figureNamed, loadFigure } from "../../src/widgets/figures.ts";
import { aircraft, anyValues, named, place, valuesOf } from "./atlas-of.ts";

const { document } = parseHTML("<html><body></body></html>") as unknown as { document: Document };
const size = fc.constantFrom({ width: 580 }, { width: 350 }, { width: 400, height: 300 });
const show = (rule: AtlasRule, values: Values, kept?: Values) =>
  atlasFigure(rule.key)!.show({ values, kept, aircraft });
const layersOf = (rule: AtlasRule, values: Values, look: string, kept?: Values) =>
  show(rule, values, kept)
    .panels({ width: 580 })
    .flatMap(({ layers }) => layers.filter((layer) => layer.look === look));

describe.each(rules.map((rule): [string, AtlasRule] => [rule.key, rule]))("the figure of %s", (key, rule) => {
  const figure = atlasFigure(key)!;
  const values = anyValues(rule);
  const state: fc.Arbitrary<FigureState> = fc.record({
    values,
    kept: fc.option(values, { nil: undefined }),
    aircraft: fc.constant(aircraft),
  });

  test("take leaves the same elements as drawing the state afresh, with no number that is not one", () => {
    fc.assert(
      fc.property(fc.array(state, { minLength: 2, maxLength: 3 }), size, (states, room) => {
        const options = { ...room, id: "figure-1-live", document };
        const drawing = new Drawing(figure.show(states[0]!).panels(options), options);
        for (const next of states.slice(1)) drawing.take(figure.show(next).panels(options));
        const html = drawing.svg.outerHTML;
        expect(html).toBe(drawFigure(figure, states.at(-1)!, options).outerHTML);
        expect(html).not.toMatch(/NaN|Infinity|undefined|null/);
      }),
      { numRuns: 6 },
    );
  }, 30_000);

  test("its needs are those that the signature asks a chapter for, and it holds what each formula takes", () => {
    expect(figure.needs).toEqual(atlasRules[rule.key].needs);
    expect(Object.keys(figure.holds).sort()).toEqual([...figure.needs].sort());
    expect(outsideOf(figure, valuesOf(rule))).toBeUndefined();
    expect(outsideOf(figure, valuesOf(rule, { [needsOf(rule).tolerance]: -1 }))).toContain("-1 is outside");
  });

  test("its answer, table and readings are the model's", () => {
    const at = valuesOf(rule);
    const shown = figure.show({ values: at, aircraft });
    expect(shown.answer).toBe(answerOf(rule, at, aircraft));
    const { rows, columns } = shown.table();
    expect(rows.length).toBeGreaterThan(5);
    expect(columns).toHaveLength(2 + 2 * rule.lines.length);
    for (const [x, exact, byRule, error] of rows) {
      const point = compared(rule, rule.lines[0], { ...at, [needsOf(rule).across]: x! });
      expect([exact, byRule, error]).toEqual(point ? [point.exact, point.rule, point.error] : [null, null, null]);
    }
    expect(shown.readouts).toHaveLength(1 + rule.lines.length);
  });
});

describe("what the strip shows", () => {
  const rule = named("bankByTenthPlusSevenRule");

  test("the ground is shaded only between the curve and the tolerance, within the aircraft's range", () => {
    const fill = layersOf(rule, valuesOf(rule), "over two")[0]!;
    if (fill.kind !== "fill") throw new Error("not a fill");
    const [from, to] = rule.across.range(aircraft);
    expect([fill.x[0], fill.x.at(-1)]).toEqual([from, to]);
    fill.x.forEach((tas, i) => {
      const { error } = compared(rule, rule.lines[0], { tas })!;
      expect(fill.y2[i]).toBe(error);
      expect(fill.y1[i]).toBe(Math.abs(error) <= 1 ? error : Math.sign(error));
    });
  });

  test("the safe half has a stout edge: below nought for bank, above for a level-off, none for drift", () => {
    const edge = (key: Parameters<typeof named>[0]) => {
      const layer = layersOf(named(key), valuesOf(named(key)), "safe")[0]!;
      if (layer.kind !== "area") throw new Error("not an area");
      return [layer.y1?.[0], layer.y2?.[0]];
    };
    expect(edge("bankByTenthPlusSevenRule")[1]).toBe(0);
    expect(edge("levelOffLeadByRule")[0]).toBe(0);
    expect(edge("maximumDriftByRule")).toEqual([undefined, undefined]);
  });

  test("a kept state is a ghost where other numbers than the place and the tolerance differ", () => {
    const lead = named("rollOutLeadByRule");
    const rows = (kept: Values): number[] =>
      layersOf(lead, valuesOf(lead), "curve ghost", kept).map((layer) => (layer.kind === "line" ? layer.x.length : -1));
    expect(rows(valuesOf(lead, { bank: 20, headingTolerance: 5 }))).toEqual([0, 0, 0]);
    expect(Math.min(...rows(valuesOf(lead, { rollRate: 8 })))).toBeGreaterThan(50);
  });
});

test("figureShell hands the chosen rule on to its element, under the rule's own title, answer and controls", () => {
  const key = "maximumDriftByRule";
  const cell = { kind: "figure", name: "error-atlas", id: "figure-3", number: 3, see: "", seeTokens: [] } as const;
  const parts = { given: atlasGivens(aircraft, place), aircraft, see: "", document };
  const html = figureShell({ ...cell, line: 1, column: 1, options: { rule: key } } as FigureCell, parts);
  const shell = parseHTML(html).document.querySelector("figure-cell")!;
  expect(JSON.parse(shell.getAttribute("data-options")!)).toEqual({ rule: key });
  expect(shell.querySelector('[data-part="title"]')!.textContent).toBe(atlasRules[key].title);
  expect(shell.querySelector('[data-part="answer"]')!.textContent).toBe(
    answerOf(named(key), valuesOf(named(key)), aircraft),
  );
  const needs = [...shell.querySelectorAll(".set")].map((set) => set.getAttribute("data-need"));
  expect(needs).toEqual(atlasRules[key].needs);
});

describe("what the figure says", () => {
  test("a speed beyond the aircraft's range is named, with the range and whose it is", () => {
    const { notice } = show(named("bankByTenthPlusSevenRule"), { tas: 250, bankTolerance: 1 });
    expect(notice.replaceAll("\u00a0", " ")).toBe(
      "250 kt is outside the range that is judged, from 47 to 183 kt (Dunlin).",
    );
  });

  test("numbers without an answer leave dashes and a notice, and throw nothing", () => {
    const compass = named("rollOutHeadingByRule");
    const { readouts, notice, answer, table } = show(compass, valuesOf(compass, { bank: 30, dip: 75 }));
    expect(readouts.map(({ number }) => number)).toEqual(["—", "—"]);
    expect(notice).toBe("There is no value to compare with at these numbers.");
    expect(answer).toContain("no value to be compared with");
    expect(table().rows.every((row) => row[1] === null)).toBe(true);
  });

  test("a descent is judged as a climb of the same vertical speed", () => {
    const rule = named("levelOffLeadByRule");
    const [up, down] = [500, -500].map((verticalSpeed) => show(rule, valuesOf(rule, { verticalSpeed })));
    expect(down!.readouts).toEqual(up!.readouts);
    expect(down!.notice).toBe("");
  });

  test("loadFigure finds a rule's figure by its word, none for a word that chooses none, and others by name", async () => {
    expect(await loadFigure("error-atlas", { rule: "maximumDriftByRule" })).toBe(atlasFigure("maximumDriftByRule"));
    for (const rule of ["noSuchRule", "toString", 3]) expect(await loadFigure("error-atlas", { rule })).toBeUndefined();
    expect(await loadFigure("error-atlas", {})).toBeUndefined();
    expect(await loadFigure("rate-one-rules", {})).toBe(figureNamed("rate-one-rules"));
  });
});
