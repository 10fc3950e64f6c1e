import * as v from "valibot";
import type { Objective } from "../chapter.ts";
import { checked } from "./checked.ts";
import type { Draft } from "./draft.ts";
import { readGiven } from "./given.ts";
import { readInline } from "./inline.ts";
import { limits } from "./limits.ts";
import { quoted } from "./near.ts";
import { frontMatter } from "./schemas.ts";
import { emptySheet, type Sheet } from "./sheet.ts";
import { readWork } from "./work.ts";
import type { ReadYaml } from "./yaml.ts";

/** The front matter; where it has problems, what is sound of it. */
export function readFront(read: ReadYaml, draft: Draft): Sheet {
  draft.problems.push(...read.problems);
  const { value } = read;
  if (value === undefined) return emptySheet;
  if (!isMap(value)) {
    draft.add(
      read.at([]),
      "The front matter is no list of keys.",
      "Write 'title: …' and the other keys, one to a line.",
    );
    return emptySheet;
  }
  const result = checked(frontMatter, read, draft.source.file);
  if ("problems" in result) draft.problems.push(...result.problems);
  const meta = soundMeta(value);
  checkObjectives(meta, read, draft);
  readSources(meta.sources, read, draft);
  const objectivesAt = new Map(meta.objectives.map(({ code }) => [code, read.at(["objectives", code], "key")]));
  return { meta, objectivesAt, ...readQuantities(value, read, draft), readable: true };
}

function readQuantities(value: Entries, read: ReadYaml, draft: Draft) {
  const [givenEntries, workEntries] = [mapAt(value, "given"), mapAt(value, "work")];
  const names = new Set([...Object.keys(givenEntries), ...Object.keys(workEntries)]);
  for (const part of ["given", "work"]) {
    if (Object.keys(mapAt(value, part)).length <= limits.quantities) continue;
    draft.add(
      read.at([part], "key"),
      `'${part}' names more than ${limits.quantities} quantities.`,
      "Divide the chapter.",
    );
    return { given: [], work: [], names, broken: names, values: emptySheet.values };
  }
  const given = readGiven(givenEntries, read, draft);
  const { work, values } = readWork(workEntries, given, Object.keys(givenEntries), read, draft);
  const broken = new Set([...names].filter((name) => !values.has(name)));
  return { given, work, names, broken, values };
}

type Entries = Readonly<Record<string, unknown>>;

const isMap = (value: unknown): value is Entries =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const mapAt = (value: Entries, key: string): Entries => {
  const part = value[key];
  return isMap(part) ? part : {};
};

type Parts = v.InferOutput<typeof frontMatter>;

function soundMeta(value: Entries): Sheet["meta"] {
  const part = <Key extends keyof Parts>(key: Key, fallback: NonNullable<Parts[Key]>) => {
    const result = v.safeParse(frontMatter.entries[key], value[key]);
    return result.success ? ((result.output as Parts[Key]) ?? fallback) : fallback;
  };
  const objectives = Object.entries(part("objectives", {}));
  return {
    title: part("title", ""),
    code: part("code", ""),
    summary: part("summary", ""),
    minutes: part("minutes", 0),
    objectives: objectives.map(([code, text]): Objective => ({ code, text })),
    sources: part("sources", []),
  };
}

function checkObjectives({ code, objectives }: Sheet["meta"], read: ReadYaml, draft: Draft): void {
  for (const { code: own } of objectives) {
    if (code === "" || new RegExp(`^${code}-[1-9]\\d?$`).test(own)) continue;
    draft.add(
      read.at(["objectives", own], "key"),
      `${quoted(own)} is no code of an objective of this chapter.`,
      `Number them ${code}-1, ${code}-2 and so on.`,
    );
  }
}

function readSources(sources: readonly string[], read: ReadYaml, draft: Draft): void {
  for (const [i, source] of sources.entries()) {
    const scope = draft.scope((offset) => read.within(["sources", i], offset), { withoutLive: "a source" });
    draft.problems.push(...readInline(source, scope).problems);
  }
}
