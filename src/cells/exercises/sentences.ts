import { nearest } from "../reading/near.ts";
import type { Path } from "../reading/yaml.ts";
import { holesIn } from "./fill.ts";
import type { Names } from "./names.ts";
import type { Report } from "./report.ts";
import type { Written } from "./shape.ts";

/** A sentence of an exercise, and where it stands. */
export interface Sentence {
  readonly text: string;
  readonly path: Path;
  /** True where `{answer}` may stand: the reader sees it after her reply. */
  readonly after: boolean;
}

/** Every sentence of an exercise that may have holes. */
export function sentencesOf(written: Written): Sentence[] {
  const before = (text: string, ...path: Path): Sentence => ({ text, path, after: false });
  const after = (text: string, ...path: Path): Sentence => ({ text, path, after: true });
  return [
    before(written.ask, "ask"),
    ...written.hints.map((hint, at) => before(hint, "hints", at)),
    after(written.why ?? "", "why"),
    ...("slips" in written ? written.slips.map(({ say }, at) => after(say, "slips", at, "say")) : []),
    ...(written.kind === "choice"
      ? Object.entries(written.options).flatMap(([key, { text, say }]) => [
          before(text, "options", key, "text"),
          after(say ?? "", "options", key, "say"),
        ])
      : []),
    ...(written.kind === "order" ? Object.entries(written.items).map(([key, text]) => before(text, "items", key)) : []),
  ];
}

/** Reports every hole that nothing can fill. */
export function checkHoles(written: Written, names: Names, report: Report): void {
  for (const { text, path, after } of sentencesOf(written)) {
    for (const { name, at } of holesIn(text)) {
      if (names.measureOf(name) || (name === "answer" && after && written.kind === "number")) continue;
      report.within(path, at, `{${name}} stands for nothing here`, mendOf(name, names));
    }
  }
}

function mendOf(name: string, names: Names): string {
  if (name === "answer") return "the answer may stand in say and why of a number exercise only";
  if (names.workOf(name) !== undefined)
    return "a question prints drawn and given numbers only: their formula may stand in answer";
  const near = nearest(name, names.all());
  return near === undefined ? "draw it, or give it in the chapter" : `did you mean {${near}}?`;
}

/** Reports drawn numbers that decide the answer and that the reader isn't told. */
export function checkTold(written: Written, names: Names, deciding: readonly string[], report: Report): void {
  const shown = sentencesOf(written).filter(
    ({ path }) => path[0] === "ask" || path[0] === "options" || path[0] === "items",
  );
  const told = new Set(shown.flatMap(({ text }) => holesIn(text).map(({ name }) => name)));
  const untold = [...names.behind(deciding)].filter((name) => Object.hasOwn(written.draw, name) && !told.has(name));
  for (const name of untold) {
    report.at(["ask"], `the answer depends on ${name}, which the question never mentions`, `write {${name}} in ask`);
  }
}
