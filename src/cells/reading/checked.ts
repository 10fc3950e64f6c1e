import * as v from "valibot";
import type { Problem } from "../problem.ts";
import { expectationOf } from "./expectation.ts";
import { didYouMean, quoted } from "./near.ts";
import { strangeKeys } from "./strange-keys.ts";
import type { Path, ReadYaml } from "./yaml.ts";

type Read = Pick<ReadYaml, "value" | "problems" | "at">;
type Words = Pick<Problem, "message" | "mend">;

/**
 * The message argument of a schema: what is wanted ('a whole number of minutes'), and how to mend it. A message of one
 * line is taken for the mend alone.
 */
export const wanted = (what: string, mend: string): string => `${what}\n${mend}`;

/**
 * What a schema makes of a piece of YAML, or every mistake in it at its place and in an author's words. On a line where
 * the YAML itself has a mistake, the schema's complaints follow from it and are left out.
 */
export function checked<const Schema extends v.GenericSchema>(
  schema: Schema,
  read: Read,
  file: string,
): { output: v.InferOutput<Schema> } | { problems: readonly Problem[] } {
  if (read.value === undefined) return { problems: read.problems };
  const result = v.safeParse(schema, read.value);
  if (result.success && read.problems.length === 0) return { output: result.output };
  const issues = (result.issues ?? []).filter((issue) => !isStrange(issue));
  const strange = strangeKeys(schema, read.value).map(({ path, known }) => ({
    file,
    ...read.at(path, "key"),
    ...unknownKey(String(path.at(-1)), known),
  }));
  const told = new Set(read.problems.map(({ line }) => line));
  const rest = issues.flatMap((issue) => {
    const problem = problemOf(issue, read, file);
    return isMissing(issue) || !told.has(problem.line) ? [problem] : [];
  });
  return { problems: [...read.problems, ...strange, ...rest] };
}

type Issue = v.BaseIssue<unknown>;

const isStrange = (issue: Issue) => issue.type === "strict_object" && issue.expected === "never";

const isMissing = ({ type, path, received }: Issue) =>
  type.endsWith("object") && received === "undefined" && path?.at(-1)?.origin === "key";

function problemOf(issue: Issue, read: Read, file: string): Problem {
  const path = (issue.path ?? []).map(({ key }) => key as string | number);
  const ofKey = issue.path?.at(-1)?.origin === "key";
  if (isMissing(issue)) return { file, ...read.at(path.slice(0, -1), "key"), ...missingKey(path) };
  return { file, ...read.at(path, ofKey ? "key" : "value"), ...wordsOf(issue, path) };
}

const unknownKey = (key: string, known: readonly string[]): Words => ({
  message: `There is no key ${quoted(key)} here.`,
  mend: didYouMean(key, known),
});

function missingKey(path: Path): Words {
  const around = path.slice(0, -1).join(".");
  const key = String(path.at(-1));
  return {
    message: around ? `'${around}' lacks its '${key}'.` : `There is no '${key}'.`,
    mend: `Add '${key}:' with its value.`,
  };
}

function wordsOf(issue: Issue, path: Path): Words {
  const name = path.length > 0 ? `'${path.join(".")}'` : "This";
  const [what = "", mend] = issue.message.split("\n");
  if (mend) return { message: `${name} should be ${what}${insteadOf(issue)}.`, mend };
  if (!what.startsWith("Invalid "))
    return { message: `${name} isn't as it should be${insteadOf(issue)}.`, mend: sentence(what) };
  const { kind, advice } = expectationOf(issue);
  return { message: `${name} should be ${kind}${insteadOf(issue)}.`, mend: advice };
}

function sentence(words: string): string {
  const capital = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.?!]$/.test(capital) ? capital : `${capital}.`;
}

function insteadOf({ input }: Issue): string {
  if (typeof input === "string") return `, not ${quoted(input)}`;
  return typeof input === "number" || typeof input === "boolean" ? `, not ${input}` : "";
}
