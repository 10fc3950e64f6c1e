import { expect, test } from "vitest";
import { draw } from "../../src/cells/exercises/draw.ts";
import type { ChoiceExercise, NumberExercise, OrderExercise } from "../../src/cells/exercises/exercise.ts";
import { mistakes } from "./exercises-mistakes.ts";
import { read, reading } from "./exercises-reading.ts";
import { written } from "./exercises-sample.ts";

/** Where a stretch of the YAML stands, counted from 1. */
function placeOf(stretch: string, yaml: string): { line: number; column: number } {
  const before = yaml.slice(0, yaml.indexOf(stretch)).split("\n");
  return { line: before.length, column: before.at(-1)!.length + 1 };
}

type Change = readonly [from: string, to: string];
const changed = (name: keyof typeof written, [from, to]: Change): string => {
  expect(written[name]).toContain(from);
  return written[name].replace(from, to);
};

test.each(Object.entries(written))("readExercise finds nothing wrong with the sample %s", (_, yaml) => {
  expect(reading(yaml).problems).toEqual([]);
});

test("readExercise keeps what an author wrote, and fills in the rest", () => {
  expect(read(written.radius)).toMatchObject({
    id: "turn-radius",
    kind: "number",
    label: "Radius of turn",
    unit: "NM",
    digits: 2,
    circle: false,
    within: { value: 0.03, unit: "NM" },
    signIgnored: false,
    hints: ["Speed counts twice."],
    draws: [
      { name: "tas", from: 80, to: 160, step: 5 },
      { name: "bank", from: 15, to: 25, step: 5 },
    ],
    measures: { tas: { unit: "kt", digits: 0 }, bank: { unit: "deg", digits: 0 } },
  });
  expect(read(written.several)).toMatchObject({ several: true, shuffled: false, why: "" });
  expect((read(written.several) as ChoiceExercise).options[3]).toEqual({
    key: "colour",
    text: "Paint",
    right: "false",
    say: "",
  });
  expect((read(written.recovery) as OrderExercise).answer).toEqual(["power", "bank", "pitch"]);
});

test("readExercise keeps a snapshot of every given, fact and computed quantity that the exercise uses, and of no other", () => {
  expect(read(written.stall).values).toEqual({ stallSpeed: 47 });
  expect(read(written.stall).facts).toEqual({});
  const cruise = read(written.cruise);
  expect(cruise.facts).toEqual({ "aircraft.cruise": { value: 95, unit: "kt" } });
  expect(Object.keys(cruise.work).sort()).toEqual(["hours", "minutes"]);
});

test.each<[within: string, unit: string, digits: number]>([
  ["0.03 NM", "NM", 2],
  ["0.1 NM", "NM", 1],
  ["0.5", "NM", 1],
  ["50 m", "NM", 2],
  ["1 NM", "NM", 0],
  ["5 %", "NM", 2],
])("readExercise prints an answer that is right within %s, in %s, with %d digits", (within, unit, digits) => {
  const exercise = read(changed("radius", ["within: 0.03 NM", `within: ${within}`]).replace("2 * turn", "8 * turn"));
  expect(exercise).toMatchObject({ unit, digits });
});

test("readExercise takes the digits that an author states", () => {
  expect(read(changed("radius", ["unit: NM", "unit: NM\ndigits: 3"]))).toMatchObject({ digits: 3 });
});

test.each<[answer: string, circle: boolean]>([
  ["course", true],
  ["course + 10", true],
  ["10 + course", true],
  ["course - drift", true],
  ["course - (course - 30)", false],
  ["drift", false],
])("readExercise takes the answer %s for a heading: %s", (answer, circle) => {
  const yaml = changed("heading", ["answer: course - drift", `answer: ${answer}`])
    .replace("is: course + drift", "is: course * 0 + 90.1 + drift")
    .replace("is: course\n", "is: course * 0 + 211.3 + drift\n");
  expect((reading(yaml).exercise as NumberExercise | undefined)?.circle).toBe(circle);
});

test.each(mistakes)("readExercise finds $mistake, in $name", ({ name, from, to, at, message }) => {
  const yaml = changed(name, [from, to]);
  const found = reading(yaml).problems.filter((problem) => problem.message.toLowerCase().includes(message));
  expect(found).toMatchObject([{ file: "a.md", ...placeOf(at, yaml) }]);
});

test("readExercise keeps an exercise that can be drawn beside its lesser problems", () => {
  expect(reading(changed("radius", ["TRN-1", "TRN-9"])).exercise?.id).toBe("turn-radius");
  expect(
    reading(changed("radius", ["answer: turnRadius(tas, bank)", "answer: turnRadius(tsa, bank)"])).exercise,
  ).toBeUndefined();
});

test("readExercise writes a mend for every problem it finds", () => {
  const broken = ["unit: kt", "unit: x", "within: 1 s", "digits: -1", "sign: lost", "draw: []", "kind: riddle"];
  for (const line of broken) {
    const key = line.split(":")[0]!;
    const yaml = written.radius.includes(`\n${key}:`)
      ? written.radius.replace(new RegExp(`\\n${key}:.*(\\n .*)*`), `\n${line}`)
      : `${written.radius}${line}\n`;
    const { problems } = reading(yaml);
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) {
      expect(problem.message).toMatch(/^\S.*[.?!]$/);
      expect(problem.mend).toMatch(/^\S.*[.?!]$/);
    }
  }
});

test("readExercise draws words, plain numbers and quantities under names of their own", () => {
  const exercise = read(`
id: own-names
kind: number
objective: TRN-2
draw:
  side: [left, right]
  count: { from: 1, to: 4, step: 1, unit: plain }
  wind: { quantity: windSpeed, from: 10, to: 30, step: 5 }
ask: A wind of {wind} from the {side}, {count} times over. What is the sum, right positive?
answer: wind * count * if(side == "left", -1, 1)
unit: kt
within: 1
slips:
  - is: wind * count * if(side == "left", 1, -1)
    say: That is the other side.
  - is: wind * (count + 3)
    say: That adds three.
`);
  expect(exercise.measures).toMatchObject({
    side: { unit: "word" },
    count: { unit: "plain" },
    wind: { label: "Wind speed" },
  });
  expect(draw(exercise, "a").ask).toMatch(/^A wind of \d0|5\u00a0kt from the (left|right), \d times over\./);
});

test("readExercise stops trying exercises when a chapter's trial draws are used up", () => {
  const spent = { left: 150_000 };
  reading(written.radius, spent);
  const trials = { left: 150_000 - spent.left + 1 };
  const first = reading(written.radius, trials);
  const second = reading(written.stall, trials);
  expect(first.problems).toEqual([]);
  expect(second.problems[0]?.message).toMatch(/more exercises than can be tried/);
});
