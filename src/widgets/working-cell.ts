import { OutOfRange } from "../calc/limits.ts";
import type { WorkingCell, WorkingStep } from "../cells/chapter.ts";
import { evaluate, parseExpression, type Value } from "../cells/expressions/index.ts";
import { type Row, workingOf } from "../cells/workings.ts";
import { escaped } from "./escaped.ts";
import { rowHtml, type Typeset } from "./working-rows.ts";

/** Gives the value of a name, or nothing where there is no such name. */
export type ValueOf = (name: string) => Value | undefined;

/** A step's rows, or what kept them from being worked. */
export type WorkedStep = readonly Row[] | OutOfRange;

/** A worked example as built; the element fills other numbers into it. */
export function workingShell(cell: WorkingCell, worked: readonly WorkedStep[], typeset: Typeset): string {
  const rows = worked.flatMap((rowsOfStep, step) =>
    rowsOfStep instanceof OutOfRange
      ? []
      : rowsOfStep.map((row) => rowHtml(row, (tex) => typeset(`\\displaystyle ${tex}`), step)),
  );
  const label = `${cell.id}-label`;
  return `<working-cell class="worked" id="${cell.id}" data-steps="${escaped(JSON.stringify(cell.steps))}"><p class="label" id="${label}">Worked example<span class="soft">${escaped(cell.of)}</span></p><ol class="steps" aria-labelledby="${label}">${rows.join("")}</ol></working-cell>`;
}

/**
 * The rows of each step at the present values. A named step's result serves the steps after it; a step beyond the
 * range of its formula is given as that, and so is every step that uses it.
 */
export function workingRows(steps: readonly WorkingStep[], named: ValueOf): WorkedStep[] {
  const results = new Map<string, Value | OutOfRange>();
  const scope: ValueOf = (name) => {
    const result = results.get(name);
    if (result instanceof OutOfRange) throw result;
    return result ?? named(name);
  };
  const seen = new Set<string>();
  return steps.map((step) => {
    const worked = attempt(() => ({ rows: stepRows(step, scope), value: evaluate(parseExpression(step.is), scope) }));
    if (step.name) results.set(step.name, worked instanceof OutOfRange ? worked : worked.value);
    return worked instanceof OutOfRange ? worked : onceEach(worked.rows, seen);
  });
}

/**
 * What an earlier step has worked out isn't worked out again: its row stays, since other numbers may tell the two
 * apart, and is idle. A step's last row is its result and always shows.
 */
function onceEach(rows: readonly Row[], seen: Set<string>): Row[] {
  return rows.map((row, at) => {
    const key = [row.symbol, row.tex, row.numbers].join("\n");
    const repeats = row.numbers !== "" && seen.has(key) && at < rows.length - 1;
    if (!row.idle) seen.add(key);
    return repeats ? { ...row, idle: true } : row;
  });
}

const stepRows = ({ is, unit, digits, what, symbol, tex }: WorkingStep, scope: ValueOf): Row[] =>
  workingOf(is, unit, digits, what, scope, { ...(symbol && { symbol }), ...(tex && { tex }) });

function attempt<T>(work: () => T): T | OutOfRange {
  try {
    return work();
  } catch (error) {
    if (error instanceof OutOfRange) return error;
    throw error;
  }
}
