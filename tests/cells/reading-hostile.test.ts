import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Chapter } from "../../src/cells/chapter.ts";
import { levelTurn, read } from "./fixtures/chapter.ts";
import { exercises, fences, fragments, front, paragraphs, quantities } from "./fixtures/hostile.ts";

const SECOND = 1000;
/** For the runner on a busy machine; what is asserted is `SECOND`. */
const PATIENCE = 300_000;

/** Reads a text; the processor's time, not the clock's, so that a busy machine proves nothing. */
function timed(text: string): Chapter {
  const before = process.cpuUsage();
  const chapter = read(text);
  expect(process.cpuUsage(before).user / 1000).toBeLessThan(SECOND);
  return chapter;
}

/** That every problem points into the text and has words for author and mend. */
function expectPlaced({ problems }: Chapter, text: string): void {
  const lengths = text
    .replace(/^\uFEFF/, "")
    .replace(/\r\n?/g, "\n")
    .split("\n")
    .map((line) => line.length);
  const misplaced = problems.filter(({ line, column, message, mend }) => {
    const length = lengths[line - 1];
    const placed = length !== undefined && column >= 1 && column <= length + 1;
    return !placed || !/[^.][.?!]$/.test(message) || mend.trim() === "";
  });
  expect(misplaced).toEqual([]);
}

describe("readChapter ends within a second and throws nothing", () => {
  /** What holds a run of a fragment; the slow ones take every third fragment, each another third. */
  const shapes: [name: string, shape: (fragment: string) => string, third?: number][] = [
    ["alone", (fragment: string) => fragment.repeat(300_000 / fragment.length)],
    ["in paragraphs", (fragment: string) => paragraphs(fragment, 5_800)],
    ["in short paragraphs", (fragment: string) => paragraphs(fragment, 900)],
    ["as front matter", (fragment: string) => `---\n${fragment.repeat(19_900 / fragment.length)}\n---\n`],
    ["in fences", (fragment: string) => fences("predict", fragment, 19_000), 0],
    ["in notes", (fragment: string) => fences("notes", fragment, 5_000), 1],
    [
      "in captions",
      (fragment: string) =>
        fences(
          "figure turn-rate-radius",
          `see: |\n  ${fragment.repeat(3_000 / fragment.length).replaceAll("\n", "\n  ")}`,
          0,
        ),
      2,
    ],
  ];

  test.each(shapes)(
    "for runs of what makes lexers slow, %s",
    (_, shape, third) => {
      for (const fragment of fragments.filter((_, i) => third === undefined || i % 3 === third)) {
        const text = shape(fragment);
        expectPlaced(timed(text), text);
      }
    },
    PATIENCE,
  );

  test("for whatever is no text", () => {
    for (const value of [undefined, null, 7, {}, [], Symbol("x")]) {
      const { problems, cells } = timed(value as unknown as string);
      expect(problems).toHaveLength(1);
      expect(cells).toEqual([]);
    }
  });

  test("for a million backticks, and names what is too long", () => {
    expect(timed("`".repeat(1_000_000)).problems.map(({ message }) => message)).toEqual([
      "The file is longer than 300,000 characters.",
    ]);
  });

  test("for quantities and workings that take long to compute", { timeout: PATIENCE }, () => {
    const slow = "turnLeadDistanceRolling(tas, bank, 90, 5)";
    for (const is of [slow, Array(8).fill(slow).join(" + "), "turnRadius(tas, bank)"]) {
      timed(quantities(100, is));
      timed(
        fences(
          "working",
          `of: a\nsteps:\n${`  - what: b\n    is: ${is}\n    unit: NM\n    digits: 1\n`.repeat(15)}`,
          0,
        ),
      );
    }
  });

  test("for exercises that take long to try", { timeout: PATIENCE }, () => {
    const slow = "turnLeadDistanceRolling(tas, bank, 90, 5)";
    for (const answer of [slow, Array(8).fill(slow).join(" + "), "turnRadius(tas, bank)"]) {
      timed(exercises(190, answer, ""));
      timed(exercises(190, answer, `slips:\n  - is: ${answer}\n    say: The same again.\n`));
    }
  });

  test("for expressions full of unknown names", { timeout: PATIENCE }, () => {
    const names = Array.from({ length: 60 }, (_, i) => `abc${i}`).join("+");
    timed(quantities(100, names));
    timed(
      fences(
        "working",
        `of: a\nsteps:\n${`  - what: b\n    is: ${names}\n    unit: NM\n    digits: 1\n`.repeat(15)}`,
        0,
      ),
    );
  });

  test("for formulas that take long to typeset", () => {
    for (const tex of [
      "\\frac{a}{b}",
      "\\begin{matrix}a&b\\end{matrix}",
      "'",
      "°",
      "\\left(",
      "{",
      "\\xrightarrow{a}",
    ]) {
      timed(paragraphs(`$${tex.repeat(300 / tex.length)}$ `, 5_800));
    }
  });

  test("for text of any characters", () => {
    const units = fc.string({ unit: "binary", maxLength: 400 });
    fc.assert(
      fc.property(units, (text) => expectPlaced(timed(text), text)),
      { numRuns: 100 },
    );
    fc.assert(
      fc.property(units, (text) => void timed(front + text)),
      { numRuns: 100 },
    );
  });

  test(
    "for a chapter with stretches deleted, doubled, swapped and filled with nasty fragments",
    () => {
      const place = fc.integer({ min: 0, max: levelTurn.length });
      const length = fc.integer({ min: 0, max: 200 });
      const change = fc.oneof(
        fc.record({ kind: fc.constant("delete" as const), place, length }),
        fc.record({ kind: fc.constant("double" as const), place, length }),
        fc.record({ kind: fc.constant("swap" as const), place, length }),
        fc.record({
          kind: fc.constant("insert" as const),
          place,
          fragment: fc.oneof(fc.constantFrom(...fragments), fc.string({ unit: "binary", maxLength: 5 })),
        }),
      );
      fc.assert(
        fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
          const text = changes.reduce(changed, levelTurn);
          expectPlaced(timed(text), text);
        }),
        { numRuns: 150 },
      );
    },
    PATIENCE,
  );
});

type Change =
  | { readonly kind: "delete" | "double" | "swap"; readonly place: number; readonly length: number }
  | { readonly kind: "insert"; readonly place: number; readonly fragment: string };

function changed(text: string, change: Change): string {
  const before = text.slice(0, change.place);
  if (change.kind === "insert") return before + change.fragment + text.slice(change.place);
  const stretch = text.slice(change.place, change.place + change.length);
  const after = text.slice(change.place + change.length);
  if (change.kind === "delete") return before + after;
  if (change.kind === "double") return before + stretch + stretch + after;
  return before + after.slice(0, change.length) + stretch + after.slice(change.length);
}
