import type { Argument, Formula } from "../../calc/index.ts";
import { calculatorOf } from "./fields.ts";
import type { Values } from "./likeness.ts";
import { workingFor } from "./working.ts";

/** Every letter and right side, as TeX, that the workings of these formulas can show, whatever words are chosen. */
export function workingTex(formulas: readonly Formula[]): string[] {
  const found = new Set<string>();
  for (const formula of formulas)
    for (const values of choicesOf(formula))
      for (const { symbol, tex } of workingFor(formula, values)) {
        if (symbol) found.add(symbol);
        if (tex) found.add(tex);
      }
  return [...found];
}

/** The examples, with every word each choice offers; units, which only `convert` takes, as they are. */
function choicesOf(formula: Formula): Values[] {
  const { fields } = calculatorOf(formula, [formula]);
  return fields.reduce<Map<string, number | string>[]>(
    (all, { key, argument }) =>
      all.flatMap((values) => offered(argument).map((value) => new Map(values).set(key, value))),
    [new Map()],
  );
}

const offered = ({ options, example }: Argument): readonly (number | string)[] =>
  options && options.length <= 6 ? options : [example];
