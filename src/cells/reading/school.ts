import * as v from "valibot";
import type { Facts } from "../known.ts";
import type { Problem } from "../problem.ts";
import {
  type Aircraft,
  checkEntries,
  type Field,
  type Finding,
  fields,
  implausible,
  readEntries,
  type School,
  schoolOf,
  type Technique,
  VERSION,
} from "../school/index.ts";
import { aircraftOf } from "../school/school.ts";
import { checked } from "./checked.ts";
import { type Outcome, readFile } from "./course.ts";
import { quoted } from "./near.ts";
import { text } from "./schemas.ts";
import type { ReadYaml } from "./yaml.ts";

export const noFacts: Facts = { title: "", owner: "", facts: {} };

/** Where a school flies, and how. */
export interface Home {
  readonly place: Facts;
  readonly technique: Technique;
  readonly words: School["words"];
}

/** Reads a school's own file: aircraft, place, technique and words. Never throws. */
export function readSchool(yaml: string, file: string): Outcome<School> {
  const { read, entries, problems, report } = new FileReader(yaml, file, fields, (path) => path).parts();
  if (!read || problems.length > 0) return { problems };
  const { school, findings } = checkEntries(entries, true);
  return school ? { value: school, problems } : { problems: inOrder(findings.map(report)) };
}

/** Reads an aircraft's file, the same form with its keys at the margin. Never throws. */
export function readAircraft(yaml: string, file: string): Outcome<Aircraft> {
  const own = fields.filter(({ path }) => path[0] === "aircraft");
  const { read, entries, problems, report } = new FileReader(yaml, file, own, (path) => path.slice(1)).parts();
  if (!read || problems.length > 0) return { problems };
  const { values, findings } = readEntries(own, entries, true);
  const all = [...findings, ...implausible(values)].map(report);
  return all.length > 0 ? { problems: inOrder(all) } : { value: aircraftOf(values), problems };
}

/** Reads a place's file, with the technique and the words of whoever flies there. Never throws. */
export function readPlace(yaml: string, file: string): Outcome<Home> {
  const own = fields.filter(({ path }) => path[0] !== "aircraft");
  const shorter = (path: Field["path"]) => (path[0] === "place" ? path.slice(1) : path);
  const { read, entries, problems, report } = new FileReader(yaml, file, own, shorter).parts();
  if (!read || problems.length > 0) return { problems };
  const { values, findings } = readEntries(own, entries, true);
  const all = [...findings, ...implausible(values)].map(report);
  if (all.length > 0) return { problems: inOrder(all) };
  const { place, technique, words } = schoolOf(values);
  return { value: { place, technique, words }, problems };
}

/** Takes the entries of some fields out of a file, and knows where each stands. */
class FileReader {
  readonly #file: string;
  readonly #fields: readonly Field[];
  readonly #place: (path: Field["path"]) => Field["path"];
  readonly #read: ReadYaml;
  readonly #early: readonly Problem[];

  constructor(yaml: string, file: string, own: readonly Field[], place: (path: Field["path"]) => Field["path"]) {
    const { read, problems } = readFile(yaml, file);
    this.#file = file;
    this.#fields = own;
    this.#place = place;
    this.#read = read;
    this.#early = problems;
  }

  parts() {
    const report = (finding: Finding): Problem => this.#problemOf(finding);
    const version = this.#versionProblem();
    if (version) return { entries: {}, problems: [...this.#early, version], report };
    const shape = structureOf(this.#fields.map((field) => ({ field, path: this.#place(field.path) })));
    const result = checked(v.strictObject({ version: v.number(), ...shape }), this.#read, this.#file);
    if ("problems" in result) return { entries: {}, problems: inOrder([...this.#early, ...result.problems]), report };
    return { read: this.#read, entries: this.#entries(), problems: this.#early, report };
  }

  /** A file of another version may mean something else by every key: nothing more is said of it. */
  #versionProblem(): Problem | undefined {
    const { value } = this.#read;
    if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
    const { version } = value as { version?: unknown };
    if (version === VERSION) return undefined;
    const at = this.#read.at(["version"]);
    const mend = `Write 'version: ${VERSION}' if the file is filled in as this edition’s export is; else export it anew.`;
    if (version === undefined)
      return { file: this.#file, ...at, message: "The file doesn’t say of which version it is.", mend };
    const message = `The file is of version ${quoted(String(version))}; this edition of the workbook reads version ${VERSION}.`;
    return { file: this.#file, ...at, message, mend };
  }

  #entries(): Record<string, string> {
    const entries = this.#fields.flatMap(({ id, path }): [string, string][] => {
      const value = this.#place(path).reduce<unknown>(
        (around, key) => (around as Record<string, unknown> | undefined)?.[key],
        this.#read.value,
      );
      if (value === undefined) return [];
      return [[id, Array.isArray(value) ? value.join("\n") : String(value)]];
    });
    return Object.fromEntries(entries);
  }

  #problemOf({ field, message, mend }: Finding): Problem {
    const path = this.#fields.find(({ id }) => id === field)?.path;
    return { file: this.#file, ...this.#read.at(path ? this.#place(path) : []), message, mend };
  }
}

interface Placed {
  readonly field: Field;
  readonly path: readonly string[];
}

/** A schema's entries for fields at their places: maps within maps, each strict. */
function structureOf(placed: readonly Placed[]): Record<string, v.GenericSchema> {
  const keys = [...new Set(placed.map(({ path }) => path[0]!))];
  return Object.fromEntries(
    keys.map((key) => {
      const under = placed.filter(({ path }) => path[0] === key);
      const leaf = under.find(({ path }) => path.length === 1)?.field;
      if (leaf) return [key, leafOf(leaf)];
      return [key, v.strictObject(structureOf(under.map(({ field, path }) => ({ field, path: path.slice(1) }))))];
    }),
  );
}

function leafOf({ kind, optional }: Field): v.GenericSchema {
  if (kind === "list") return v.array(text);
  const written = v.lazy((input) => (typeof input === "number" ? v.number() : text));
  return optional ? v.optional(written) : written;
}

const inOrder = (problems: readonly Problem[]): readonly Problem[] =>
  problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
