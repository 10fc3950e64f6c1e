import "./dom.ts"; // before Lit
import { beforeEach, describe, expect, test } from "vitest";
import { OutOfRange } from "../../src/calc/limits.ts";
import type { WorkingCell } from "../../src/cells/chapter.ts";
import { workingRows, workingShell } from "../../src/widgets/working-cell.ts";
import { WorkingCellElement } from "../../src/widgets/working-element.ts";
import { worksheetOf } from "./chapter-of.ts";
import { bodyOf } from "./dom.ts";

const cell: WorkingCell = {
  kind: "working",
  id: "working-1",
  of: "half a turn & more",
  steps: [
    { name: "wide", what: "Width", is: "2 * turnRadius(tas, bank)", unit: "NM", digits: 2 },
    { what: "Twice the width", is: "2 * wide", unit: "NM", digits: 2, symbol: "w", tex: "2d" },
    { what: "Faster", is: "tas + 10", unit: "kt", digits: 0 },
  ],
};
const typeset = (tex: string): string => `<i class="typeset">${tex}</i>`;
const worked = (worksheet = worksheetOf([])) => workingRows(cell.steps, (name) => worksheet.value(name));

customElements.define("working-cell", WorkingCellElement);

describe("workingRows", () => {
  test("workingRows gives each step its rows, and a named result to the steps after it", () => {
    const [width, twice, faster] = worked().map((rows) => (rows instanceof OutOfRange ? [] : rows));
    expect(width!.length).toBeGreaterThan(1);
    const printed = Number.parseFloat(width!.at(-1)!.comes);
    expect(Number.parseFloat(twice!.at(-1)!.comes)).toBeCloseTo(2 * printed, 1);
    expect(twice!.at(-1)).toMatchObject({ what: "Twice the width", symbol: "w", tex: "2d" });
    expect(faster!.at(-1)!.comes).toBe("105\u00a0kt");
  });

  test("workingRows works nothing out twice that comes to the same", () => {
    const worksheet = worksheetOf([]);
    const step = { what: "Radius", is: "turnRadius(tas, bank)", unit: "NM", digits: 2 };
    const steps = [step, { ...step, what: "Turned round", is: "turnRadius(tas, -bank)" }, step];
    const shown = workingRows(steps, (name) => worksheet.value(name)).map((rows) =>
      rows instanceof OutOfRange ? [] : rows.map((row) => row.idle !== true),
    );
    expect(shown[0]!.every(Boolean)).toBe(true);
    expect(shown[1]).toEqual(shown[2]);
    expect(shown[1]!.filter(Boolean)).toHaveLength(1);
    expect(shown[1]!.at(-1)).toBe(true);
  });

  test("workingRows carries a step's trouble to the steps that use it and to no other", () => {
    const worksheet = worksheetOf([]);
    worksheet.set("bank", 95);
    expect(worked(worksheet).map((rows) => rows instanceof OutOfRange)).toEqual([true, true, false]);
  });
});

describe("workingShell", () => {
  const body = (): HTMLElement => bodyOf(workingShell(cell, worked(), typeset));

  test("workingShell sets the formula once and leaves the numbers plain", () => {
    const last = body().querySelector('[data-step="1"]')!;
    expect(last.querySelector(".what")!.textContent).toBe("Twice the width");
    expect(last.querySelector(".sign")!.textContent).toMatch(/w$/);
    expect(last.querySelector(".line")!.textContent).toMatch(/^= .*2d$/);
    expect(last.querySelector('[data-part="numbers"]')!.textContent).toMatch(/^= 2 × /);
  });

  test("workingShell gives a sentence to whoever can't see the numbers", () => {
    for (const row of body().querySelectorAll("li")) {
      expect(row.querySelector('[data-part="numbers"]')!.getAttribute("aria-hidden")).toBe("true");
      expect(row.querySelector('[data-part="spoken"]')!.textContent).not.toBe("");
    }
  });

  test("workingShell raises powers", () => {
    const row = { what: "Mach number", numbers: "√((0.2 / 0.5 + 1)^(2/7) − 3^2)", comes: "", spoken: "" };
    const numbers = bodyOf(workingShell(cell, [[row]], typeset)).querySelector('[data-part="numbers"]')!;
    expect(numbers.innerHTML).toBe("= √((0.2 / 0.5 + 1)<sup>2/7</sup> − 3<sup>2</sup>)");
  });

  test("workingShell makes its words safe", () => {
    expect(body().querySelector(".label")!.textContent).toBe("Worked examplehalf a turn & more");
  });
});

describe("WorkingCellElement", () => {
  let element: WorkingCellElement;
  let worksheet: ReturnType<typeof worksheetOf>;
  const comes = (): string[] =>
    [...element.querySelectorAll('[data-part="comes"]')].map((part) => part.textContent ?? "");

  beforeEach(async () => {
    worksheet = worksheetOf([]);
    element = bodyOf(workingShell(cell, worked(), typeset)).querySelector("working-cell") as WorkingCellElement;
    element.worksheet = worksheet;
    await element.updateComplete;
  });

  test("WorkingCellElement fills numbers where they stand and leaves formulas alone", () => {
    const formulas = [...element.querySelectorAll(".typeset")];
    worksheet.set("tas", 120);
    expect(comes().at(-1)).toBe("130\u00a0kt");
    expect([...element.querySelectorAll(".typeset")]).toEqual(formulas);
  });

  test("WorkingCellElement shows what building with the same values shows", async () => {
    worksheet.setMany({ tas: 120, bank: 30 });
    const built = bodyOf(workingShell(cell, worked(worksheet), typeset)).querySelector(".steps")!.innerHTML;
    expect(element.querySelector(".steps")!.innerHTML).toBe(built);
  });

  test("WorkingCellElement says beside a step what its formula doesn't answer for, and comes back", () => {
    const before = comes();
    worksheet.set("bank", 95);
    expect(comes().filter((text) => text.includes("90°"))).toHaveLength(2);
    expect(comes().at(-1)).toBe("105\u00a0kt");
    worksheet.set("bank", 15);
    expect(comes()).toEqual(before);
  });

  test("WorkingCellElement no longer follows once it is taken away", () => {
    const before = comes();
    element.remove();
    worksheet.set("tas", 120);
    expect(comes()).toEqual(before);
  });
});
