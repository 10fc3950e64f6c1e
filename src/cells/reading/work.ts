import * as v from "valibot";
import { catalogue } from "../../calc/index.ts";
import type { Given, Work } from "../chapter.ts";
import type { Node, Value } from "../expressions/index.ts";
import { factNamed } from "../facts.ts";
import type { Draft } from "./draft.ts";
import { type Names, readExpression } from "./expression.ts";
import { isFit } from "./names.ts";
import { work as workSchema } from "./schemas.ts";
import { isDirection } from "./sheet.ts";
import type { ReadYaml } from "./yaml.ts";

type Entry = v.InferOutput<typeof workSchema>;

/** Without a complaint of unknown keys, which the whole front matter's schema makes. */
const shapeOfWork = v.object(workSchema.entries);

/**
 * The quantities that follow, in their order, tried with the givens' values; those with a problem are left out.
 *
 * @param declared the names of all givens, sound or not
 */
export function readWork(
  entries: Readonly<Record<string, unknown>>,
  given: readonly Given[],
  declared: readonly string[],
  read: ReadYaml,
  draft: Draft,
): { work: Work[]; values: Map<string, Value> } {
  const values = new Map<string, Value>(given.map(({ name, value }) => [name, value]));
  const unitsByName = new Map(given.map(({ name, unit }) => [name, unit]));
  const seen = new Set<string>(declared);
  const names = namesOf(unitsByName, values, draft, {
    isBroken: (name) => seen.has(name) && !values.has(name),
    isLater: (name) => Object.hasOwn(entries, name) && !seen.has(name) && !values.has(name),
  });
  const work: Work[] = [];
  for (const [name, entry] of Object.entries(entries)) {
    const found = readOne(name, entry, names, read, draft);
    seen.add(name);
    if (!found) continue;
    work.push(found.work);
    values.set(name, found.value);
    unitsByName.set(name, found.work.unit);
  }
  return { work, values };
}

/** What names stand for: quantities by their maps, and the facts of aircraft, place and technique. */
export function namesOf(
  unitsByName: ReadonlyMap<string, string>,
  values: ReadonlyMap<string, Value>,
  draft: Draft,
  rest: Pick<Names, "isBroken" | "isLater">,
): Names {
  return {
    unitOf: (name) => unitsByName.get(name) ?? factNamed(name, draft.known)?.unit,
    valueOf: (name) => (values.has(name) ? values.get(name) : factNamed(name, draft.known)?.value),
    ...rest,
  };
}

function readOne(name: string, entry: unknown, names: Names, read: ReadYaml, draft: Draft) {
  const fit = isFit(name, "work", read, draft);
  const shape = v.safeParse(shapeOfWork, entry);
  if (!fit || !shape.success) return undefined;
  if (names.valueOf(name) !== undefined) {
    draft.add(read.at(["work", name], "key"), `'${name}' is given already.`, "Choose another name for what follows.");
    return undefined;
  }
  const { is, unit } = shape.output;
  const result = readExpression(is, unit, names, draft.budget, (at, message, mend) =>
    draft.add(read.within(["work", name, "is"], at), message, mend),
  );
  const digits = digitsOf(name, shape.output, read, draft);
  if (!result || digits === undefined) return undefined;
  return { work: built(name, shape.output, digits, result.node), value: result.value };
}

function digitsOf(name: string, { digits, unit }: Entry, read: ReadYaml, draft: Draft): number | undefined {
  if (digits !== undefined) return digits;
  if (unit === "word") return 0;
  draft.add(
    read.at(["work", name], "key"),
    `'work.${name}' lacks its 'digits'.`,
    "Add 'digits:', the digits shown after the point.",
  );
  return undefined;
}

function built(name: string, { is, unit, label }: Entry, digits: number, node: Node): Work {
  const formula = node.kind === "call" ? catalogue.find((each) => each.name === node.name) : undefined;
  const field = node.kind === "call" ? node.field : undefined;
  const words = formula && field === undefined ? formula.words : spaced(name);
  const circle = formula !== undefined && unit === "deg" && isDirection(formula, field);
  return { name, is, unit, digits, label: label ?? capital(words), circle };
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** 'tailReach' → 'tail reach'. */
const spaced = (name: string) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
