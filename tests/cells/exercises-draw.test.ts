import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distance, tolerance } from "../../src/cells/exercises/closeness.ts";
import { DrawProblem, draw, pose } from "../../src/cells/exercises/draw.ts";
import type { NumberExercise } from "../../src/cells/exercises/exercise.ts";
import type { NumberQuestion } from "../../src/cells/exercises/question.ts";
import { known, read } from "./exercises-reading.ts";
import { written } from "./exercises-sample.ts";

const exercises = Object.fromEntries(Object.entries(written).map(([name, yaml]) => [name, read(yaml)]));
const numbers = Object.values(exercises).filter((exercise) => exercise.kind === "number");
const seeds = (count: number): string[] => Array.from({ length: count }, (_, at) => `seed ${at}`);
const numberOf = (name: keyof typeof written): NumberExercise => exercises[name] as NumberExercise;

describe.each(numbers.map((exercise) => [exercise.id, exercise] as const))(
  "draw, of %s over 500 seeds,",
  (_, exercise) => {
    const questions = seeds(500).map((seed) => draw(exercise, seed));

    test("gives finite answers", () => {
      expect(questions.filter(({ answer }) => !Number.isFinite(answer))).toEqual([]);
    });

    test("stays on the grid or the list of every draw", () => {
      for (const each of exercise.draws) {
        const values = questions.map(({ given }) => given[each.name] as number);
        if ("list" in each) expect(values.every((value) => each.list.includes(value))).toBe(true);
        else {
          const { from, to, step } = each;
          expect(values.every((value) => value >= from && value <= to)).toBe(true);
          expect(values.every((value) => Number.isInteger(Math.round(((value - from) / step) * 1e6) / 1e6))).toBe(true);
        }
      }
    });

    test("keeps every slip beyond tolerance of the answer and of the other slips", () => {
      for (const { answer, slips } of questions) {
        const values = [answer, ...slips.map(({ value }) => value)];
        const apart = values.flatMap((a, at) => values.slice(at + 1).map((b) => distance(exercise, a, b)));
        expect(Math.min(...apart)).toBeGreaterThan(tolerance(exercise, answer));
      }
    });

    test("fills every hole of the question", () => {
      expect(questions.filter(({ ask }) => /[{}]|undefined|NaN/.test(ask))).toEqual([]);
    });

    test("gives the same question for the same seed", () => {
      expect(seeds(50).map((seed) => draw(exercise, seed))).toEqual(questions.slice(0, 50));
    });
  },
);

test("draw reaches every value of a grid, both ends included", () => {
  const drawn = new Set(seeds(2000).map((seed) => draw(numberOf("radius"), seed).given["tas"]));
  expect([...drawn].sort((a, b) => Number(a) - Number(b))).toEqual(Array.from({ length: 17 }, (_, at) => 80 + 5 * at));
});

test("draw rounds to the digits of the step: no 0.30000000000000004", () => {
  const exercise: NumberExercise = { ...numberOf("radius"), draws: [{ name: "tas", from: 90.1, to: 91, step: 0.1 }] };
  const fixed = { ...exercise, values: { bank: 15 } };
  const drawn = new Set(seeds(300).map((seed) => draw(fixed, seed).given["tas"]));
  expect([...drawn].sort()).toEqual([90.1, 90.2, 90.3, 90.4, 90.5, 90.6, 90.7, 90.8, 90.9, 91]);
});

test("draw tells exercises apart that share a seed", () => {
  const exercise = numberOf("radius");
  const other = { ...exercise, id: "another" };
  const same = seeds(200).filter((seed) => draw(exercise, seed).ask === draw(other, seed).ask);
  expect(same.length).toBeLessThan(20);
});

test("draw takes any string for a seed, and composed letters for the same as their parts", () => {
  fc.assert(fc.property(fc.string({ unit: "binary" }), (seed) => draw(numberOf("stall"), seed).seed === seed));
  expect(draw(numberOf("stall"), "caf\u00e9").given).toEqual(draw(numberOf("stall"), "cafe\u0301").given);
});

test("draw lets a draw shadow a given, and takes other names from the chapter's givens", () => {
  expect(draw(numberOf("stall"), "a").given["stallSpeed"]).toBe(47);
  expect(draw(numberOf("radius"), "a").exercise.values).toEqual({});
});

test("draw takes the settings' numbers for those that the exercise was read with", () => {
  const settings = {
    values: { stallSpeed: 52.25 },
    aircraft: { ...known.aircraft, facts: { cruise: { value: 120, unit: "kt" } } },
  };
  expect(draw(numberOf("stall"), "a", settings).ask).toContain("is 52.25\u00a0kt with");
  const { answer, given } = draw(numberOf("cruise"), "a", settings);
  expect(answer).toBeCloseTo((Number(given["distance"]) / 120) * 60, 9);
});

test("draw converts a setting that is stated in another unit", () => {
  const facts = { cruise: { value: 185.2, unit: "km/h" } };
  const { given } = draw(numberOf("cruise"), "a", { aircraft: { ...known.aircraft, facts } });
  expect(given["aircraft.cruise"]).toBeCloseTo(100, 9);
});

test("draw brings headings onto the circle, in the answer and in the slips", () => {
  const questions = seeds(300).map((seed) => draw(numberOf("heading"), seed));
  const values = questions.flatMap(({ answer, slips }) => [answer, ...slips.map(({ value }) => value)]);
  expect(values.every((value) => value >= 0 && value < 360)).toBe(true);
  expect(numberOf("heading").circle).toBe(true);
});

test("draw leaves out a slip that leads nowhere with these numbers", () => {
  const exercise = { ...numberOf("rateOneBank"), slips: [{ is: "10 * ln(tas - 140)", say: "" }] };
  const questions = seeds(60).map((seed) => draw(exercise, seed));
  for (const { given, slips } of questions) expect(slips).toHaveLength(Number(given["tas"]) > 140 ? 1 : 0);
});

test("draw gives up after a hundred failures in a row, and says what was wrong", () => {
  const impossible = { ...numberOf("radius"), slips: [{ is: "turnRadius(tas, bank) + 0.03", say: "" }] };
  expect(() => draw(impossible, "a")).toThrow(DrawProblem);
  expect(() => draw(impossible, "a")).toThrow(/turn-radius .* within tolerance of the answer/);
  const alike = { is: "2 * turnRadius(tas, bank)", say: "" };
  expect(() => draw({ ...impossible, slips: [alike, { is: `${alike.is} - 0.02`, say: "" }] }, "a")).toThrow(
    /each other/,
  );
  expect(() => draw({ ...impossible, answer: "1 / 0" }, "a")).toThrow(/not a finite number/);
  expect(() => draw({ ...impossible, answer: "turnRadius(-tas, bank)" }, "a")).toThrow(/must be over 0/);
});

test("draw takes a slip exactly at tolerance for one within it, however its last bit falls", () => {
  const hundredths = fc.integer({ min: 1, max: 99_999 });
  fc.assert(
    fc.property(hundredths, hundredths, (answer, within) => {
      const exercise: NumberExercise = {
        ...numberOf("radius"),
        draws: [],
        answer: `0 + ${answer / 100}`,
        within: { value: within / 100, unit: "NM" },
        slips: [{ is: `0 + ${(answer + within) / 100}`, say: "" }],
      };
      expect(() => draw(exercise, "a")).toThrow(DrawProblem);
      const beyond = { ...exercise, slips: [{ is: `0 + ${(answer + within + 1) / 100}`, say: "" }] };
      expect(draw(beyond, "a").slips).toHaveLength(1);
    }),
  );
});

test("pose makes the same question of the numbers alone", () => {
  for (const exercise of Object.values(exercises)) {
    for (const seed of seeds(20)) {
      const question = draw(exercise, seed);
      expect(pose(exercise, seed, question.given)).toEqual(question);
    }
  }
});

test("draw shuffles options by the seed, and keeps their order where the exercise says so", () => {
  const orders = new Set(
    seeds(60).map((seed) => draw(exercises["faster"]!, seed).kind === "choice" && optionsOf("faster", seed)),
  );
  expect(orders.size).toBe(6);
  const fixed = new Set(seeds(20).map((seed) => optionsOf("several", seed)));
  expect([...fixed]).toEqual(["speed,bank,weight,colour"]);
});

test("draw never shows an order in its right order", () => {
  const orders = new Set(seeds(200).map((seed) => optionsOf("recovery", seed)));
  expect(orders.size).toBe(5);
  expect(orders).not.toContain("power,bank,pitch");
});

test("draw computes which option is right, and never draws numbers where none is", () => {
  for (const seed of seeds(200)) {
    const question = draw(exercises["faster"]!, seed);
    const { tas, bank } = question.given as { tas: number; bank: number };
    // Rate one at 3°/s: tan φ = V ω / g.
    const rateOne = (Math.atan((tas * 1852 * 3 * Math.PI) / (3600 * 180 * 9.80665)) * 180) / Math.PI;
    expect(question.answer).toEqual([bank > rateOne ? "higher" : "lower"]);
  }
});

function optionsOf(name: keyof typeof written, seed: string): string {
  const question = draw(exercises[name]!, seed);
  return question.kind === "number" ? "" : question.options.join();
}

test("draw holds no number of its own machine's sines: answers that differ in the last bit change no draw", () => {
  const exercise = numberOf("rateOneBank");
  const nudged = { ...exercise, answer: `(${exercise.answer}) * (1 + 1e-15)` };
  const given = (question: NumberQuestion) => question.given;
  expect(seeds(300).map((seed) => given(draw(nudged, seed)))).toEqual(
    seeds(300).map((seed) => given(draw(exercise, seed))),
  );
});

test("draw reads an exercise that went through JSON, as a page's does", () => {
  for (const exercise of Object.values(exercises)) {
    const sent = JSON.parse(JSON.stringify(exercise)) as typeof exercise;
    expect(draw(sent, "a")).toEqual(draw(exercise, "a"));
  }
});

test("draw, mark and fill reach no library but the one that draws: parsers stay out of a reader's browser", () => {
  const libraries = new Set<string>();
  const seen = new Set<string>();
  const visit = (file: string): void => {
    if (seen.has(file)) return;
    seen.add(file);
    for (const [, type, from = ""] of readFileSync(file, "utf8").matchAll(
      /^(?:import|export) (type )?[^;]*?from "([^"]+)";/gm,
    )) {
      if (type) continue;
      if (from.startsWith(".")) visit(join(dirname(file), from));
      else libraries.add(from.split("/")[0]!);
    }
  };
  visit("src/cells/exercises/index.ts");
  expect([...libraries]).toEqual(["pure-rand"]);
  expect(seen.size).toBeGreaterThan(20);
});
