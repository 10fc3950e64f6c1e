import dunlinText from "../../chapters/aircraft/dunlin.yaml?raw";
import courseText from "../../chapters/course.yaml?raw";
import glossaryText from "../../chapters/glossary.md?raw";
import saltmarshText from "../../chapters/place/saltmarsh.yaml?raw";
import { figures } from "./figures.ts";
import type { Known } from "./known.ts";
import type { Problem } from "./problem.ts";
import { type Course, readCourse } from "./reading/course.ts";
import { readGlossary } from "./reading/glossary.ts";
import { noFacts, readAircraft, readPlace } from "./reading/school.ts";
import type { Aircraft, School } from "./school/index.ts";

export type { Course, CourseChapter, Part } from "./reading/course.ts";
export { readCourse } from "./reading/course.ts";
export { readGlossary } from "./reading/glossary.ts";
export { readAircraft, readPlace, readSchool } from "./reading/school.ts";
export type { Aircraft, School, Technique } from "./school/index.ts";

const course = readCourse(courseText, "chapters/course.yaml");
const aircraft = readAircraft(dunlinText, "chapters/aircraft/dunlin.yaml");
const home = readPlace(saltmarshText, "chapters/place/saltmarsh.yaml");
const glossary = readGlossary(glossaryText, "chapters/glossary.md");

/** The parts and chapters of the built-in course, in their order. */
export const builtInCourse: Course = course.value ?? { parts: [] };

/** The trainer of the built-in course: its numbers and what drives its instruments. */
export const dunlin: Aircraft = aircraft.value ?? { ...noFacts, drives: {}, manual: "" };

/** The built-in school: the Dunlin at Saltmarsh. Missing where one of its files has a mistake, which then fails the build. */
export const builtInSchool: School | undefined = home.value && aircraft.value && { ...home.value, aircraft: dunlin };

/** What a chapter of the built-in course may refer to. */
export const builtIn: Known = {
  aircraft: dunlin,
  place: home.value?.place ?? noFacts,
  technique: home.value?.technique ?? noFacts,
  terms: glossary.value ?? [],
  figures,
  chapters: builtInCourse.parts.flatMap((part) =>
    part.chapters.filter(({ written }) => written).map(({ name }) => name),
  ),
};

/** Mistakes in the built-in course's own files: none, or the build fails. */
export const builtInProblems: readonly Problem[] = [course, aircraft, home, glossary].flatMap(
  ({ problems }) => problems,
);
