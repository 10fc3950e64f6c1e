import "./dom.ts"; // before Lit
import { beforeEach, describe, expect, test } from "vitest";
import type { FigureCell } from "../../src/cells/chapter.ts";
import type { Worksheet } from "../../src/cells/worksheet.ts";
import { drawFigure } from "../../src/widgets/drawing/index.ts";
import { FigureCellElement } from "../../src/widgets/figure-cell.ts";
import { figureShell } from "../../src/widgets/figure-shell.ts";
import { turnRateRadius } from "../../src/widgets/turn-rate-radius/figure.ts";
import { bank, tas, worksheetOf } from "./chapter-of.ts";
import { bodyOf, click, press } from "./dom.ts";
import { dunlin } from "./dunlin.ts";

customElements.define("figure-cell", FigureCellElement);

const built: FigureCell = {
  kind: "figure",
  name: "turn-rate-radius",
  id: "figure-1",
  number: 1,
  see: "",
  seeTokens: [],
  options: {},
};
const shell = figureShell(built, { given: [tas, bank], aircraft: dunlin, see: "", document });

let worksheet: Worksheet;
let cell: FigureCellElement;
const part = <E extends HTMLElement>(name: string): E => cell.querySelector<E>(`[data-part="${name}"]`)!;
const of = <E extends HTMLElement>(need: string, name: string): E =>
  cell.querySelector<E>(`[data-need="${need}"] [data-part="${name}"]`)!;
const readings = (): string[] => [...cell.querySelectorAll(".now")].map(({ textContent }) => textContent);
const live = (): SVGSVGElement | null => cell.querySelector(".plot > svg.drawing");
const settled = (): Promise<unknown> => new Promise((done) => setTimeout(done, 20));
const fire = (element: Element, kind: string): boolean => element.dispatchEvent(new Event(kind, { bubbles: true }));

function type(need: string, text: string): void {
  const field = of<HTMLInputElement>(need, "field");
  field.value = text;
  fire(field, "change");
}

async function come(load?: FigureCellElement["loadDrawing"]): Promise<void> {
  worksheet = worksheetOf();
  cell = bodyOf(shell).querySelector<FigureCellElement>("figure-cell")!;
  if (load) cell.loadDrawing = load;
  cell.facts = dunlin;
  cell.worksheet = worksheet;
  await cell.updateComplete;
  await settled();
}

beforeEach(() => come());

describe("a figure", () => {
  test("keeps its built drawings until a quantity differs, then draws that state", async () => {
    expect(live()).toBeNull();
    worksheet.set("tas", 120);
    await settled();
    const state = { values: { tas: 120, bank: 15 }, aircraft: dunlin };
    const room = { width: Number(live()!.getAttribute("width")), id: "figure-1-live", document };
    expect(live()!.outerHTML).toBe(drawFigure(turnRateRadius, state, room).outerHTML);
  });

  test("says so where its drawing can't be loaded, and its readings still follow", async () => {
    await come(() => Promise.reject(new Error("gone")));
    worksheet.set("tas", 190);
    await settled();
    expect(live()).toBeNull();
    expect(readings()).toEqual(["1.54°/s", "1.96NM", "27.6°"]);
    expect(part("notice").textContent).toMatch(/above the never-exceed speed.*could not be loaded/);
  });

  test("follows the worksheet in readings, description and controls", async () => {
    worksheet.setMany({ tas: 190, bank: 30 });
    await settled();
    expect(readings()).toEqual(["3.32°/s", "0.91NM", "27.6°"]);
    expect(part("description").textContent).toContain("190\u00a0kt, 30°");
    expect(of<HTMLInputElement>("tas", "field").value).toBe("190");
    expect(of("tas", "range").getAttribute("aria-valuetext")).toBe("190 knots");
  });

  test("shows no reading and no drawing for a value its model doesn't answer for", async () => {
    worksheet.set("tas", 900);
    await settled();
    expect(readings().every((text) => text.startsWith("—"))).toBe(true);
    expect(part("plot").hasAttribute("data-outside")).toBe(true);
    expect(part("notice").textContent).toMatch(/900.* outside .*20 to 400/);
    worksheet.set("tas", 95);
    await settled();
    expect(part("plot").hasAttribute("data-outside")).toBe(false);
    expect(readings()[0]).toBe("3.08°/s");
  });
});

describe("a figure's controls", () => {
  test("take a typed number as it stands, though it is off the steps and beyond the range", async () => {
    const released: Event[] = [];
    document.body.addEventListener("release", (event) => released.push(event), { once: true });
    type("tas", "187,25");
    await settled();
    expect(worksheet.value("tas")).toBe(187.25);
    expect(of("tas", "to").textContent).toBe("187.25");
    expect(released).toHaveLength(1);
  });

  test("say what can't be read, keep it in its field and change nothing", async () => {
    type("tas", "fast");
    await settled();
    expect(worksheet.value("tas")).toBe(95);
    const field = of<HTMLInputElement>("tas", "field");
    expect([field.value, field.getAttribute("aria-invalid")]).toEqual(["fast", "true"]);
    expect(of("tas", "trouble").textContent).toBe("“fast” is not a number; the figure stays at 95\u00a0kt.");
    type("tas", "100");
    await settled();
    expect(of("tas", "trouble").textContent).toBe("");
    expect(field.hasAttribute("aria-invalid")).toBe(false);
  });

  test("move by one step for an arrow key, from a typed number too", () => {
    type("tas", "97.5");
    press(of("tas", "range"), "ArrowRight");
    expect(worksheet.value("tas")).toBe(102.5);
  });

  test("move to whole steps under a hand", () => {
    const range = of<HTMLInputElement>("tas", "range");
    fire(range, "pointerdown");
    range.value = "118.7";
    fire(range, "input");
    expect(worksheet.value("tas")).toBe(120);
  });

  test("go back to the chapter's values at Reset, an unreadable entry too", async () => {
    worksheet.setMany({ tas: 120, bank: 30 });
    type("bank", "steep");
    click(part("reset"));
    await settled();
    expect([worksheet.value("tas"), worksheet.value("bank")]).toEqual([95, 15]);
    expect([of<HTMLInputElement>("bank", "field").value, of("bank", "trouble").textContent]).toEqual(["15", ""]);
  });
});

describe("a figure's tools", () => {
  test("Keep sets the present numbers beside those that follow, until they are let go", async () => {
    click(part("keep"));
    worksheet.set("tas", 120);
    await settled();
    expect(part("kept").hidden).toBe(false);
    expect(part("kept-words").textContent).toBe("95\u00a0kt, 15°");
    expect([...cell.querySelectorAll(".was")].map(({ textContent }) => textContent)).toEqual([
      "kept 3.08",
      "kept 0.49",
      "kept 14.6°",
    ]);
    expect(live()!.querySelector(".curve.ghost path")).not.toBeNull();
    click(part("let-go"));
    await settled();
    expect(part("kept").hidden).toBe(true);
    expect(live()!.querySelector(".curve.ghost path")).toBeNull();
  });

  test("Table shows rows that follow, the nearest marked, and goes again", async () => {
    click(part("show-table"));
    worksheet.set("bank", 29);
    await settled();
    expect(part("show-table").getAttribute("aria-expanded")).toBe("true");
    expect(part("table").querySelectorAll('tr[aria-current="true"]')).toHaveLength(1);
    expect(part("table").querySelector('tr[aria-current="true"] th')!.textContent).toContain("30");
    click(part("show-table"));
    expect(part("table").querySelector("table")).toBeNull();
  });

  test("letting go of a control says what came of it, once", async () => {
    worksheet.set("tas", 120);
    expect(part("said").textContent).toBe("");
    fire(of("tas", "range"), "change");
    await settled();
    expect(part("said").textContent).toContain("Rate of turn 2.44 degrees a second");
  });
});
