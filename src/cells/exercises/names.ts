import { OutOfRange } from "../../calc/index.ts";
import type { Given as ChapterGiven, Work } from "../chapter.ts";
import { ExpressionError, evaluate, namesIn, parseExpression, type Value } from "../expressions/index.ts";
import { factNamed, factNames, type RoomsOfFacts } from "../facts.ts";
import type { Fact } from "../known.ts";
import type { Computed, Draw, Measured } from "./exercise.ts";
import { decimalsOf } from "./seed.ts";

/** A quantity of the chapter: a given has a value, a computed one an expression. */
export type SheetEntry = Pick<ChapterGiven | Work, "name" | "label" | "unit" | "digits" | "circle"> & {
  readonly value?: number;
  readonly is?: string;
};

/** A draw and how its values are printed. */
export interface Drawn {
  readonly draw: Draw;
  readonly measure: Measured;
}

/** What the names in an exercise may stand for: its draws, then the chapter's quantities, then the numbers of aircraft and place. */
export class Names {
  readonly #drawn: ReadonlyMap<string, Drawn>;
  readonly #sheet: ReadonlyMap<string, SheetEntry>;
  readonly #known: RoomsOfFacts;

  constructor(drawn: readonly Drawn[], sheet: readonly SheetEntry[], known: RoomsOfFacts) {
    this.#drawn = new Map(drawn.map((each) => [each.draw.name, each]));
    this.#sheet = new Map(sheet.filter(isSound).map((each) => [each.name, each]));
    this.#known = known;
  }

  draws = (): Draw[] => [...this.#drawn.values()].map(({ draw }) => draw);

  /** The unit of a name, 'word' for a word; undefined for an unknown name. */
  unitOf = (name: string): string | undefined => this.measureOf(name)?.unit ?? this.workOf(name)?.unit;

  /** How a name is printed; undefined for computed and unknown names. */
  measureOf(name: string): Measured | undefined {
    const drawn = this.#drawn.get(name);
    if (drawn) return drawn.measure;
    const fact = this.factOf(name);
    if (fact) return measureOfFact(name, fact);
    const entry = this.#sheet.get(name);
    if (entry?.value === undefined) return undefined;
    const { label, unit, digits, circle } = entry;
    return { label, unit, digits, circle };
  }

  /** The default value of a given that isn't drawn. */
  valueOf(name: string): number | undefined {
    return this.#drawn.has(name) ? undefined : this.#sheet.get(name)?.value;
  }

  /** The school's fact under a dotted name. */
  factOf = (name: string): Fact | undefined => factNamed(name, this.#known);

  /** One value that a name may have, to try expressions with; undefined for an unknown name. */
  sampleOf = (name: string): Value | undefined => {
    const draw = this.#drawn.get(name)?.draw;
    if (draw) return "list" in draw ? draw.list[0] : draw.from;
    const work = this.workOf(name)?.is;
    if (work === undefined) return this.valueOf(name) ?? this.factOf(name)?.value;
    try {
      return evaluate(parseExpression(work), this.sampleOf);
    } catch (error) {
      if (error instanceof OutOfRange) return null;
      throw error;
    }
  };

  /** A quantity that the chapter computes. */
  workOf(name: string): Computed | undefined {
    const entry = this.#drawn.has(name) ? undefined : this.#sheet.get(name);
    if (entry?.is === undefined) return undefined;
    const { is, label, unit, digits, circle } = entry;
    return { is, label, unit, digits, circle };
  }

  /** All names that can stand in a hole, for suggestions. */
  all(): string[] {
    return [...this.#drawn.keys(), ...this.#sheet.keys(), ...factNames(this.#known)];
  }

  /** The names that expressions use, and those behind the computed quantities among them. */
  behind(expressions: readonly string[]): Set<string> {
    const found = new Set<string>();
    const visit = (expression: string): void => {
      for (const name of namesIn(parseExpression(expression))) {
        if (found.has(name)) continue;
        found.add(name);
        const work = this.workOf(name)?.is;
        if (work !== undefined) visit(work);
      }
    };
    for (const expression of expressions) visit(expression);
    return found;
  }
}

/** False for a computed quantity that can't be read: its own problem stands with the chapter. */
function isSound({ is }: SheetEntry): boolean {
  try {
    return is === undefined || parseExpression(is) !== undefined;
  } catch (error) {
    if (error instanceof ExpressionError) return false;
    throw error;
  }
}

function measureOfFact(name: string, { value, unit }: Fact): Measured {
  const digits = typeof value === "number" ? Math.min(decimalsOf(value), 6) : 0;
  return { label: name.split(".").slice(1).join(" "), unit, digits, circle: false };
}
