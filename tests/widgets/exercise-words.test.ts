import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { comparisonSvg } from "../../src/widgets/exercise-cell/comparison.ts";
import { fillHtml } from "../../src/widgets/exercise-cell/fill-html.ts";
import { headWords } from "../../src/widgets/exercise-cell/head.ts";

describe("fillHtml", () => {
  test("fillHtml puts texts where their names stand, and leaves other names", () => {
    expect(fillHtml("At <b>{tas}</b>, {aircraft.cruise} or {x}", { tas: "95 kt", "aircraft.cruise": "90 kt" })).toBe(
      "At <b>95 kt</b>, 90 kt or {x}",
    );
  });

  test("fillHtml leaves code, the source of maths and attributes alone", () => {
    const template =
      '<code>{tas}</code><annotation encoding="application/x-tex">\\frac{tas}{2}</annotation><a href="?{tas}">{tas}</a>';
    expect(fillHtml(template, { tas: "95" })).toBe(template.replace(">{tas}</a>", ">95</a>"));
  });

  test("fillHtml makes any text safe", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(fillHtml("{x}", { x: text })).not.toMatch(/[<>"']/);
      }),
    );
  });

  test("fillHtml doesn't fill what it has filled in", () => {
    expect(fillHtml("{a}", { a: "{b}", b: "no" })).toBe("{b}");
  });

  test("fillHtml takes no name from an object's own making", () => {
    expect(fillHtml("{constructor}", {})).toBe("{constructor}");
  });
});

describe("headWords", () => {
  test.each([
    [0, 0, ""],
    [0, 1, "one hint used"],
    [1, 0, "first reply, no hints"],
    [2, 2, "second reply, two hints used"],
    [11, 1, "11th reply, one hint used"],
  ])("headWords after %d replies and %d hints is '%s'", (nth, hints, words) => {
    expect(headWords(nth, hints)).toBe(words);
  });
});

describe("comparisonSvg", () => {
  const print = (value: number): string => `${value.toFixed(2)} NM`;
  const widths = (svg: string): number[] =>
    [...svg.matchAll(/<rect[^>]* width="([\d.]+)"/g)].map(([, width]) => Number(width));

  test("comparisonSvg names both and draws them to one scale", () => {
    const svg = comparisonSvg(0.48, 0.96, print);
    expect(svg).toContain("asked 0.48 NM");
    expect(svg).toContain("yours 0.96 NM");
    const [asked, yours] = widths(svg);
    expect(asked! / yours!).toBeCloseTo(0.5, 3);
  });

  test("comparisonSvg draws no bar beyond its frame, whatever the values", () => {
    const value = fc.double({ min: 0.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, value, (asked, yours) => {
        for (const width of widths(comparisonSvg(asked, yours, print))) {
          expect(width).toBeGreaterThan(0);
          expect(width).toBeLessThanOrEqual(278);
        }
      }),
    );
  });

  test("comparisonSvg draws nothing where bars would say nothing", () => {
    expect(comparisonSvg(0.48, -0.48, print)).toBe("");
    expect(comparisonSvg(0.48, 0, print)).toBe("");
    expect(comparisonSvg(0.48, 0.4801, print)).toBe("");
    expect(comparisonSvg(0.48, 48, print)).toBe("");
    expect(comparisonSvg(Number.NaN, 1, print)).toBe("");
  });

  test("comparisonSvg compares two values under nought by their size", () => {
    expect(widths(comparisonSvg(-5, -10, print))[0]).toBeLessThan(widths(comparisonSvg(-5, -10, print))[1]!);
  });
});
