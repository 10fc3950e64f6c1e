import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { bankForRate, convert, isaTemperature, trueAirspeed } from "../../src/calc/index.ts";
import { builtIn, builtInCourse, builtInProblems, readCourse, readGlossary } from "../../src/cells/course.ts";
import { fragments } from "./fixtures/hostile.ts";

const chapters = builtInCourse.parts.flatMap((part) => part.chapters);
const fact = (name: string) => Number(builtIn.aircraft.facts[name]?.value);

test("builtIn has no problem in any of its files", () => {
  expect(builtInProblems).toEqual([]);
});

test("builtInCourse has sixteen chapters in four parts, numbered through", () => {
  expect(builtInCourse.parts).toHaveLength(4);
  expect(chapters.map(({ number }) => number)).toEqual(Array.from({ length: 16 }, (_, i) => i + 1));
  expect(chapters[2]).toEqual({ number: 3, name: "turning", title: "Turning by numbers", written: true });
});

test("builtInCourse calls written exactly the chapters that have a file", () => {
  const files = readdirSync("chapters").filter((name) => name.endsWith(".md") && name !== "glossary.md");
  const written = chapters.filter((chapter) => chapter.written).map(({ name }) => `${name}.md`);
  expect(written.toSorted()).toEqual(files.toSorted());
  expect(builtIn.chapters.map((name) => `${name}.md`).toSorted()).toEqual(files.toSorted());
});

test("builtIn.aircraft's numbers agree with each other", () => {
  expect(fact("stall")).toBeLessThan(fact("approach"));
  expect(fact("climb")).toBeLessThan(fact("neverExceed"));
  expect(fact("phases.descent.verticalSpeed")).toBe(-fact("descentRate"));
  expect(fact("phases.cruise.speed")).toBe(fact("cruiseIas"));
  expect(fact("phases.climb.speed")).toBe(fact("climb"));
  expect(fact("phases.approach.speed")).toBe(fact("approach"));
  expect(bankForRate(fact("cruise"), 3)).toBeLessThan(fact("bankLimit"));
});

test("builtIn.aircraft's cruise is the true airspeed of what its needle shows, to half a knot", () => {
  const altitude = fact("cruiseAltitude");
  const tas = trueAirspeed(fact("cruiseIas"), altitude, isaTemperature(altitude));
  expect(Math.abs(tas - fact("cruise"))).toBeLessThanOrEqual(0.5);
});

test("builtIn.aircraft's pitch, path and speed fit one wing: incidence follows the inverse square of the speed", () => {
  const phases = ["climb", "cruise", "slowCruise", "descent", "approach"];
  const knots = (feetPerMinute: number) => convert(feetPerMinute, "ft/min", "kt");
  const incidence = phases.map((phase) => {
    const [pitch, speed, vertical] = ["pitch", "speed", "verticalSpeed"].map((key) => fact(`phases.${phase}.${key}`));
    return { speed: speed!, angle: pitch! - (Math.asin(knots(vertical!) / speed!) * 180) / Math.PI };
  });
  const [cruise, slow] = [incidence[1]!, incidence[2]!];
  const lift = (slow.angle - cruise.angle) / (slow.speed ** -2 - cruise.speed ** -2);
  for (const { speed, angle } of incidence) {
    const expected = cruise.angle + lift * (speed ** -2 - cruise.speed ** -2);
    // Pitch is given in whole degrees, and the line through two of them carries their rounding twice.
    expect(Math.abs(angle - expected)).toBeLessThanOrEqual(1);
  }
});

test("builtIn defines every term's forms so that one word never stands for two terms", () => {
  const keys = new Map<string, string>();
  for (const { key, british, american, forms } of builtIn.terms) {
    for (const word of new Set([[british, american], ...forms].flat())) {
      expect(keys.get(word) ?? key, word).toBe(key);
      keys.set(word, key);
    }
  }
  expect(builtIn.terms.length).toBeGreaterThanOrEqual(25);
});

test("readCourse refuses a chapter that stands in it twice", () => {
  const yaml =
    "parts:\n  - title: A\n    chapters:\n      - name: b\n        title: B\n      - name: b\n        title: C\n";
  const { value, problems } = readCourse(yaml, "course.yaml");
  expect(value).toBeUndefined();
  expect(problems).toEqual([expect.objectContaining({ line: 6, column: 15 })]);
});

const term =
  "## rate-one\n- British: rate one\n- American: standard rate\n- Forms: rate-one turn / standard-rate turn\n\nThree degrees a second.\n";

test("readGlossary reads a term's words, forms and meaning", () => {
  expect(readGlossary(`# Words\n\nAn introduction.\n\n${term}`, "glossary.md").value).toEqual([
    {
      key: "rate-one",
      british: "rate one",
      american: "standard rate",
      forms: [["rate-one turn", "standard-rate turn"]],
      meaning: "Three degrees a second.",
    },
  ]);
});

test.each([
  [term.replace("## rate-one", "## Rate One"), "1:1 'Rate One' is no key."],
  [term.replace("- American: standard rate\n", ""), "1:1 The term's words are missing or too many."],
  [term.replace("- British", "- Brittish"), "2:1 This line names no form of the term."],
  [term.replace("rate-one turn / standard-rate turn", "a / b / c"), "4:1 'a / b / c' is no pair of forms."],
  [term.replace("Three degrees a second.\n", ""), "1:1 The term 'rate-one' has no meaning."],
  [term.replace("Three", "{tas}"), "6:1 {tas} stands for nothing: no given or work has that name."],
  [term.replace("Three", "[Three](term:three)"), "6:1 The glossary has no term 'three'."],
  [term + term, "7:1 The key 'rate-one' stands here twice."],
  ["", "1:1 The glossary has no terms."],
])("readGlossary names the mistake in %j", (text, expected) => {
  const said = readGlossary(text, "glossary.md").problems.map(
    ({ line, column, message }) => `${line}:${column} ${message}`,
  );
  expect(said).toContain(expected);
});

test("readCourse and readGlossary never throw, whatever the text", () => {
  for (const fragment of [...fragments, undefined, null, 5]) {
    const text =
      typeof fragment === "string" ? fragment.repeat(2_000 / fragment.length) : (fragment as unknown as string);
    for (const readText of [readCourse, readGlossary]) {
      expect(readText(text, "x").problems.length).toBeGreaterThan(0);
    }
  }
});
