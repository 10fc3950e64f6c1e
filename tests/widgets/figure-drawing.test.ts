import fc from "fast-check";
import { parseHTML } from "linkedom";
import { describe, expect, test } from "vitest";
import { Drawing, drawFigure } from "../../src/widgets/drawing/index.ts";
import type { Figure, FigureState } from "../../src/widgets/figure.ts";
import { rateOneRules } from "../../src/widgets/rate-one-rules/figure.ts";
import { turnRateRadius } from "../../src/widgets/turn-rate-radius/figure.ts";
import { dunlin } from "./dunlin.ts";

const documentOf = (): Document => parseHTML("<html><body></body></html>").document as unknown as Document;
const document = documentOf();

/** Any state a reader can reach: within the slider's range mostly, beyond it by typing. */
const tas = fc.oneof(fc.integer({ min: 40, max: 250 }), fc.double({ min: 20, max: 400, noNaN: true }));
const bank = fc.oneof(fc.integer({ min: 0, max: 60 }), fc.double({ min: 0, max: 85, noNaN: true }));
const turn = fc.record({ tas, bank });
const state: fc.Arbitrary<FigureState> = fc.record({
  values: turn,
  kept: fc.option(turn, { nil: undefined }),
  aircraft: fc.constant(dunlin),
});
const size = fc.constantFrom({ width: 580 }, { width: 350 }, { width: 400, height: 300 });

const drawn: readonly Figure[] = [turnRateRadius, rateOneRules];

describe.each(drawn)("a drawing of $name", { timeout: 30_000 }, (figure) => {
  test("take leaves the same elements as drawing the state afresh, from any state to any other", () => {
    fc.assert(
      fc.property(fc.array(state, { minLength: 2, maxLength: 5 }), size, (states, room) => {
        const options = { ...room, id: "figure-1-live", document };
        const drawing = new Drawing(figure.show(states[0]!).panels(options), options);
        for (const next of states.slice(1)) drawing.take(figure.show(next).panels(options));
        expect(drawing.svg.outerHTML).toBe(drawFigure(figure, states.at(-1)!, options).outerHTML);
      }),
      { numRuns: 30 },
    );
  });

  test("take plots no panel again while the axes stay, and leaves alone what did not change", () => {
    const options = { width: 580, id: "figure-1-live", document };
    const at = (tas: number) => figure.show({ values: { tas, bank: 15 }, aircraft: dunlin }).panels(options);
    const drawing = new Drawing(at(95), options);
    const panels = [...drawing.svg.querySelectorAll("svg")];
    const graticule = [...drawing.svg.querySelectorAll(".grid line, .axis line, .tick text")];
    drawing.take(at(96));
    expect([...drawing.svg.querySelectorAll("svg")].every((panel, i) => panel === panels[i])).toBe(true);
    const after = new Set(drawing.svg.querySelectorAll("line, text"));
    expect(graticule.length).toBeGreaterThan(20);
    expect(graticule.filter((element) => !after.has(element))).toEqual([]);
  });

  test("take finds the plot of axes it has left, and shows the present state in it", () => {
    const options = { width: 580, id: "figure-1-live", document };
    const at = (tas: number) => figure.show({ values: { tas, bank: 15 }, aircraft: dunlin }).panels(options);
    const drawing = new Drawing(at(95), options);
    const [first] = drawing.svg.querySelectorAll("svg");
    drawing.take(at(390));
    expect(drawing.svg.querySelector("svg")).not.toBe(first);
    drawing.take(at(100));
    expect(drawing.svg.querySelector("svg")).toBe(first);
    expect(drawing.svg.outerHTML).toBe(new Drawing(at(100), options).svg.outerHTML);
  });

  test("drawFigure prefixes every id and refers to none that the drawing lacks", () => {
    const svg = drawFigure(
      figure,
      { values: { tas: 95, bank: 15 }, aircraft: dunlin },
      { width: 580, id: "figure-7-wide", document },
    );
    const ids = [...svg.querySelectorAll("[id]")].map(({ id }) => id);
    expect(ids.every((id) => id.startsWith("figure-7-wide-"))).toBe(true);
    const used = [...svg.outerHTML.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id);
    expect(used.length).toBeGreaterThan(0);
    expect(ids).toEqual(expect.arrayContaining(used));
  });

  test("drawFigure leaves neither a style element nor a number that is not one", () => {
    fc.assert(
      fc.property(state, size, (at, room) => {
        const html = drawFigure(figure, at, { ...room, id: "f", document }).outerHTML;
        expect(html).not.toMatch(/<style|NaN|Infinity|undefined|null/);
      }),
      { numRuns: 30 },
    );
  });
});
