import { parseHTML } from "linkedom";
import { describe, expect, test } from "vitest";
import type { FigureCell } from "../../src/cells/chapter.ts";
import { rangeTicks, typedText } from "../../src/widgets/figure-scale.ts";
import { figureShell, givenFor } from "../../src/widgets/figure-shell.ts";
import { bank, tas } from "./chapter-of.ts";
import { dunlin } from "./dunlin.ts";

const cellOf = (name: string, number: number): FigureCell => ({
  kind: "figure",
  name,
  id: `figure-${number}`,
  number,
  see: "",
  seeTokens: [],
  options: {},
});
const { document } = parseHTML("<html><body></body></html>");
const parts = {
  given: [tas, bank],
  aircraft: dunlin,
  see: "What to <em>see</em>.",
  document: document as unknown as Document,
};
const names = ["turn-rate-radius", "rate-one-rules"];
const page = parseHTML(
  `<html><body>${names.map((name, i) => figureShell(cellOf(name, i + 1), parts)).join("")}</body></html>`,
).document as unknown as Document;

describe("figureShell", () => {
  test("figureShell gives every id once on a page of several figures", () => {
    const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("figureShell refers by label, description and pattern to what is on the page", () => {
    const named = ["for", "aria-labelledby", "aria-describedby"].flatMap((name) =>
      [...page.querySelectorAll(`[${name}]`)].map((element) => element.getAttribute(name)!),
    );
    const patterns = [...page.body.innerHTML.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id!);
    expect(named.length).toBeGreaterThan(10);
    expect([...named, ...patterns].filter((id) => !page.getElementById(id))).toEqual([]);
  });

  test("figureShell carries both first drawings, hidden from assistive technology, beside a description", () => {
    const cell = page.querySelector("#figure-1")!;
    expect(
      [...cell.querySelectorAll(".plot svg.drawing")].map((svg) => svg.getAttribute("viewBox")!.split(" ")[2]),
    ).toEqual(["580", "350"]);
    expect(cell.querySelectorAll('.plot svg.drawing:not([aria-hidden="true"])')).toHaveLength(0);
    expect(cell.querySelector('[role="img"]')).not.toBeNull();
    expect(cell.querySelector('[data-part="description"]')!.textContent).toContain("3.08\u00a0°/s");
  });

  test("figureShell shows readings, what to see, the model and whose aircraft without a script", () => {
    const text = page.querySelector("#figure-1")!.textContent;
    for (const words of [
      "3.08",
      "0.49",
      "14.6°",
      "What to see.",
      "Model: level, balanced turn",
      "Saltmarsh Flying Club",
    ])
      expect(text).toContain(words);
  });

  test("figureShell names each slider, and its field with the unit in words", () => {
    const label = page.querySelector('label[for="figure-1-tas"]')!;
    expect(label.textContent).toBe("True airspeed");
    expect(page.querySelector("#figure-1-tas-field")!.getAttribute("aria-label")).toBe("True airspeed, knots");
  });

  test("figureShell escapes what an author wrote", () => {
    const label = 'Speed <b>"x"</b>';
    const html = figureShell(cellOf("rate-one-rules", 3), { ...parts, given: [{ ...tas, label }] });
    expect(html).not.toContain("<b>&quot;x");
    expect(parseHTML(`<html><body>${html}</body></html>`).document.querySelector("label")!.textContent).toBe(label);
  });
});

describe("givenFor", () => {
  test("givenFor prefers the name, takes the quantity else, and tells what is missing", () => {
    const cruise = { ...tas, name: "cruise" };
    expect(givenFor("tas", [cruise, tas])).toBe(tas);
    expect(givenFor("tas", [bank, cruise])).toBe(cruise);
    expect(() => givenFor("tas", [bank])).toThrow(/tas/);
  });
});

describe("a slider's scale", () => {
  test.each([
    [60, 200, 5, 14],
    [5, 45, 1, 8],
    [0, 360, 5, 12],
    [60, 230.5, 5, 10],
  ])("rangeTicks parts %d to %d by %d into %d", (from, to, step, parts) => {
    expect(rangeTicks(from, to, step)).toBe(parts);
  });

  test("typedText shows what was typed, with a drawn minus", () => {
    expect([95, 95.25, -5, 0.1 + 0.2].map(typedText)).toEqual(["95", "95.25", "−5", "0.3"]);
  });
});
