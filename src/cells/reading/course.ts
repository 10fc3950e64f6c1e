import * as v from "valibot";
import type { Problem } from "../problem.ts";
import { checked, wanted } from "./checked.ts";
import { text } from "./schemas.ts";
import { readable } from "./source.ts";
import { type ReadYaml, readYaml } from "./yaml.ts";

/** The parts and chapters of a course, in their order. */
export interface Course {
  readonly parts: readonly Part[];
}

export interface Part {
  readonly title: string;
  readonly chapters: readonly CourseChapter[];
}

export interface CourseChapter {
  /** Counted through all parts, from 1. */
  readonly number: number;
  /** The file's name without its ending. */
  readonly name: string;
  readonly title: string;
  /** False where the chapter has no file yet. */
  readonly written: boolean;
}

/** What was read of a file of the course, and every mistake in it; `value` is missing where it can't be used. */
export interface Outcome<Value> {
  readonly value?: Value;
  readonly problems: readonly Problem[];
}

const name = v.pipe(
  v.string(),
  v.regex(
    /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/,
    wanted("a file's name", "Use small letters, digits and hyphens, without '.md'."),
  ),
);
const chapter = v.strictObject({ name, title: text, written: v.optional(v.boolean(), false) });
const part = v.strictObject({ title: text, chapters: v.pipe(v.array(chapter), v.minLength(1)) });
const course = v.strictObject({ parts: v.pipe(v.array(part), v.minLength(1)) });

/** Reads course.yaml; never throws. */
export function readCourse(yaml: string, file: string): Outcome<Course> {
  const { read, problems } = readFile(yaml, file);
  const result = checked(course, read, file);
  if ("problems" in result) return { problems: [...problems, ...result.problems] };
  let number = 0;
  const seen = new Set<string>();
  const parts = result.output.parts.map(({ title, chapters }, i) => ({
    title,
    chapters: chapters.map((each, j): CourseChapter => {
      if (seen.has(each.name)) problems.push(twice(each.name, read.at(["parts", i, "chapters", j, "name"]), file));
      seen.add(each.name);
      number++;
      return { number, ...each };
    }),
  }));
  return problems.length > 0 ? { problems } : { value: { parts }, problems };
}

/** A whole file of YAML. */
export function readFile(yaml: string, file: string): { read: ReadYaml; problems: Problem[] } {
  const { source, problems } = readable(typeof yaml === "string" ? yaml : "", file);
  return { read: readYaml(source.text, { file, line: 1, column: 1 }), problems };
}

const twice = (name: string, at: { line: number; column: number }, file: string): Problem => ({
  file,
  ...at,
  message: `The chapter '${name}' stands in the course twice.`,
  mend: "Delete one of the two.",
});
