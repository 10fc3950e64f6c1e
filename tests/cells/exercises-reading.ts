import type { Exercise } from "../../src/cells/exercises/exercise.ts";
import { readExercise, type SheetEntry, type Trials } from "../../src/cells/exercises/schema.ts";
import type { Known } from "../../src/cells/known.ts";
import type { Problem } from "../../src/cells/problem.ts";
import { readYaml } from "../../src/cells/reading/yaml.ts";

const knots = (value: number) => ({ value, unit: "kt" });

/** An aircraft of the tests' own. */
export const known: Known = {
  aircraft: { title: "Trainer", owner: "the tests", facts: { cruise: knots(95), stall: knots(47) } },
  place: { title: "Field", owner: "the tests", facts: { variation: { value: -2, unit: "deg" } } },
  terms: [],
  figures: [],
  chapters: [],
};

const given = (name: string, label: string, unit: string, value: number): SheetEntry => ({
  name,
  label,
  unit,
  value,
  digits: 0,
  circle: false,
});

const sheet: readonly SheetEntry[] = [
  given("stallSpeed", "Stalling speed", "kt", 47),
  given("tas", "True airspeed", "kt", 95),
  { name: "hours", label: "Time", unit: "plain", digits: 2, circle: false, is: "distance / aircraft.cruise" },
  { name: "minutes", label: "Time", unit: "min", digits: 1, circle: false, is: "60 * hours" },
];

/** What comes of an exercise's YAML that starts on line 1. */
export function reading(yaml: string, trials?: Trials): { exercise?: Exercise; problems: readonly Problem[] } {
  const fence = readYaml(yaml, { file: "a.md", line: 1, column: 1 });
  return readExercise(fence, { file: "a.md", known, objectives: ["TRN-1", "TRN-2"], sheet, ...(trials && { trials }) });
}

/** An exercise that must have no problem. */
export function read(yaml: string): Exercise {
  const { exercise, problems } = reading(yaml);
  if (!exercise || problems.length > 0) throw new Error(JSON.stringify(problems));
  return exercise;
}
