import "./dom.ts"; // before Lit
import { beforeEach, describe, expect, test } from "vitest";
import { draw, type Exercise } from "../../src/cells/exercises/index.ts";
import { type Answered, ExerciseCellElement } from "../../src/widgets/exercise-cell/element.ts";
import { bodyOf, click, heard, press } from "./dom.ts";
import { builtOf, entry, first, radius, shellOf, sink } from "./exercise-of.ts";

customElements.define("exercise-cell", ExerciseCellElement);

let element: ExerciseCellElement;
const part = <E extends HTMLElement = HTMLElement>(name: string): E =>
  element.querySelector<E>(`[data-part="${name}"]`)!;
const submit = (): boolean => part("form").dispatchEvent(new Event("submit", { bubbles: true, cancelable: true }));
const act = (name: string): void => click(element.querySelector(`[data-do="${name}"]`));

async function place(exercise: Exercise): Promise<void> {
  element = bodyOf(shellOf(exercise)).querySelector("exercise-cell") as ExerciseCellElement;
  element.nextSeed = () => "second";
  element.built = builtOf(exercise);
  await element.updateComplete;
}

describe("ExerciseCellElement of a number", () => {
  const field = (): HTMLInputElement => part<HTMLInputElement>("reply");
  const answer = (seed = "first"): number => draw(radius, seed).answer;
  const reply = (text: string | number): void => {
    field().value = String(text);
    field().dispatchEvent(new Event("input", { bubbles: true }));
    submit();
  };
  const openHint = (at: number): void => {
    const fold = element.querySelectorAll("details")[at]!;
    fold.open = true;
    fold.dispatchEvent(new Event("toggle"));
  };

  beforeEach(() => place(radius));

  test("ExerciseCellElement leaves what was typed before it came", async () => {
    element = bodyOf(shellOf(radius)).querySelector("exercise-cell") as ExerciseCellElement;
    field().value = "0.5";
    element.built = builtOf(radius);
    await element.updateComplete;
    expect(field().value).toBe("0.5");
  });

  test("ExerciseCellElement marks a reply and tells of it once", () => {
    const answered = heard<Answered>("answered");
    reply(answer().toFixed(2));
    submit();
    expect(answered).toHaveLength(1);
    expect(answered[0]).toMatchObject({
      ...{ exercise: "radius-1", seed: "first", given: first(radius).given, reply: answer().toFixed(2) },
      ...{ verdict: { kind: "right" }, help: 0, nth: 1, said: null },
    });
    expect(part("verdict").textContent).toContain("Right");
    expect(part("head").textContent).toBe("first reply, no hints");
    expect(part("tools").hidden).toBe(false);
  });

  test("ExerciseCellElement marks again once the reply is another", () => {
    const answered = heard<Answered>("answered");
    reply(5 * answer());
    expect(part("mark").textContent).toBe("Mark again");
    expect(part("mark").getAttribute("aria-disabled")).toBe("true");
    reply(answer());
    expect(answered.map(({ nth, verdict }) => [nth, verdict.kind])).toEqual([
      [1, "wrong"],
      [2, "right"],
    ]);
    expect(part("head").textContent).toBe("second reply, no hints");
  });

  test("ExerciseCellElement keeps what it can't read, counts no reply and gives no working", () => {
    reply("about a mile");
    expect(field().value).toBe("about a mile");
    expect(part("verdict").textContent).toContain("Unreadable");
    expect(part("working").innerHTML).toBe("");
    expect(part("head").textContent).toBe("");
    expect(part("tools").hidden).toBe(true);
    expect(part("mark").textContent).toBe("Mark");
  });

  test("ExerciseCellElement draws fresh numbers from the next seed, and starts anew", () => {
    reply(2 * answer());
    act("fresh");
    const second = draw(radius, "second");
    expect(part("ask").textContent).toBe(second.ask);
    expect(part("hint").textContent).toContain(second.printed["bank"]);
    expect(field().value).toBe("");
    for (const name of ["verdict", "working", "own", "head"]) expect(part(name).innerHTML).toBe("");
    const answered = heard<Answered>("answered");
    reply(answer("second"));
    expect(answered[0]).toMatchObject({ seed: "second", verdict: { kind: "right" }, nth: 1 });
  });

  test("ExerciseCellElement asks the same numbers again and goes on counting", () => {
    reply(5 * answer());
    act("again");
    expect(part("ask").textContent).toBe(first(radius).ask);
    expect(field().value).toBe("");
    expect(part("verdict").innerHTML).toBe("");
    const answered = heard<Answered>("answered");
    reply(answer());
    expect(answered[0]).toMatchObject({ seed: "first", nth: 2 });
  });

  test("ExerciseCellElement counts hints as help, each once", () => {
    const answered = heard<Answered>("answered");
    openHint(0);
    openHint(0);
    openHint(1);
    expect(part("head").textContent).toBe("two hints used");
    reply(answer());
    expect(answered[0]!.help).toBe(2);
    expect(part("head").textContent).toBe("first reply, two hints used");
  });

  test("ExerciseCellElement counts a hint opened after the verdict towards the next reply", () => {
    reply(5 * answer());
    openHint(0);
    expect(part("head").textContent).toBe("first reply, no hints");
    reply(answer());
    expect(part("head").textContent).toBe("second reply, one hint used");
  });

  test("ExerciseCellElement draws asked against given after a slip, and nothing after a right reply", () => {
    reply(2 * answer());
    expect(part("drawing").hidden).toBe(false);
    expect(part("drawing").textContent).toContain(`asked ${first(radius).printed["answer"]}`);
    reply(first(radius).printed["answer"]!);
    expect(part("drawing").hidden).toBe(true);
  });

  test("ExerciseCellElement offers words after a slip and after nothing else", () => {
    reply(5 * answer());
    expect(part("own").innerHTML).toBe("");
    reply(2 * answer());
    const said = heard<Answered>("said");
    click(element.querySelector('[data-reason="typing"]'));
    expect(said[0]).toMatchObject({
      exercise: "radius-1",
      nth: 2,
      verdict: { kind: "slip" },
      said: { reason: "typing", words: "" },
    });
    const form = part("own-form");
    form.querySelector("input")!.value = " read the wrong line ";
    form.dispatchEvent(new Event("submit", { bubbles: true, cancelable: true }));
    expect(said[1]!.said).toEqual({ reason: "other", words: "read the wrong line" });
    expect(form.querySelector('[aria-pressed="true"]')).toBeNull();
  });

  test("ExerciseCellElement fills the question with the numbers of its settings", async () => {
    const cruise = { ...radius, draws: radius.draws.slice(1), values: { tas: 95 } };
    await place(cruise);
    element.settings = { values: { tas: 140 } };
    await element.updateComplete;
    expect(part("ask").textContent).toContain("140\u00a0kt");
  });
});

describe("ExerciseCellElement of a choice", () => {
  const rows = (): HTMLElement[] => [...element.querySelectorAll<HTMLElement>("fieldset > [data-key]")];
  const tick = (key: string): void => {
    for (const row of rows()) row.querySelector("input")!.checked = row.dataset["key"] === key;
    submit();
  };

  beforeEach(() => place(sink));

  test("ExerciseCellElement marks the row that is ticked and says which is right", () => {
    const answered = heard<Answered>("answered");
    tick("stays");
    expect(answered[0]).toMatchObject({ reply: ["stays"], verdict: { kind: "slip" } });
    expect(
      rows()
        .map((row) => [row.dataset["key"], row.querySelector(".row-note")!.textContent])
        .toSorted(),
    ).toEqual([
      ["climbs", ""],
      ["falls", "right"],
      ["stays", "not right"],
    ]);
    const letter = rows()
      .find((row) => row.dataset["key"] === "stays")!
      .querySelector("kbd")!.textContent;
    expect(part("verdict").textContent).toContain(`${letter} Only the upright part`);
  });

  test("ExerciseCellElement asks for a choice where none is made", () => {
    submit();
    expect(part("verdict").textContent).toContain("Choose one.");
  });

  test("ExerciseCellElement shows fresh rows in their drawn order, lettered anew and unticked", () => {
    tick("falls");
    act("fresh");
    const second = draw(sink, "second");
    expect(rows().map((row) => row.dataset["key"])).toEqual(second.options);
    expect(rows().map((row) => row.querySelector("kbd")!.textContent)).toEqual(["A", "B", "C"]);
    expect(rows().some((row) => row.querySelector("input")!.checked)).toBe(false);
    expect(rows().every((row) => row.querySelector(".row-note")!.textContent === "")).toBe(true);
    expect(element.textContent).toContain(`It climbs at ${second.printed["bank"]}`);
  });
});

describe("ExerciseCellElement of an order", () => {
  const keys = (): (string | undefined)[] =>
    [...element.querySelectorAll<HTMLElement>(".ordering > li")].map((row) => row.dataset["key"]);
  const row = (key: string): HTMLElement => element.querySelector<HTMLElement>(`.ordering > [data-key="${key}"]`)!;
  const toTop = (key: string): void => {
    while (keys()[0] !== key) click(row(key).querySelector('[data-move="-1"]'));
  };

  beforeEach(() => place(entry));

  test("ExerciseCellElement moves a row by its buttons, numbers the rows and says where it is", () => {
    const [one, two] = keys();
    click(row(one!).querySelector('[data-move="1"]'));
    expect(keys().slice(0, 2)).toEqual([two, one]);
    expect(row(one!).querySelector(".no")!.textContent).toBe("2");
    expect(part("status").textContent).toMatch(/: now 2 of 4$/);
  });

  test("ExerciseCellElement moves a row by Alt and an arrow, and stops at the ends", () => {
    const [one, two] = keys();
    const alt = (key: string): void => {
      const event = Object.assign(new Event("keydown", { bubbles: true, cancelable: true }), { key, altKey: true });
      row(one!).dispatchEvent(event);
    };
    alt("ArrowUp");
    expect(keys()[0]).toBe(one);
    alt("ArrowDown");
    expect(keys().slice(0, 2)).toEqual([two, one]);
    press(row(one!), "ArrowDown");
    expect(keys().slice(0, 2)).toEqual([two, one]);
  });

  test("ExerciseCellElement marks the order that stands there", () => {
    const answered = heard<Answered>("answered");
    for (const key of entry.answer.toReversed()) toTop(key);
    submit();
    expect(answered[0]).toMatchObject({ reply: entry.answer, verdict: { kind: "right" } });
  });

  test("ExerciseCellElement puts the rows back as they were drawn", () => {
    for (const key of entry.answer.toReversed()) toTop(key);
    submit();
    act("again");
    expect(keys()).toEqual(first(entry).options);
  });
});
