import type { Budget } from "./budget.ts";
import type { Mistake } from "./lexemes.ts";
import { limits } from "./limits.ts";
import { Nesting } from "./nesting.ts";

/** The first thing in a piece of Markdown that the lexer must not be given: it would take too long over it. */
export function excessOf(markdown: string, budget: Budget): Mistake | undefined {
  const nesting = new Nesting();
  const paragraph = new Paragraph(budget);
  let at = 0;
  for (const line of markdown.split("\n")) {
    const found = nesting.tooDeep(line) ? tooDeep : paragraph.line(line);
    if (found) return { at, ...found };
    at += line.length + 1;
  }
  return undefined;
}

type Words = Omit<Mistake, "at">;

const tooDeep: Words = {
  message: "Lists and quotes stand too deep inside each other here.",
  mend: `Nest ${limits.nesting} of them at most.`,
};
const tooLong: Words = {
  message: `A paragraph, list or table runs on for more than ${limits.paragraph.toLocaleString("en-GB")} characters.`,
  mend: "Divide it with a blank line.",
};
const tooMany: Words = {
  message: "Too many brackets, stars, backticks, short lines and the like stand up to here.",
  mend: "Write plainer sentences in longer lines, or divide the chapter.",
};
const tooWide: Words = {
  message: `A table has more than ${limits.tableColumns} columns.`,
  mend: "Divide it into narrower tables.",
};
const tooLarge: Words = {
  message: `The tables of this chapter hold more than ${limits.tableCells.toLocaleString("en-GB")} cells.`,
  mend: "Shorten them.",
};

const signs = /[[\]()*_`<>!$\\{&|~"']/g;
/** A line costs the lexer about what two signs do. */
const LINE = 2;

/** A table's second line, whatever list or quote it stands in: it errs towards seeing a table. */
const tableLine = /^(?=[^-]*-)(?=[^|:]*[|:])[-:|\s>*+\d.)]*$/;

/** Lines without a blank one between. */
class Paragraph {
  readonly #budget: Budget;
  #length = 0;
  #signs = 0;
  #columns = 0;

  constructor(budget: Budget) {
    this.#budget = budget;
  }

  line(line: string): Words | undefined {
    if (line.trim() === "") {
      this.#length = this.#signs = this.#columns = 0;
      return undefined;
    }
    const count = LINE + (line.match(signs)?.length ?? 0);
    this.#length += line.length + 1;
    this.#signs += count;
    if (this.#length > limits.paragraph) return tooLong;
    if (this.#signs > limits.signs || !this.#budget.spend("allSigns", count)) return tooMany;
    return this.#table(line);
  }

  #table(line: string): Words | undefined {
    if (tableLine.test(line)) this.#columns = line.split("|").length;
    if (this.#columns > limits.tableColumns + 2) return tooWide;
    return this.#budget.spend("tableCells", this.#columns) ? undefined : tooLarge;
  }
}
