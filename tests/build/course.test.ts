import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { countsOf } from "../../src/build/chapters.ts";
import { readFolder } from "../../src/build/chapters-folder.ts";
import { draw, mark } from "../../src/cells/exercises/index.ts";

const course = readFolder(resolve(import.meta.dirname, "../../chapters"));

test("readFolder finds no problem in the built-in course", () => {
  expect(course.problems).toEqual([]);
});

describe.each(course.chapters.map((chapter) => [chapter.meta.name, chapter] as const))(
  "the chapter %s",
  (name, chapter) => {
    const counts = countsOf(course).chapters.find((one) => one.name === name)!;
    const briefs = chapter.cells.filter(({ kind }) => kind === "brief").length;
    const sections = chapter.cells.filter(({ kind }) => kind === "section").length;

    test("has between 1,500 and 2,500 words, a brief for every section, two predictions and two workings at least", () => {
      expect(counts.words).toBeGreaterThanOrEqual(1500);
      expect(counts.words).toBeLessThanOrEqual(2500);
      expect(briefs).toBe(sections);
      for (const kind of ["predict", "working"]) {
        expect(chapter.cells.filter((cell) => cell.kind === kind).length).toBeGreaterThanOrEqual(2);
      }
    });

    test("has two slips at least in every number exercise, and six exercises with fresh numbers", () => {
      for (const exercise of chapter.exercises) {
        if (exercise.kind === "number") expect(exercise.slips.length, exercise.id).toBeGreaterThanOrEqual(2);
      }
      expect(counts.fresh).toBeGreaterThanOrEqual(6);
    });

    test.each(chapter.exercises.map((exercise) => [exercise.id, exercise] as const))(
      "%s draws 500 times: its answer is right, each slip comes back as itself, none collide",
      (_, exercise) => {
        for (let i = 0; i < 500; i++) {
          const question = draw(exercise, `seed ${i}`);
          expect(question.ask).not.toMatch(/[{}]|undefined|NaN/);
          if (question.kind === "number") {
            expect(mark(question, String(question.answer)).kind).toBe("right");
            for (const { value, index } of question.slips) {
              const verdict = mark(question, String(value));
              expect([verdict.kind, verdict.slip]).toEqual(["slip", index]);
            }
          } else {
            expect(mark(question, question.answer).kind).toBe("right");
            for (const { value } of question.slips) expect(mark(question, value).kind).toBe("slip");
          }
        }
      },
      60_000,
    );
  },
);
