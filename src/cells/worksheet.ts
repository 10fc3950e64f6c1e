import type { Formula } from "../calc/catalogue/formula.ts";
import { catalogue, OutOfRange } from "../calc/index.ts";
import type { Given, Work } from "./chapter.ts";
import { ExpressionError, evaluate, type Node, namesIn, parseExpression, type Value } from "./expressions/index.ts";
import { factNamed, factNames, type RoomsOfFacts } from "./facts.ts";
import type { Facts } from "./known.ts";

export { addressOf, fromAddress } from "./address.ts";

export interface Sheet {
  readonly given: readonly Given[];
  readonly work: readonly Work[];
}

export interface WorksheetOptions {
  readonly aircraft: Facts;
  readonly place: Facts;
  readonly technique?: Facts | undefined;
  /** When to tell listeners; at once where left out. A page passes requestAnimationFrame. */
  readonly schedule?: (run: () => void) => void;
  readonly formulas?: readonly Formula[];
}

type Listener = (names: ReadonlySet<string>) => void;

/**
 * A chapter's quantities: what a reader gives, and the work that follows from it and from the aircraft, the place and the technique.
 * Work is recomputed in order, once for all that was set since; a formula that is asked outside its limits leaves its
 * own name, and what depends on it, in trouble, and the rest lives.
 */
export class Worksheet {
  readonly given: readonly Given[];
  readonly work: readonly Work[];
  readonly aircraft: Facts;
  readonly place: Facts;
  readonly technique: Facts | undefined;
  readonly #givens: ReadonlyMap<string, Given>;
  readonly #work: readonly { readonly name: string; readonly node: Node }[];
  readonly #formulas: readonly Formula[];
  readonly #facts: ReadonlyMap<string, Value>;
  readonly #schedule: (run: () => void) => void;
  readonly #listeners = new Set<Listener>();
  readonly #values = new Map<string, Value>();
  readonly #troubles = new Map<string, OutOfRange>();
  #told: ReadonlyMap<string, Value | OutOfRange>;
  #stale = true;
  #scheduled = false;

  /** @throws {ExpressionError} where work isn't written as an expression, or names what doesn't stand before it */
  constructor(
    { given, work }: Sheet,
    { aircraft, place, technique, schedule, formulas = catalogue }: WorksheetOptions,
  ) {
    this.given = given;
    this.work = work;
    this.aircraft = aircraft;
    this.place = place;
    this.technique = technique;
    this.#givens = new Map(given.map((each) => [each.name, each]));
    this.#work = work.map(({ name, is }) => ({ name, node: parseExpression(is) }));
    this.#formulas = formulas;
    this.#facts = dotted({ aircraft, place, ...(technique && { technique }) });
    this.#schedule = schedule ?? ((run) => run());
    for (const { name, value } of given) this.#values.set(name, value);
    this.#checkOrder();
    this.#told = this.#state();
  }

  /** The value of a given, a work or a fact ('aircraft.cruise'); undefined for work in trouble and for an unknown name. */
  value(name: string): Value | undefined {
    this.#recompute();
    return this.#values.get(name) ?? (this.#values.has(name) ? null : this.#facts.get(name));
  }

  /**
   * The same for an expression that is evaluated over the sheet: what uses a name in trouble is in trouble itself.
   *
   * @throws {OutOfRange} the trouble of that name
   */
  use(name: string): Value | undefined {
    const trouble = this.trouble(name);
    if (trouble) throw trouble;
    return this.value(name);
  }

  /** The limit that work, or what it depends on, ran into. */
  trouble(name: string): OutOfRange | undefined {
    this.#recompute();
    return this.#troubles.get(name);
  }

  /** @throws {RangeError} for a name that isn't given, or a value that isn't a finite number */
  set(name: string, value: number): void {
    this.setMany({ [name]: value });
  }

  /**
   * All of them, or none.
   *
   * @throws {RangeError} as `set` does
   */
  setMany(values: Readonly<Record<string, number>>): void {
    for (const [name, value] of Object.entries(values)) {
      this.#givenNamed(name);
      if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, not ${value}`);
    }
    for (const [name, value] of Object.entries(values)) this.#values.set(name, value);
    this.#touch();
  }

  /**
   * One given as the chapter gives it, or all of them.
   *
   * @throws {RangeError} for a name that isn't given
   */
  reset(name?: string): void {
    const givens = name === undefined ? this.given : [this.#givenNamed(name)];
    for (const each of givens) this.#values.set(each.name, each.value);
    this.#touch();
  }

  /** Names of the givens that differ from what the chapter gives. */
  changed(): string[] {
    return this.given.filter(({ name, value }) => !same(this.#values.get(name), value)).map(({ name }) => name);
  }

  /**
   * The range of a given, widened where its present value lies outside.
   *
   * @throws {RangeError} for a name that isn't given
   */
  range(name: string): { from: number; to: number } {
    const { from, to } = this.#givenNamed(name);
    const value = this.#values.get(name) as number;
    return { from: Math.min(from, value), to: Math.max(to, value) };
  }

  /** Hear of the names whose value or trouble has changed; returns what ends it. */
  subscribe(listener: Listener): () => void {
    const own: Listener = (names) => listener(names);
    this.#listeners.add(own);
    return () => this.#listeners.delete(own);
  }

  /** Every given, and all work that has a value. */
  snapshot(): Readonly<Record<string, Value>> {
    this.#recompute();
    return Object.fromEntries(this.#values);
  }

  /** That work names only what stands before it. */
  #checkOrder(): void {
    const before = new Set([...this.#givens.keys(), ...this.#facts.keys()]);
    for (const { name, node } of this.#work) {
      const missing = namesIn(node).find((each) => !before.has(each));
      if (missing) throw new ExpressionError(`${name} needs ${missing}`, 0, `give ${missing} a value before ${name}`);
      before.add(name);
    }
  }

  #givenNamed(name: string): Given {
    const given = this.#givens.get(name);
    if (!given) throw new RangeError(`nothing given is named ${name}`);
    return given;
  }

  #touch(): void {
    this.#stale = true;
    if (this.#scheduled) return;
    this.#scheduled = true;
    this.#schedule(() => this.#tell());
  }

  #tell(): void {
    this.#scheduled = false;
    const before = this.#told;
    this.#told = this.#state();
    const names = [...this.#told.keys()].filter((name) => differs(before.get(name), this.#told.get(name)));
    if (names.length === 0) return;
    const changed: ReadonlySet<string> = new Set(names);
    for (const listener of [...this.#listeners]) listener(changed);
  }

  #state(): ReadonlyMap<string, Value | OutOfRange> {
    this.#recompute();
    return new Map<string, Value | OutOfRange>([...this.#values, ...this.#troubles]);
  }

  #recompute(): void {
    if (!this.#stale) return;
    this.#stale = false;
    for (const { name } of this.#work) this.#values.delete(name);
    this.#troubles.clear();
    for (const { name, node } of this.#work) this.#compute(name, node);
  }

  #compute(name: string, node: Node): void {
    try {
      this.#values.set(
        name,
        evaluate(node, (each) => this.#depended(each), this.#formulas),
      );
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
      this.#troubles.set(name, error);
    }
  }

  /** A value that work depends on; its trouble becomes the work's. */
  #depended(name: string): Value | undefined {
    const trouble = this.#troubles.get(name);
    if (trouble) throw trouble;
    return this.#values.has(name) ? this.#values.get(name) : this.#facts.get(name);
  }
}

const dotted = (known: RoomsOfFacts): ReadonlyMap<string, Value> =>
  new Map(factNames(known).map((name) => [name, factNamed(name, known)!.value]));

const same = (a: unknown, b: unknown): boolean => a === b || (Number.isNaN(a) && Number.isNaN(b));

function differs(before: Value | OutOfRange | undefined, after: Value | OutOfRange | undefined): boolean {
  if (before instanceof OutOfRange && after instanceof OutOfRange) return before.message !== after.message;
  return !same(before, after);
}
