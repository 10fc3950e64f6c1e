import * as v from "valibot";
import { units } from "../../calc/index.ts";
import type { Fact, Facts } from "../known.ts";
import type { Problem } from "../problem.ts";
import { checked, wanted } from "./checked.ts";
import { type Outcome, readFile } from "./course.ts";
import { didYouMean, quoted } from "./near.ts";
import { text } from "./schemas.ts";
import type { Path, ReadYaml } from "./yaml.ts";

export const noFacts: Facts = { title: "", owner: "", facts: {} };

/** An aeroplane: its numbers, and what drives each of its instruments. */
export interface Aircraft extends Facts {
  /** 'attitude' → 'vacuum', 'turn' → 'electrical', 'altitude' → 'static' … */
  readonly drives: Readonly<Record<string, string>>;
}

/** Numbers that chapters, figures and pages count on in every aircraft's file. */
export const neededOfAircraft = {
  stall: "kt",
  approach: "kt",
  climb: "kt",
  cruise: "kt",
  cruiseIas: "kt",
  cruiseAltitude: "ft",
  descent: "kt",
  descentRate: "ft/min",
  neverExceed: "kt",
  bankLimit: "deg",
  rollRate: "deg/s",
  extraLoad: "g",
  altitudeFrom: "ft",
  altitudeTo: "ft",
} as const;

const neededOfPlace = { elevation: "ft", latitude: "deg", variation: "deg", dip: "deg", floor: "ft" } as const;

const key = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*$/, "use letters and digits, a small letter first"));
const fact = v.lazy((input) => (typeof input === "number" ? v.number() : text));
const numbers = v.record(key, fact);
const place = v.strictObject({ title: text, owner: text, numbers });
const drive = v.picklist(
  ["vacuum", "electrical", "pitot-static", "static"],
  wanted("what drives the instrument", "Write vacuum, electrical, pitot-static or static."),
);
const instrument = v.picklist(
  ["attitude", "heading", "turn", "airspeed", "altitude", "verticalSpeed"],
  "name an instrument: attitude, heading, turn, airspeed, altitude or verticalSpeed",
);
const aircraft = v.strictObject({
  title: text,
  owner: text,
  numbers,
  phases: v.record(key, numbers),
  drives: v.record(instrument, drive),
});

/** Reads an aircraft's file (its head says how it is written); never throws. */
export function readAircraft(yaml: string, file: string): Outcome<Aircraft> {
  const { read, problems } = readFile(yaml, file);
  const result = checked(aircraft, read, file);
  if ("problems" in result) return { problems: [...problems, ...result.problems] };
  const { title, owner, numbers, phases, drives } = result.output;
  const facts = new FactReader(read, file);
  facts.add(numbers, ["numbers"], "");
  for (const [phase, each] of Object.entries(phases)) facts.add(each, ["phases", phase], `phases.${phase}.`);
  facts.need(neededOfAircraft);
  problems.push(...facts.problems);
  return problems.length > 0 ? { problems } : { value: { title, owner, facts: facts.facts, drives }, problems };
}

/** Reads a place's file; never throws. */
export function readPlace(yaml: string, file: string): Outcome<Facts> {
  const { read, problems } = readFile(yaml, file);
  const result = checked(place, read, file);
  if ("problems" in result) return { problems: [...problems, ...result.problems] };
  const facts = new FactReader(read, file);
  facts.add(result.output.numbers, ["numbers"], "");
  facts.need(neededOfPlace);
  problems.push(...facts.problems);
  const { title, owner } = result.output;
  return problems.length > 0 ? { problems } : { value: { title, owner, facts: facts.facts }, problems };
}

class FactReader {
  readonly facts: Record<string, Fact> = {};
  readonly problems: Problem[] = [];
  readonly #read: ReadYaml;
  readonly #file: string;

  constructor(read: ReadYaml, file: string) {
    this.#read = read;
    this.#file = file;
  }

  add(numbers: Readonly<Record<string, string | number>>, path: Path, prefix: string): void {
    for (const [key, written] of Object.entries(numbers)) {
      const found = factOf(written);
      if ("mend" in found) this.#report(this.#read.at([...path, key]), found.message, found.mend);
      else this.facts[prefix + key] = found;
    }
  }

  need(needed: Readonly<Record<string, string>>): void {
    for (const [key, unit] of Object.entries(needed)) {
      const found = this.facts[key];
      if (found?.unit === unit) continue;
      const at = this.#read.at(["numbers", key], found ? "value" : "key");
      const message = found
        ? `'${key}' should be in ${unit}, not in ${found.unit}.`
        : `There is no '${key}' among the numbers.`;
      if (found || !this.problems.some(({ line }) => line === at.line))
        this.#report(at, message, `Write '${key}: … ${unit}'.`);
    }
  }

  #report(at: { line: number; column: number }, message: string, mend: string): void {
    this.problems.push({ file: this.#file, ...at, message, mend });
  }
}

/** '95 kt' is a number with its unit, 95 a plain number, and in quotes anything is a word. */
function factOf(written: string | number): Fact | { message: string; mend: string } {
  if (typeof written === "number") return { value: written, unit: "plain" };
  const [, number, unit] = /^([-−]?\d+(?:\.\d+)?) (\S+)$/.exec(written) ?? [];
  if (number === undefined || unit === undefined) {
    if (/^\p{L}[\p{L} -]*$/u.test(written)) return { value: written, unit: "word" };
    return {
      message: `${quoted(written)} is neither a number with a unit nor a word.`,
      mend: "Write '95 kt', with one space, or a plain word.",
    };
  }
  if (!(units as readonly string[]).includes(unit))
    return { message: `${quoted(unit)} is no unit that the workbook knows.`, mend: didYouMean(unit, units) };
  return { value: Number(number.replace("−", "-")), unit };
}
