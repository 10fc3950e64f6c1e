import type { ExpressionError } from "../expressions/index.ts";
import type { Position, Problem } from "../problem.ts";
import { sentence } from "../reading/expression.ts";
import type { Path, ReadYaml } from "../reading/yaml.ts";

/** Collects what is wrong with an exercise, each mistake at its place. */
export class Report {
  readonly problems: Problem[] = [];
  readonly #fence: ReadYaml;
  readonly #file: string;

  constructor(fence: ReadYaml, file: string) {
    this.#fence = fence;
    this.#file = file;
  }

  /** A mistake in the value at a path. */
  at(path: Path, message: string, mend: string): undefined {
    return this.#add(this.#fence.at(path, "value"), message, mend);
  }

  /** A mistake in the key at a path. */
  atKey(path: Path, message: string, mend: string): undefined {
    return this.#add(this.#fence.at(path, "key"), message, mend);
  }

  /** A mistake at a character of the text at a path. */
  within(path: Path, offset: number, message: string, mend: string): undefined {
    return this.#add(this.#fence.within(path, offset), message, mend);
  }

  /** A mistake within the expression at a path. */
  inExpression(path: Path, { at, message, mend }: ExpressionError): undefined {
    return this.within(path, at, message, mend);
  }

  #add({ line, column }: Position, message: string, mend: string): undefined {
    this.problems.push({ file: this.#file, line, column, message: sentence(message), mend: sentence(mend) });
    return undefined;
  }
}
