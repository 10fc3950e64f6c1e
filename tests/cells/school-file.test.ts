import fc from "fast-check";
import { expect, test } from "vitest";
import { magneticDip } from "../../src/calc/index.ts";
import { builtInSchool, readAircraft, readPlace, readSchool } from "../../src/cells/course.ts";
import {
  checkEntries,
  compactOf,
  entryOf,
  fields,
  fromCompact,
  type School,
  schoolFile,
  valuesOf,
} from "../../src/cells/school/index.ts";
import { fragments } from "./fixtures/hostile.ts";

const dunlin = builtInSchool!;
const file = schoolFile(dunlin);
const lineOf = (start: string, text = file) => text.split("\n").findIndex((line) => line.trim().startsWith(start)) + 1;
const spaced = (words: string) => words.replaceAll("\u00a0", " ");
const problemsOf = (text: string) => readSchool(text, "ours.yaml").problems;

/** Text as a hand may write it, with every sign that YAML or an address could stumble over. */
const words = fc
  .array(fc.constantFrom(..."aZé9 '\":#&*!|>%@`{}[],?-~ëøß…“”·\\/\u00a0"), { minLength: 1, maxLength: 38 })
  .map((signs) => `a${signs.join("")}`.trim());

const school: fc.Arbitrary<School> = fc
  .record({
    title: words,
    hand: words,
    steps: fc.array(words, { minLength: 1, maxLength: 12 }),
    lag: fc.integer({ min: 1, max: 15 }),
  })
  .map(({ title, hand, steps, lag }) => {
    const entries = Object.fromEntries([...valuesOf(dunlin)].map(([id, value]) => [id, entryOf(value)]));
    const own = {
      "aircraft.title": title,
      "technique.handOver": hand,
      "technique.orders.turnOut": steps.join("\n"),
      "aircraft.lag": `${lag}`,
    };
    return checkEntries({ ...entries, ...own }).school!;
  });

test("readSchool reads back what schoolFile writes, whatever its words", () => {
  fc.assert(
    fc.property(school, (own) => {
      expect(readSchool(schoolFile(own), "x").value).toEqual(own);
    }),
  );
});

test("fromCompact reads back what compactOf writes, whatever its words", () => {
  fc.assert(
    fc.property(school, (own) => {
      expect(fromCompact(compactOf(own)).school).toEqual(own);
    }),
  );
});

test("schoolFile says beside each entry what it is and may be, in fewer characters than a file may have", () => {
  expect(file).toContain(
    "    # Stalling speed: indicated; flaps up, wings level, at the greatest mass; 25 to 100 kt.\n    stall: 47 kt\n",
  );
  expect(file.length).toBeLessThan(20_000);
});

test("readSchool converts a unit of the same kind", () => {
  const { value } = readSchool(file.replace("elevation: 20 ft", "elevation: 100 m"), "x");
  expect(value!.place.facts["elevation"]).toEqual({ value: 328.08399, unit: "ft" });
});

test("readSchool finds the dip where only the latitude is given, and the other way round", () => {
  const without = (key: string) => readSchool(file.replace(new RegExp(`^ *${key}:.*\n`, "m"), ""), "x").value!;
  expect(without("dip").place.facts["dip"]!.value).toBeCloseTo(magneticDip(52), 1);
  // The dipole's dip is 67° where tan λ = tan 67° / 2.
  expect(without("latitude").place.facts["latitude"]!.value).toBe(49.7);
});

test("readSchool refuses a file of another version, and says nothing else of it", () => {
  for (const other of ["version: 2", "version: '1'", "versions: 1"]) {
    const problems = problemsOf(file.replace("version: 1", other).replace("stall: 47 kt", "stall: x"));
    expect(problems).toHaveLength(1);
    expect(problems[0]!.message).toMatch(/version/);
  }
});

test.each([
  ["stall: 47 kt", "stall: 47kt", undefined],
  ["stall: 47 kt", "stall: 47", /stands without its unit/],
  ["stall: 47 kt", "stall: 47 knots", /‘knots’ is no unit that fits here/],
  ["stall: 47 kt", "stall: 47 ft", /‘ft’ is no unit that fits here/],
  ["stall: 47 kt", "stall: .nan", /should be a number, not NaN/],
  ["stall: 47 kt", "stall: 1e9 kt", /is not a number/],
  ["stall: 47 kt", "stall: -47 kt", /−47 kt is outside 25 to 100 kt/],
  ["stall: 47 kt", "stall: 72 kt", /Approach speed, 70 kt, is not above stalling speed, 72 kt/],
  ["stall: 47 kt", "stal: 47 kt", /no key 'stal'/],
  ["    stall: 47 kt\n", "", /'aircraft.numbers' lacks its 'stall'/],
  ["attitude: vacuum", "attitude: steam", /‘steam’ is none of the choices/],
  ["noseLow: power-bank-pitch", "noseLow: pitch", /‘pitch’ is none of the choices/],
  ["handOver: You have control.", `handOver: ${"x".repeat(81)}`, /81 characters long/],
  ["words: british", "words: welsh", /‘welsh’ is none of the choices/],
  ["title: Saltmarsh", "title: Saltmarsh # ours", /comment after text/i],
  ["aircraft:\n", "aircraft: 5\nplane:\n", /'aircraft' should be/],
])("readSchool answers %j written as %j", (line, other, message) => {
  const text = file.replace(line, other);
  expect(text).not.toBe(file);
  const { value, problems } = readSchool(text, "ours.yaml");
  if (message === undefined) return expect(value).toEqual(dunlin);
  expect(value).toBeUndefined();
  expect(problems.map((problem) => spaced(problem.message)).join("\n")).toMatch(message);
});

test("readSchool names every reason at its line and column, in the order of the file", () => {
  const text = file
    .replace("stall: 47 kt", "stall: 470 kt")
    .replace("latitude: 52 deg", "latitude: -52 deg")
    .replace("turnBank: 25 deg", "turnBank: 40 deg");
  expect(problemsOf(text).map(({ file: name, line, column }) => [name, line, column])).toEqual([
    ["ours.yaml", lineOf("stall:", text), 12],
    ["ours.yaml", lineOf("bankLimit:", text), 16],
    ["ours.yaml", lineOf("dip:", text), 10],
  ]);
});

test("readSchool, readAircraft and readPlace never throw and never take half a school, however a file is cut or spoilt", () => {
  const steps = Array.from({ length: 60 }, (_, i) => file.slice(0, Math.floor((file.length * i) / 60)));
  const hostile = fragments.map((fragment) => fragment.repeat(2_000 / fragment.length));
  const odd = [undefined, null, 5].map((each) => each as unknown as string);
  for (const text of [...steps, ...hostile, ...odd, `${file}\n- x`, file + file])
    for (const read of [readSchool, readAircraft, readPlace]) {
      const { value, problems } = read(text, "x");
      expect(value).toBeUndefined();
      expect(problems.length).toBeGreaterThan(0);
    }
});

test("fromCompact never throws and takes no half", () => {
  const whole = compactOf(dunlin);
  const other = JSON.stringify([2, ...fields.map(() => "")]);
  const cuts = Array.from({ length: 40 }, (_, i) => whole.slice(0, Math.floor((whole.length * i) / 40)));
  const long = JSON.stringify([1, ...fields.map(() => 5)]);
  for (const text of [...cuts, "null", "[]", "[1]", "{}", "[[]]", other, long, `${whole}]`])
    expect(fromCompact(text)).toMatchObject({ findings: [expect.anything()] });
  expect(fromCompact(other).findings[0]!.message).toMatch(/version 2/);
});

test("readAircraft and readPlace read the built-in files' form, with their keys at the margin", () => {
  const inner = (from: string, to: string) =>
    file.slice(file.indexOf(from) + from.length, file.indexOf(to)).replace(/^ {2}/gm, "");
  const aircraft = readAircraft(`version: 1\n${inner("aircraft:\n", "place:\n")}`, "x");
  expect(aircraft).toEqual({ value: dunlin.aircraft, problems: [] });
  const rest = file.slice(file.indexOf("technique:\n"));
  const { value } = readPlace(`version: 1\n${inner("\nplace:\n", "technique:\n")}${rest}`, "x");
  expect(value).toEqual({ place: dunlin.place, technique: dunlin.technique, words: "british" });
});
