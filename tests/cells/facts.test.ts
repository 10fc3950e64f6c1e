import { expect, test } from "vitest";
import { builtIn } from "../../src/cells/course.ts";
import { factNamed, factNames } from "../../src/cells/facts.ts";
import { readChapter } from "../../src/cells/reading/index.ts";
import { Worksheet } from "../../src/cells/worksheet.ts";

test("factNamed finds a fact of any room, and nothing that is no fact", () => {
  expect(factNamed("aircraft.cruise", builtIn)).toEqual({ value: 95, unit: "kt" });
  expect(factNamed("technique.leadFraction", builtIn)).toEqual({ value: 0.5, unit: "plain" });
  for (const name of ["cruise", "aircraft.", "aircraft.toString", "terms.0", "place.cruise", ".cruise", ""])
    expect(factNamed(name, builtIn)).toBeUndefined();
  for (const name of factNames(builtIn)) expect(factNamed(name, builtIn)).toBeDefined();
});

const chapter = `---
title: Leads
code: LDS
summary: A chapter.
minutes: 5
objectives:
  LDS-1: Lead
given:
  tas:
    value: aircraft.cruise
  bank: { value: 20, from: 5, to: 45 }
work:
  lead:
    is: bank * technique.leadFraction
    unit: deg
    digits: 0
---
## One

At {tas} and {bank} the lead is {lead}.
`;

test("readChapter takes technique.* in expressions, and keeps the name of the fact that a default follows", () => {
  const { given, work, problems } = readChapter(chapter, "chapters/leads.md");
  expect(problems.filter(({ message }) => !/exercise/.test(message))).toEqual([]);
  expect(given.map(({ follows }) => follows)).toEqual(["aircraft.cruise", undefined]);
  expect(new Worksheet({ given, work }, builtIn).value("lead")).toBe(10);
});

test("readChapter names a technique that isn't there", () => {
  const { problems } = readChapter(chapter.replace("leadFraction", "leadFracton"), "chapters/leads.md");
  expect(problems.some(({ message, mend }) => /technique\.leadFracton/.test(message + mend))).toBe(true);
});
