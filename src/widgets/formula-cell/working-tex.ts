import { type Argument, type Formula, OutOfRange } from "../../calc/index.ts";
import type { Row } from "../../cells/workings.ts";
import { calculatorOf } from "./fields.ts";
import type { Values } from "./likeness.ts";
import { workingFor } from "./working.ts";

/** How far an example is moved, up and down, to meet the rows of a working that its own numbers don't show. */
const MOVED = [0.5, 1.5];

/** Every letter and right side, as TeX, that the workings of these formulas show, whatever words are chosen. */
export function workingTex(formulas: readonly Formula[]): string[] {
  const rows = formulas.flatMap((formula) => trials(formula).flatMap((values) => rowsAt(formula, values)));
  return [...new Set(rows.flatMap(({ symbol, tex }) => [symbol, tex]).filter((each) => each !== undefined))];
}

/** The examples with every word each choice offers, and with each number moved in its turn. */
function trials(formula: Formula): Values[] {
  const { fields } = calculatorOf(formula, [formula]);
  const chosen = fields.reduce<Map<string, number | string>[]>(
    (all, { key, argument }) =>
      all.flatMap((values) => offered(argument).map((value) => new Map(values).set(key, value))),
    [new Map()],
  );
  const moved = fields.flatMap(({ key, argument: { example } }) =>
    typeof example === "number" ? MOVED.map((by) => ({ key, value: example * by })) : [],
  );
  return [...chosen, ...chosen.flatMap((values) => moved.map(({ key, value }) => new Map(values).set(key, value)))];
}

/** A few words all; units, which only `convert` takes, as they are. */
const offered = ({ options, example }: Argument): readonly (number | string)[] =>
  options && options.length <= 6 ? options : [example];

function rowsAt(formula: Formula, values: Values): Row[] {
  try {
    return workingFor(formula, values);
  } catch (error) {
    if (error instanceof OutOfRange) return [];
    throw error;
  }
}
