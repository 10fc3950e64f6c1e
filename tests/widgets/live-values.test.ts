import "./dom.ts"; // before Lit
import { beforeEach, describe, expect, test, vi } from "vitest";
import { OutOfRange } from "../../src/calc/limits.ts";
import { bindLiveValues } from "../../src/widgets/live-binding.ts";
import { liveShell, troubleText, troubleTitle } from "../../src/widgets/live-values.ts";
import { bank, double, radius, tas, worksheetOf } from "./chapter-of.ts";
import { bodyOf, press } from "./dom.ts";

const sentence = `<p>${liveShell("tas", { given: tas }, "95 kt")} and ${liveShell("bank", { given: bank }, "15°")}: ${liveShell(
  "double",
  { work: double },
  "190 kt",
)}, ${liveShell("radius", { work: radius, wide: "10.00 NM" }, "0.49 NM")}</p>`;

describe("liveShell", () => {
  const body = (): HTMLElement => bodyOf(sentence);

  test("liveShell makes a given a slider that says what it is", () => {
    const handle = body().querySelector('[data-given="tas"]')!;
    expect(handle.textContent).toBe("95 kt");
    expect(Object.fromEntries([...handle.attributes].map(({ name, value }) => [name, value]))).toMatchObject({
      role: "slider",
      tabindex: "0",
      "aria-label": "True airspeed",
      "aria-valuemin": "60",
      "aria-valuemax": "180",
      "aria-valuenow": "95",
      "aria-valuetext": "95 knots",
      style: "--at:29.2",
    });
  });

  test("liveShell reserves the widest text of a given's range", () => {
    expect(body().querySelector<HTMLElement>('[data-given="tas"]')!.dataset["wide"]).toBe("180\u00a0kt");
  });

  test("liveShell reserves the text it is told of for work", () => {
    expect(body().querySelector<HTMLElement>('[data-is="radius"]')!.dataset["wide"]).toBe("10.00 NM");
  });

  test("liveShell makes text safe", () => {
    expect(liveShell("double", { work: double }, '<b>"')).not.toContain("<b>");
  });
});

describe("troubleText", () => {
  const outside = (from: number, to: number, unit = "deg"): OutOfRange =>
    new OutOfRange({ quantity: "bank", unit, from, to }, 64);

  test("troubleText names the range that holds", () => {
    expect(troubleText(outside(5, 60))).toBe("outside 5–60°");
    expect(troubleText(outside(-40, 60))).toBe("outside −40 to 60°");
    expect(troubleText(outside(0.5, Number.POSITIVE_INFINITY, "kt"))).toBe("under 0.5\u00a0kt");
    expect(troubleText(outside(Number.NEGATIVE_INFINITY, 60))).toBe("over 60°");
  });

  test("troubleTitle says what lies outside", () => {
    expect(troubleTitle(outside(5, 60))).toBe("Bank: 64° is outside 5–60°");
  });
});

describe("bindLiveValues", () => {
  let body: HTMLElement;
  let worksheet: ReturnType<typeof worksheetOf>;
  const handle = (name: string): HTMLElement => body.querySelector<HTMLElement>(`[data-given="${name}"]`)!;
  const follower = (name: string): HTMLElement => body.querySelector<HTMLElement>(`[data-is="${name}"]`)!;
  const released = vi.fn();
  const pointer = (target: Element, type: string, clientX: number): void => {
    target.dispatchEvent(Object.assign(new Event(type, { bubbles: true }), { clientX, pointerId: 1, button: 0 }));
  };

  beforeEach(() => {
    body = bodyOf(`<main>${sentence}</main>`).querySelector("main")!;
    worksheet = worksheetOf();
    bindLiveValues(body, worksheet);
    released.mockClear();
    body.addEventListener("release", released);
    handle("tas").setPointerCapture = () => {};
  });

  test("bindLiveValues writes every value that a change reaches", () => {
    worksheet.set("tas", 120);
    expect(handle("tas").textContent).toBe("120\u00a0kt");
    expect(handle("tas").getAttribute("aria-valuetext")).toBe("120 knots");
    expect(handle("tas").style.getPropertyValue("--at")).toBe("50");
    expect(follower("double").textContent).toBe("240\u00a0kt");
  });

  test("bindLiveValues steps a given by its keys and fires release when the key is let go", () => {
    const event = press(handle("tas"), "ArrowRight");
    expect(worksheet.value("tas")).toBe(100);
    expect(event.defaultPrevented).toBe(true);
    expect(released).not.toHaveBeenCalled();
    handle("tas").dispatchEvent(new Event("keyup", { bubbles: true }));
    expect(released).toHaveBeenCalledTimes(1);
  });

  test("bindLiveValues changes a given dragged sideways and fires release once", () => {
    pointer(handle("tas"), "pointerdown", 50);
    pointer(handle("tas"), "pointermove", 58);
    pointer(handle("tas"), "pointermove", 62);
    expect(worksheet.value("tas")).toBe(110);
    pointer(handle("tas"), "pointerup", 62);
    expect(released).toHaveBeenCalledTimes(1);
  });

  test("bindLiveValues takes a press that doesn't move for no change", () => {
    pointer(handle("tas"), "pointerdown", 50);
    pointer(handle("tas"), "pointermove", 51);
    pointer(handle("tas"), "pointerup", 51);
    expect(worksheet.value("tas")).toBe(95);
    expect(released).not.toHaveBeenCalled();
  });

  const typed = (text: string, key = "Enter"): HTMLInputElement => {
    press(handle("tas"), "Enter");
    const field = body.querySelector("input")!;
    field.value = text;
    press(field, key);
    return field;
  };

  test("bindLiveValues opens a field at Enter, whose number may widen the range", () => {
    typed("210 kt");
    expect(worksheet.value("tas")).toBe(210);
    expect(handle("tas").getAttribute("aria-valuemax")).toBe("210");
    expect(body.querySelector("input")).toBeNull();
    expect(handle("tas").hidden).toBe(false);
    expect(released).toHaveBeenCalledTimes(1);
  });

  test("bindLiveValues drops the field at Escape", () => {
    typed("210", "Escape");
    expect(worksheet.value("tas")).toBe(95);
    expect(body.querySelector("input")).toBeNull();
    expect(released).not.toHaveBeenCalled();
  });

  test("bindLiveValues keeps a field open that holds no number", () => {
    expect(typed("fast").getAttribute("aria-invalid")).toBe("true");
    expect(worksheet.value("tas")).toBe(95);
  });

  test("bindLiveValues says in its place what a formula doesn't answer for, and takes it back", () => {
    worksheet.set("bank", 95);
    expect(follower("radius").className).toContain("trouble");
    expect(follower("radius").textContent).toMatch(/90°/);
    expect(follower("radius").title).toMatch(/95°/);
    expect(follower("double").textContent).toBe("190\u00a0kt");
    worksheet.set("bank", 15);
    expect(follower("radius").className).not.toContain("trouble");
    expect(follower("radius").hasAttribute("title")).toBe(false);
  });

  test("bindLiveValues returns what ends it", () => {
    // One binding stands from before; the second doubles each step until it ends.
    const end = bindLiveValues(body, worksheet);
    press(handle("tas"), "ArrowRight");
    expect(worksheet.value("tas")).toBe(105);
    end();
    press(handle("tas"), "ArrowRight");
    expect(worksheet.value("tas")).toBe(110);
  });
});
