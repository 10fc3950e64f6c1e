import * as v from "valibot";
import type { Given } from "../chapter.ts";
import { factNamed, factNames } from "../facts.ts";
import { type QuantityEntry, quantities, quantityOf } from "../quantities.ts";
import type { Draft } from "./draft.ts";
import { isFit } from "./names.ts";
import { didYouMean, quoted } from "./near.ts";
import { given as givenSchema } from "./schemas.ts";
import type { ReadYaml } from "./yaml.ts";

type Entry = v.InferOutput<typeof givenSchema>;

/** Without a complaint of unknown keys, which the whole front matter's schema makes. */
const shapeOfGiven = v.object(givenSchema.entries);

/** The quantities a reader can change; those with a problem are left out. */
export function readGiven(entries: Readonly<Record<string, unknown>>, read: ReadYaml, draft: Draft): Given[] {
  return Object.entries(entries).flatMap(([name, entry]) => {
    const fit = isFit(name, "given", read, draft);
    const shape = v.safeParse(shapeOfGiven, entry);
    const found = fit && shape.success ? new GivenReader(name, shape.output, read, draft).read() : undefined;
    return found ? [found] : [];
  });
}

class GivenReader {
  readonly #name: string;
  readonly #entry: Entry;
  readonly #read: ReadYaml;
  readonly #draft: Draft;

  constructor(name: string, entry: Entry, read: ReadYaml, draft: Draft) {
    this.#name = name;
    this.#entry = entry;
    this.#read = read;
    this.#draft = draft;
  }

  read(): Given | undefined {
    const quantity = this.#entry.quantity ?? this.#name;
    const known = quantityOf(quantity);
    if (!known) return this.#unknownQuantity(quantity);
    const range = this.#range(known);
    const value = this.#value(known);
    if (value === undefined || !range || !this.#holds(value, range, known.unit)) return undefined;
    const { label = known.label, step = known.step } = this.#entry;
    const digits = Math.max(known.digits, decimalsOf(step));
    return {
      name: this.#name,
      quantity,
      label,
      unit: known.unit,
      value,
      ...range,
      step,
      digits,
      circle: known.circle === true,
      ...(typeof this.#entry.value === "string" && { follows: this.#entry.value }),
    };
  }

  #unknownQuantity(quantity: string): undefined {
    const names = Object.keys(quantities);
    const { near, key } = this.#entry.quantity
      ? { near: didYouMean(quantity, names), key: "quantity" as const }
      : { near: `Name the quantity it is: 'quantity: tas'. ${didYouMean(quantity, names)}`, key: undefined };
    return this.#add(key, `${quoted(quantity)} is no quantity that the workbook knows.`, near);
  }

  #range(known: QuantityEntry): { from: number; to: number } | undefined {
    const { from = known.from, to = known.to, step = known.step } = this.#entry;
    const limits = `${known.from} to ${known.to}${unitWord(known.unit)}`;
    const outside = from < known.from ? "from" : to > known.to ? "to" : undefined;
    if (outside) return this.#add(outside, `'${outside}' leaves the quantity's own range.`, `Stay within ${limits}.`);
    if (from >= to)
      return this.#add(
        "from" in this.#entry ? "from" : "to",
        "The range is empty: 'from' isn't below 'to'.",
        `Give a range within ${limits}.`,
      );
    if (!(step > 0) || step > to - from)
      return this.#add("step", "The step doesn't fit the range.", `Give a step over 0 and at most ${to - from}.`);
    return { from, to };
  }

  #value({ unit }: QuantityEntry): number | undefined {
    const { value } = this.#entry;
    if (typeof value === "number") return value;
    const { known } = this.#draft;
    const fact = factNamed(value, known);
    if (!fact)
      return this.#add(
        "value",
        `${quoted(value)} is neither a number nor one of the aircraft's.`,
        didYouMean(value, factNames(known)),
      );
    if (fact.unit === unit && typeof fact.value === "number") return fact.value;
    const measured = fact.unit === "word" ? "a word" : `in ${fact.unit}`;
    return this.#add(
      "value",
      `${value} is ${measured}, and this quantity is in ${unit}.`,
      "Choose another of the aircraft's numbers, or write the number.",
    );
  }

  #holds(value: number, { from, to }: { from: number; to: number }, unit: string): boolean {
    if (value >= from && value <= to) return true;
    this.#add(
      "value",
      `${value} lies outside ${from} to ${to}${unitWord(unit)}.`,
      "Widen the range or change the value.",
    );
    return false;
  }

  #add(key: keyof Entry | undefined, message: string, mend: string): undefined {
    const path = ["given", this.#name, ...(key ? [key] : [])];
    this.#draft.add(this.#read.at(path, key ? "value" : "key"), message, mend);
    return undefined;
  }
}

const unitWord = (unit: string) => (unit === "plain" ? "" : ` ${unit}`);

const decimalsOf = (step: number): number => (`${step}`.split(".")[1] ?? "").length;
