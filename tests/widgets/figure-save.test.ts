import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { FigureTable } from "../../src/widgets/figure.ts";
import { csvOf, type Origin, wrapped } from "../../src/widgets/figure-save.ts";

const table: FigureTable = {
  caption: "Error of a rule",
  columns: [
    { name: "True airspeed", unit: "kt", digits: 0 },
    { name: "Error, signed", unit: "deg", digits: 1, signed: true },
  ],
  rows: [
    [140, -0.04],
    [240, -2.44],
    [250, null],
  ],
  here: 0,
};
const origin: Origin = {
  title: "Figure 2: Rules",
  values: "True airspeed 95 kt",
  aircraft: "Dunlin",
  model: "Model: level",
  date: "2031-05-04",
};

/** Reads CSV by the rules of RFC 4180, apart from the code under test. */
function read(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    rows.at(-1)!.push(quoted?.replaceAll('""', '"') ?? plain ?? "");
    if (end === "\r\n") rows.push([]);
    if (end === "") break;
  }
  return rows;
}

describe("csvOf", () => {
  test("csvOf gives units in the header and numbers a spreadsheet reads", () => {
    const rows = read(csvOf(table, origin).slice(1));
    const head = rows.findIndex(([first]) => first === "True airspeed, kt");
    expect(rows[head]).toEqual(["True airspeed, kt", "Error, signed, °"]);
    expect(rows.slice(head + 1, head + 4)).toEqual([
      ["140", "0"],
      ["240", "-2.4"],
      ["250", ""],
    ]);
  });

  test("csvOf says aircraft, model, day and that it is ground study only", () => {
    const text = csvOf(table, origin);
    for (const words of ["Dunlin", "Model: level", "2031-05-04", "Ground study only"]) expect(text).toContain(words);
  });

  test("csvOf keeps any words whole, and none of them begins a formula", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom("", "=", "+", "-", "@", "\t", "\r"), (words, mark) => {
        const aircraft = mark + words;
        const cell = read(csvOf(table, { ...origin, aircraft }).slice(1)).find(([first]) => first === "Aircraft")![1]!;
        expect([aircraft, `'${aircraft}`]).toContain(cell);
        expect(cell).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });
});

test("wrapped keeps every word in order, and no line longer than its limit but for a single long word", () => {
  fc.assert(
    fc.property(
      fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }),
      fc.integer({ min: 5, max: 60 }),
      (words, most) => {
        const lines = wrapped(words.join(" "), most);
        expect(lines.join(" ")).toBe(words.join(" "));
        expect(lines.every((line) => line.length <= most || !line.includes(" "))).toBe(true);
      },
    ),
  );
});
