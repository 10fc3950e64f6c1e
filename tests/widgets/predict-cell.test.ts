import "./dom.ts"; // before Lit
import { beforeEach, describe, expect, test } from "vitest";
import type { PredictCell } from "../../src/cells/chapter.ts";
import { liveShell } from "../../src/widgets/live-values.ts";
import { answerWords, predictShell } from "../../src/widgets/predict-cell.ts";
import { type AskedAgain, PredictCellElement, type Predicted } from "../../src/widgets/predict-element.ts";
import { tas, worksheetOf } from "./chapter-of.ts";
import { bodyOf, click, heard } from "./dom.ts";

/** The change a reveal makes. */
function changing(name: string, is: string): Pick<PredictCell, "then"> {
  // biome-ignore lint/suspicious/noThenProperty: an author's word, in a cell that is never awaited
  return { then: [{ name, is }] };
}

const cell: PredictCell = {
  kind: "predict",
  id: "predict-1",
  ask: "",
  askTokens: [],
  options: ["A", "B", "C"].map((key) => ({ key, text: "", tokens: [], right: key === "C" })),
  ...changing("tas", "2 * tas"),
  say: "",
  sayTokens: [],
};
const handle = liveShell("tas", { given: tas }, "95 kt");
const html = {
  ask: `Keep ${handle} and double it?`,
  options: ["It stays", "It doubles", `It passes ${handle}`],
  say: "Twice.",
};
const shell = predictShell(cell, html);

customElements.define("predict-cell", PredictCellElement);

describe("answerWords", () => {
  test("answerWords says the right letter in words, and not the one chosen", () => {
    expect(answerWords(["C"])).toBe("C is right.");
    expect(answerWords(["C"], "C")).toBe("C is right.");
    expect(answerWords(["C"], "A")).toBe("C is right, not A.");
    expect(answerWords(["A", "C"], "B")).toBe("A and C are right, not B.");
  });
});

describe("predictShell", () => {
  const rows = (): Element[] => [...bodyOf(shell).querySelectorAll("button[data-key]")];

  test("predictShell makes rows that nothing but letter and words tells apart", () => {
    const shape = (row: Element): string =>
      row.outerHTML
        .replaceAll(row.querySelector("span")!.innerHTML, "")
        .replaceAll(row.querySelector("kbd")!.textContent, "");
    expect(new Set(rows().map(shape)).size).toBe(1);
  });

  test("predictShell keeps the answer out of sight until a script shows it, and in a fold where none runs", () => {
    const body = bodyOf(shell);
    expect(body.querySelector<HTMLElement>('[data-part="reveal"]')!.hidden).toBe(true);
    expect(body.querySelector('[data-part="answer"]')!.textContent).toBe("");
    expect(body.querySelector("noscript details")!.textContent).toContain("C is right. Twice.");
  });

  test("predictShell leaves no slider inside a button", () => {
    expect(rows().some((row) => row.querySelector('[role="slider"]'))).toBe(false);
    expect(rows()[2]!.querySelector(".live")!.textContent).toBe("95 kt");
  });
});

describe("PredictCellElement", () => {
  let element: PredictCellElement;
  const row = (key: string): HTMLElement => element.querySelector<HTMLElement>(`button[data-key="${key}"]`)!;
  const part = (name: string): HTMLElement => element.querySelector<HTMLElement>(`[data-part="${name}"]`)!;

  beforeEach(async () => {
    element = bodyOf(shell).querySelector("predict-cell") as PredictCellElement;
    element.worksheet = worksheetOf([]);
    await element.updateComplete;
  });

  test("PredictCellElement fires predicted with the values of the change, and shows what to see", () => {
    const predicted = heard<Predicted>("predicted");
    click(row("A"));
    expect(predicted).toEqual([{ id: "predict-1", chosen: "A", right: false, values: { tas: 190 } }]);
    expect(row("A").getAttribute("aria-pressed")).toBe("true");
    expect(row("B").getAttribute("aria-pressed")).toBe("false");
    expect(part("reveal").hidden).toBe(false);
    expect(part("answer").textContent).toBe("C is right, not A.");
  });

  test("PredictCellElement reads the answer aloud once", async () => {
    click(row("C"));
    await new Promise((done) => setTimeout(done, 5));
    expect(part("status").textContent).toBe("C is right. Twice.");
  });

  test("PredictCellElement holds to the first choice", () => {
    const predicted = heard<Predicted>("predicted");
    click(row("A"));
    click(row("C"));
    expect(predicted).toHaveLength(1);
    expect(row("A").getAttribute("aria-pressed")).toBe("true");
  });

  test("PredictCellElement keeps the question as it was asked", () => {
    const live = element.querySelector(".asked .given")!;
    click(row("A"));
    live.textContent = "190 kt";
    expect(element.querySelector(".asked")!.textContent).toBe("Keep 95 kt and double it?");
    click(part("again"));
    expect(element.querySelector(".asked .given")).toBe(live);
  });

  test("PredictCellElement puts everything back at 'Ask again' and says what the values were", () => {
    const again = heard<AskedAgain>("ask-again");
    const before = element.querySelector(".choices")!.outerHTML;
    click(row("B"));
    element.worksheet!.set("tas", 190);
    click(part("again"));
    expect(again).toEqual([{ id: "predict-1", values: { tas: 95 } }]);
    expect(element.querySelector(".choices")!.outerHTML).toBe(before);
    expect(part("reveal").hidden).toBe(true);
    expect(part("status").textContent).toBe("");
  });

  test.each(["turnRate(tas, 10 * bank)", "asin(bank)"])(
    "PredictCellElement makes no change to %s, which has no value",
    async (is) => {
      element = bodyOf(predictShell({ ...cell, ...changing("bank", is) }, html)).querySelector("predict-cell")!;
      element.worksheet = worksheetOf([]);
      await element.updateComplete;
      const predicted = heard<Predicted>("predicted");
      click(row("A"));
      expect(predicted[0]!.values).toEqual({});
    },
  );
});
