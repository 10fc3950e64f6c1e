import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distance, tolerance } from "../../src/cells/exercises/closeness.ts";
import type { NumberExercise } from "../../src/cells/exercises/exercise.ts";
import { draw, mark, pose } from "../../src/cells/exercises/index.ts";
import type { NumberQuestion } from "../../src/cells/exercises/question.ts";
import { read } from "./exercises-reading.ts";
import { written } from "./exercises-sample.ts";

const seeds = (count: number): string[] => Array.from({ length: count }, (_, at) => `seed ${at}`);
const exercises = Object.values(written).map(read);
const numbers = exercises.filter((exercise) => exercise.kind === "number");
const named = (name: keyof typeof written) => read(written[name]);
const numberOf = (name: keyof typeof written): NumberExercise => named(name) as NumberExercise;
/** 95 kt at 15°: R = V² / (g tan φ) is 0.4908 NM, worked by hand from 1 kt = 1852/3600 m/s and g = 9.80665 m/s². */
const radius = pose(numberOf("radius"), "a", { tas: 95, bank: 15 });

/** A question whose answer, tolerance and slips are as stated. */
function asked(answer: number, change: Partial<NumberExercise> = {}): NumberQuestion {
  const base = { ...numberOf("radius"), draws: [], measures: {}, ask: "", why: "", slips: [] };
  return pose({ ...base, answer: `0 + ${answer}`, ...change }, "a", {});
}
const kindOf = (question: NumberQuestion, reply: string) => mark(question, reply).kind;

test.each([
  ["0.49", "right"],
  ["0.5 NM", "right"],
  ["909 m", "right"],
  ["909", "wrong"],
  ["0.98", "slip"],
  ["1", "slip"],
  ["0.91", "slip"],
  ["0.55", "wrong"],
  ["left 0.5", "unreadable"],
  ["95 kt", "unreadable"],
  ["", "unreadable"],
  ["x".repeat(101), "unreadable"],
])("mark takes %j for the radius of 0.491 NM as %s", (reply, kind) => {
  expect(radius.answer).toBeCloseTo(0.4908, 4);
  expect(kindOf(radius, reply)).toBe(kind);
});

test("mark says what a slip was, with the student's own number, and shows her path last", () => {
  const verdict = mark(radius, "0.98");
  expect(verdict).toMatchObject({ kind: "slip", slip: 0, because: ["slip:0"], reply: 0.98 });
  expect(verdict.say).toBe("You gave 0.98\u00a0NM. That is the diameter, the width of the whole circle.");
  expect(verdict.why).toBe("At 95\u00a0kt the radius is 0.49\u00a0NM.");
  expect(verdict.working.at(-2)).toMatchObject({ what: "Radius of turn", comes: "0.49\u00a0NM" });
  expect(verdict.working.at(-1)).toMatchObject({ what: "Your path", comes: "0.98\u00a0NM" });
});

test("mark shows a converted reply as it was typed and as it counts", () => {
  expect(mark(radius, "1 817 m").say).toBe(
    "You gave 1,817\u00a0m (0.98\u00a0NM). That is the diameter, the width of the whole circle.",
  );
});

test("mark shows the working to the answer after every reply that could be read, and none otherwise", () => {
  const comes = (reply: string) => mark(radius, reply).working.at(-1)?.comes;
  expect([comes("0.49"), comes("7"), comes("seven")]).toEqual(["0.49\u00a0NM", "0.49\u00a0NM", undefined]);
});

test("mark works computed quantities of the chapter out before the answer that rests on them", () => {
  const question = pose(numberOf("cruise"), "a", { distance: 19 });
  expect(question.answer).toBeCloseTo(12, 12);
  const rows = mark(question, "12").working;
  expect(rows.map(({ comes }) => comes)).toEqual(["0.20", "12.0\u00a0min", "12.0\u00a0min"]);
});

describe("mark, at the edge of tolerance,", () => {
  test.each([
    [0.6, "0.63", "right"],
    [0.6, "0.57", "right"],
    [0.6, "0.631", "wrong"],
    [0.6, "0.569", "wrong"],
    [1.1, "1.13", "right"],
    [2.3, "2.33", "right"],
    [4.1, "4.07", "right"],
    [8.2, "8.17", "right"],
  ])("takes an answer of %d, a reply of %s and 0.03 for %s", (answer, reply, kind) => {
    expect(kindOf(asked(answer), reply)).toBe(kind);
  });

  test("counts a reply exactly at tolerance as right, whatever the binary fractions", () => {
    const hundredths = fc.integer({ min: 1, max: 99_999 });
    fc.assert(
      fc.property(hundredths, hundredths, (answer, within) => {
        const question = asked(answer / 100, { within: { value: within / 100, unit: "NM" } });
        expect(kindOf(question, ((answer + within) / 100).toFixed(2))).toBe("right");
        expect(kindOf(question, ((answer + within) / 100 + 0.001).toFixed(3))).not.toBe("right");
      }),
    );
  });

  test("converts a tolerance into the answer's unit, for temperatures as a difference", () => {
    expect(kindOf(asked(10, { within: { value: 1852, unit: "m" } }), "11")).toBe("right");
    expect(kindOf(asked(10, { within: { value: 1852, unit: "m" } }), "11.001")).not.toBe("right");
    const warm = asked(20, { unit: "degC", within: { value: 9, unit: "degF" } });
    expect([kindOf(warm, "25"), kindOf(warm, "15"), kindOf(warm, "25.1")]).toEqual(["right", "right", "wrong"]);
    expect(kindOf(warm, "77 F")).toBe("right");
  });

  test("takes a percentage of the answer", () => {
    const question = asked(-200, { within: { percent: 2 }, unit: "ft" });
    expect([kindOf(question, "-204"), kindOf(question, "-196"), kindOf(question, "-204.1")]).toEqual([
      "right",
      "right",
      "wrong",
    ]);
  });
});

describe("mark, in order,", () => {
  const slips = [
    { is: "0 + 2", say: "Two." },
    { is: "0 + 2.05", say: "More." },
  ];
  const within = { value: 0.03, unit: "NM" };

  test("prefers right to slip, and of two slips the nearer", () => {
    const question = asked(1.98, { slips, within });
    expect(kindOf(question, "2")).toBe("right");
    expect(mark(question, "2.02")).toMatchObject({ kind: "slip", slip: 0 });
    expect(mark(question, "2.03")).toMatchObject({ kind: "slip", slip: 1 });
  });

  test("prefers slip to close", () => {
    expect(kindOf(asked(2.04, { slips: [{ is: "0 + 2", say: "" }], within }), "2.0")).toBe("slip");
    expect(kindOf(asked(2.04, { within }), "2.0")).toBe("close");
  });

  test.each([
    [0.46, "0.5", "wrong"],
    [1.46, "1.5", "close"],
    [1.46, "1.4", "wrong"],
    [1123, "1100", "close"],
    [1123, "1 120", "close"],
    [1123, "1.1e3", "close"],
    [1123, "1000", "wrong"],
    [1040, "1000", "close"],
    [1123, "1,1e3", "close"],
    [17.4, "17", "close"],
    [17.6, "17", "wrong"],
    [7.4, "7", "wrong"],
    [-17.4, "-17", "close"],
    [-17.4, "17", "wrong"],
    [17.4, "17½", "wrong"],
  ])("takes an answer of %d and a reply of %s for %s", (answer, reply, kind) => {
    expect(kindOf(asked(answer), reply)).toBe(kind);
  });

  test("judges rounding in the unit that was typed, and says how exact the answer should be", () => {
    const verdict = mark(asked(1.4563, { within: { value: 0.0005, unit: "NM" } }), "2.7 km");
    expect(verdict.kind).toBe("close");
    expect(verdict.say).toBe(
      "2.7\u00a0km (1.46\u00a0NM) is the answer, rounded too far: give it to within 0.0005\u00a0NM.",
    );
  });
});

test("mark takes of two readings of a comma the one nearer the answer", () => {
  expect(mark(asked(1100), "1,100")).toMatchObject({ kind: "right", reply: 1100 });
  expect(mark(asked(1.1), "1,100")).toMatchObject({ kind: "right", reply: 1.1 });
  expect(mark(asked(0.6), "0,600")).toMatchObject({ kind: "right", reply: 0.6 });
});

test("mark compares headings on the circle", () => {
  const question = pose(numberOf("heading"), "a", { course: 10, drift: 12 });
  expect(question.answer).toBe(358);
  expect(["358", "360", "0", "000", "356"].map((reply) => kindOf(question, reply))).toEqual(Array(5).fill("right"));
  expect(kindOf(question, "001")).toBe("wrong");
  expect(mark(question, "022")).toMatchObject({ kind: "slip", slip: 0 });
  expect(mark(question, "022").say).toContain("You gave 022°.");
});

test("mark compares sizes alone where the sign is ignored, of answer and slips alike", () => {
  const question = pose(numberOf("heightLost"), "a", { verticalSpeed: -300, time: 40 });
  expect(question.answer).toBeCloseTo(-200, 9);
  expect(["200", "-200", "203 ft"].map((reply) => kindOf(question, reply))).toEqual(["right", "right", "right"]);
  expect(["300", "-300", "120", "-120"].map((reply) => kindOf(question, reply))).toEqual(Array(4).fill("slip"));
});

test("mark takes left for negative and right for positive", () => {
  const question = asked(-20, { unit: "deg", within: { value: 1, unit: "deg" } });
  expect(["left 20", "20L", "-20", "20 W"].map((reply) => kindOf(question, reply))).toEqual(Array(4).fill("right"));
  expect(["right 20", "20"].map((reply) => kindOf(question, reply))).toEqual(["wrong", "wrong"]);
});

describe.each(numbers.map((exercise) => [exercise.id, exercise] as const))(
  "mark, of %s over 200 seeds,",
  (_, exercise) => {
    const questions = seeds(200).map((seed) => draw(exercise, seed));

    test("takes the printed and the exact answer, typed ten ways, for right", () => {
      const typed = (value: number, printed: string): string[] => [
        String(value),
        value.toFixed(6),
        value.toFixed(6).replace(".", ","),
        value.toFixed(6).replace("-", "\u2212"),
        ` ${value} `,
        value.toExponential(8),
        printed,
        printed.toUpperCase(),
        printed.replaceAll("\u00a0", ""),
        printed.replaceAll("\u00a0", "  "),
      ];
      for (const question of questions) {
        const wrong = typed(question.answer, question.printed["answer"]!).filter(
          (reply) => kindOf(question, reply) !== "right",
        );
        expect(wrong).toEqual([]);
      }
    });

    test("takes each slip's own value for that slip", () => {
      for (const question of questions) {
        for (const { value, index } of question.slips) {
          expect(mark(question, String(value))).toMatchObject({ kind: "slip", slip: index });
        }
      }
    });

    test("takes nothing for right that lies beyond tolerance", () => {
      const reply = fc.oneof(
        fc.double({ min: -3000, max: 3000, noNaN: true }).map(String),
        fc.string({ maxLength: 12, unit: fc.constantFrom(..."0123456789.,:/½e+-° lrewnsmktfhg%") }),
        fc.string({ maxLength: 110, unit: "binary" }),
      );
      fc.assert(
        fc.property(reply, fc.nat(199), (text, at) => {
          const question = questions[at]!;
          const verdict = mark(question, text);
          const inside =
            verdict.reply !== undefined &&
            distance(exercise, verdict.reply, question.answer) <= tolerance(exercise, question.answer) * (1 + 1e-9);
          expect(verdict.kind === "right").toBe(inside);
          expect(verdict.kind === "unreadable").toBe(verdict.reply === undefined);
        }),
        { numRuns: 500 },
      );
    });
  },
);

test("mark takes the right key of a choice, in a list or as a string", () => {
  const question = pose(named("faster"), "a", { tas: 100, bank: 30 });
  expect(mark(question, ["higher"])).toMatchObject({ kind: "right", because: ["higher"], working: [] });
  expect(mark(question, "higher").say).toBe("More bank than rate one needs turns faster.");
  expect(mark(question, "unknown")).toMatchObject({ kind: "slip", slip: 2, because: ["unknown"] });
  expect(mark(question, "lower")).toMatchObject({ kind: "wrong", because: [], say: "That is not right." });
});

test("mark wants all and only the right keys where several are wanted", () => {
  const question = draw(named("several"), "a");
  const kinds = ["speed,bank", "bank, speed", "speed", "speed,weight", "colour", "speed,bank,colour"];
  expect(kinds.map((keys) => mark(question, keys).kind)).toEqual(["right", "right", "wrong", "slip", "wrong", "wrong"]);
  expect(mark(question, "speed,weight,bank").say).toBe("A heavier aeroplane turns alike.");
});

test.each([
  ["faster", ""],
  ["faster", "nothing"],
  ["faster", "higher,lower"],
  ["several", ""],
  ["several", "speed,speed"],
  ["recovery", "power,bank"],
  ["recovery", "power,bank,bank"],
  ["recovery", "power,bank,pitch,power"],
] as const)("mark cannot read, in the exercise %s, the keys %j", (name, keys) => {
  const verdict = mark(draw(named(name), "a"), keys);
  expect(verdict).toMatchObject({ kind: "unreadable", why: "" });
  expect(verdict.say).toMatch(/^[A-Z].*\.$/);
});

test("mark names the wrong path of a declared order, and how far any other order is right", () => {
  const question = draw(named("recovery"), "a");
  expect(mark(question, ["power", "bank", "pitch"])).toMatchObject({
    kind: "right",
    why: "A pull in a bank tightens the spiral.",
  });
  expect(mark(question, "power, pitch, bank")).toMatchObject({ kind: "slip", slip: 0, because: ["slip:0"] });
  expect(mark(question, "pitch,power,bank")).toMatchObject({
    kind: "wrong",
    say: "The first is already out of place.",
  });
  expect(mark(question, ["bank", "power", "pitch"]).kind).toBe("wrong");
});

test("mark gives equal verdicts where the answer differs in its last bit", () => {
  const exercise = numberOf("rateOneBank");
  const nudged = { ...exercise, answer: `(${exercise.answer}) * (1 + 2e-16)` };
  for (const seed of seeds(100)) {
    const [one, other] = [draw(exercise, seed), draw(nudged, seed)];
    for (const reply of [one.answer.toFixed(0), one.answer.toFixed(1), (one.answer + 0.5).toFixed(1), "20"]) {
      expect(mark(other, reply)).toMatchObject({ kind: mark(one, reply).kind, say: mark(one, reply).say });
    }
  }
});
