import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { OutOfRange } from "../../src/calc/limits.ts";
import type { Given, Work } from "../../src/cells/chapter.ts";
import { ExpressionError } from "../../src/cells/expressions/index.ts";
import type { Facts } from "../../src/cells/known.ts";
import { addressOf, fromAddress, Worksheet, type WorksheetOptions } from "../../src/cells/worksheet.ts";
import { fewFormulas } from "./few-formulas.ts";

const given = (name: string, unit: string, value: number, from: number, to: number): Given => ({
  ...{ name, quantity: name, label: name, unit, value, from, to },
  ...{ step: 5, digits: 0, circle: false },
});
const work = (name: string, is: string): Work => ({ name, is, unit: "plain", digits: 2, label: name, circle: false });

const tas = given("tas", "kt", 90, 60, 180);
const bank = given("bank", "deg", 20, 5, 45);
const facts = (each: Facts["facts"]): Facts => ({ title: "t", owner: "o", facts: each });
const aircraft = facts({ cruise: { value: 100, unit: "kt" }, "climb.speed": { value: 75, unit: "kt" } });
const place = facts({ turns: { value: "left", unit: "word" } });

const sheet = (works: Work[], options: Partial<WorksheetOptions> = {}) =>
  new Worksheet({ given: [tas, bank], work: works }, { aircraft, place, formulas: fewFormulas, ...options });

/** A schedule that waits to be told, as a page waits for its next frame. */
function frames() {
  const waiting: (() => void)[] = [];
  return {
    waiting,
    schedule: (run: () => void) => void waiting.push(run),
    next: () => {
      for (const run of waiting.splice(0)) run();
    },
  };
}

describe("Worksheet.value", () => {
  test("gives what is given, what follows in order, and the facts of aircraft and place", () => {
    const it = sheet([
      work("lean", "leaning(tas, bank)"),
      work("twice", "2 * lean"),
      work("gap", "aircraft.climb.speed - tas"),
    ]);
    expect(it.value("tas")).toBe(90);
    expect(it.value("lean")).toBe(1.8);
    expect(it.value("twice")).toBe(3.6);
    expect(it.value("gap")).toBe(-15);
    expect(it.value("aircraft.cruise")).toBe(100);
    expect(it.value("place.turns")).toBe("left");
    expect(it.value("constructor")).toBeUndefined();
  });

  test("follows at once where a given is set, though listeners wait for their frame", () => {
    const frame = frames();
    const it = sheet([work("lean", "leaning(tas, bank)")], { schedule: frame.schedule });
    it.set("tas", 100);
    expect(it.value("lean")).toBe(2);
  });

  test("is null where a formula has no solution, and so is what depends on it", () => {
    const it = sheet([work("half", "sides(tas).half"), work("more", "half + 1")]);
    it.set("tas", 300);
    expect(it.value("half")).toBeNull();
    expect(it.value("more")).toBeNull();
    expect(it.trouble("more")).toBeUndefined();
  });
});

describe("Worksheet.trouble", () => {
  const works = [
    work("way", "reach(tas)"),
    work("further", "way * 2"),
    work("lean", "bank / 2"),
    work("safe", "if(tas > 0, way, 0)"),
  ];

  test("is the limit that work ran into, for it and for what depends on it, while the rest lives", () => {
    const it = sheet(works);
    it.set("tas", 0);
    expect(it.trouble("way")).toBeInstanceOf(OutOfRange);
    expect(it.trouble("further")).toBe(it.trouble("way"));
    expect(it.value("further")).toBeUndefined();
    expect(it.value("lean")).toBe(10);
    expect(it.value("safe")).toBe(0);
    expect(it.snapshot()).toEqual({ tas: 0, bank: 20, lean: 10, safe: 0 });
  });

  test("ends where the given comes back within limits", () => {
    const it = sheet(works);
    it.set("tas", 0);
    it.set("tas", 100);
    expect(it.trouble("further")).toBeUndefined();
    expect(it.value("further")).toBe(2);
  });
});

describe("Worksheet.subscribe", () => {
  test("tells once a frame the names that really changed", () => {
    const frame = frames();
    const it = sheet(
      [work("lean", "leaning(tas, bank)"), work("cruise", "aircraft.cruise"), work("steep", "bank > 30")],
      {
        schedule: frame.schedule,
      },
    );
    const heard = vi.fn();
    it.subscribe(heard);
    it.set("bank", 40);
    it.set("bank", 25);
    it.set("tas", 90);
    expect(frame.waiting).toHaveLength(1);
    frame.next();
    expect(heard.mock.calls).toEqual([[new Set(["bank", "lean"])]]);
    it.setMany({ tas: 120, bank: 25 });
    frame.next();
    expect(heard).toHaveBeenLastCalledWith(new Set(["tas", "lean"]));
  });

  test("says nothing where nothing has changed", () => {
    const it = sheet([work("lean", "leaning(tas, bank)")]);
    const heard = vi.fn();
    it.subscribe(heard);
    it.set("tas", 90);
    it.reset();
    expect(heard).not.toHaveBeenCalled();
  });

  test("tells at once where no schedule is given, and no more after the end", () => {
    const it = sheet([]);
    const heard = vi.fn();
    const end = it.subscribe(heard);
    it.set("tas", 91);
    end();
    it.set("tas", 92);
    expect(heard.mock.calls).toEqual([[new Set(["tas"])]]);
  });

  test("tells of trouble that comes, changes and goes", () => {
    const it = sheet([work("way", "reach(tas)")]);
    const heard = vi.fn();
    it.subscribe(heard);
    for (const speed of [0, -5, 100]) it.set("tas", speed);
    expect(heard.mock.calls).toEqual([[new Set(["tas", "way"])], [new Set(["tas", "way"])], [new Set(["tas", "way"])]]);
  });

  test("lets a listener set a given in its turn", () => {
    const it = sheet([work("lean", "leaning(tas, bank)")]);
    it.subscribe((names) => {
      if (names.has("tas")) it.set("bank", 10);
    });
    const heard = vi.fn();
    it.subscribe(heard);
    it.set("tas", 100);
    expect(it.value("lean")).toBe(1);
    expect(heard.mock.calls.flatMap(([names]) => [...names])).toContain("bank");
  });
});

describe("Worksheet.set", () => {
  test("refuses an unknown name, work, and what isn't a finite number, and then changes nothing", () => {
    const it = sheet([work("lean", "leaning(tas, bank)")]);
    for (const name of ["lean", "nothing", "__proto__", "aircraft.cruise"])
      expect(() => it.set(name, 1)).toThrow(RangeError);
    for (const value of [Number.NaN, Infinity, -Infinity]) expect(() => it.set("tas", value)).toThrow(RangeError);
    expect(() => it.setMany({ bank: 30, nothing: 1 })).toThrow(RangeError);
    expect(it.changed()).toEqual([]);
  });

  test("keeps what was typed to the last digit, and the range widens to hold it and comes back", () => {
    const it = sheet([]);
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        it.set("tas", value);
        expect(it.value("tas")).toBe(value);
        expect(it.range("tas")).toEqual({ from: Math.min(60, value), to: Math.max(180, value) });
      }),
    );
    it.reset("tas");
    expect(it.range("tas")).toEqual({ from: 60, to: 180 });
  });
});

test("Worksheet.changed lists what differs from the chapter, and reset brings one or all of it back", () => {
  const it = sheet([]);
  it.setMany({ tas: 100, bank: 30 });
  expect(it.changed()).toEqual(["tas", "bank"]);
  it.reset("tas");
  expect(it.changed()).toEqual(["bank"]);
  it.reset();
  expect(it.changed()).toEqual([]);
  expect(() => it.reset("nothing")).toThrow(RangeError);
});

test("new Worksheet refuses work that names what doesn't stand before it", () => {
  expect(() => sheet([work("a", "if(tas > 0, 1, b)"), work("b", "2")])).toThrow(ExpressionError);
  expect(() => sheet([work("a", "2 *")])).toThrow(ExpressionError);
});

describe("fromAddress", () => {
  const givens = [tas, bank];

  test("undoes addressOf for every value within the quantity's own range", () => {
    const speed = fc.double({ min: 40, max: 250, noNaN: true });
    const angle = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(speed, angle, (a, b) => {
        const it = sheet([]);
        it.setMany({ tas: a, bank: b });
        const { values, notices } = fromAddress(givens, new URLSearchParams(addressOf(it)));
        expect(notices).toEqual([]);
        expect({ tas: 90, bank: 20, ...values }).toEqual({ tas: a, bank: b === 0 ? 0 : b });
      }),
    );
  });

  test("takes a value beyond the chapter's range that the quantity allows, and refuses one beyond both", () => {
    expect(fromAddress(givens, [["tas", "240"]])).toEqual({ values: { tas: 240 }, notices: [] });
    const { values, notices } = fromAddress(givens, [
      ["tas", "251"],
      ["bank", "30"],
    ]);
    expect(values).toEqual({ bank: 30 });
    expect(notices).toEqual(["tas: the address asks for 251, outside 40\u00a0kt to 250\u00a0kt; 90\u00a0kt is used."]);
  });

  test.each([
    "",
    " 90",
    "90 ",
    "NaN",
    "Infinity",
    "0x50",
    "1_0",
    "9,5",
    "--9",
    "1e999",
    "9".repeat(31),
    "<b>90</b>",
    "９０",
  ])("falls back where the address says %j, and repeats nothing of it", (text) => {
    const { values, notices } = fromAddress(givens, [["tas", text]]);
    expect(values).toEqual({});
    expect(notices).toEqual(["tas: what the address asks for is no number; 90\u00a0kt is used."]);
  });

  test("leaves unknown names out with a single notice, and takes the first of two", () => {
    const pairs: [string, string][] = [
      ["__proto__", "1"],
      ["tas", "100"],
      ["constructor", "2"],
      ["tas", "110"],
    ];
    const { values, notices } = fromAddress(givens, pairs);
    expect(values).toEqual({ tas: 100 });
    expect(notices).toEqual(["The address names quantities that this page doesn’t have; they are left out."]);
  });

  test("gives only finite values within range and short notices, whatever the address", () => {
    const name = fc.oneof(fc.constantFrom("tas", "bank"), fc.string());
    const text = fc.oneof(fc.string(), fc.double().map(String), fc.integer().map(String));
    fc.assert(
      fc.property(fc.array(fc.tuple(name, text)), (pairs) => {
        const { values, notices } = fromAddress(givens, pairs);
        for (const each of notices) expect(each.length).toBeLessThan(120);
        for (const [key, value] of Object.entries(values)) {
          expect(["tas", "bank"]).toContain(key);
          expect(value).toBeGreaterThanOrEqual(key === "tas" ? 40 : 0);
          expect(value).toBeLessThanOrEqual(key === "tas" ? 250 : 60);
        }
      }),
    );
  });
});
