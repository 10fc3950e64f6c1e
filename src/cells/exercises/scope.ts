import { evaluate, parseExpression, type Value } from "../expressions/index.ts";
import { factNamed } from "../facts.ts";
import type { Fact } from "../known.ts";
import { printed } from "../printed.ts";
import type { Exercise, Measured } from "./exercise.ts";
import type { Given, Settings } from "./question.ts";
import { decimalsOf } from "./seed.ts";
import { converted } from "./spelling.ts";

/** Every name the exercise uses with its value: drawn ones first, then the settings', then as it was read. */
export function givenOf(exercise: Exercise, drawn: Given, { values, ...rooms }: Settings): Given {
  const own = (from: Given | undefined, name: string) => (from && Object.hasOwn(from, name) ? from[name] : undefined);
  const fact = (name: string): number | string | undefined => {
    const present = factNamed(name, rooms);
    const read = exercise.facts[name];
    return present && read ? inUnit(present, read.unit) : (present ?? read)?.value;
  };
  const standing = (name: string) =>
    own(drawn, name) ?? (name.includes(".") ? fact(name) : (own(values, name) ?? own(exercise.values, name)));
  const entries = Object.keys(exercise.measures).map((name) => [name, standing(name)] as const);
  return Object.fromEntries(entries.filter((entry): entry is [string, number | string] => entry[1] !== undefined));
}

/** What a name stands for in the exercise's expressions; the chapter's computed quantities follow the numbers given. */
export function scopeOf({ work }: Pick<Exercise, "work">, given: Given): (name: string) => Value | undefined {
  return function standing(name) {
    if (Object.hasOwn(given, name)) return given[name];
    return Object.hasOwn(work, name) ? evaluate(parseExpression(work[name]!.is), standing) : undefined;
  };
}

/** A given number or word as a sentence shows it; a number keeps every digit it has, so that the reader can compute with it. */
export function shown(value: number | string, measure: Measured): string {
  if (typeof value === "string") return value;
  return printed(value, { ...measure, digits: Math.max(measure.digits, Math.min(decimalsOf(value), 6)) });
}

const inUnit = ({ value, unit }: Fact, wanted: string): number | string =>
  typeof value === "number" ? converted(value, unit, wanted) : value;
