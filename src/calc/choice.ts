import { OutOfRange } from "./limits.ts";

/** A word that is none of those a formula knows; an OutOfRange whose value is NaN and whose quantity names the choices. */
export class NotAmong extends OutOfRange {
  constructor(quantity: string, choices: readonly string[], given: string) {
    const named = `${quantity} (${choices.map((choice) => `'${choice}'`).join(", ")})`;
    super({ quantity: named, unit: "word", from: -Infinity, to: Infinity }, Number.NaN);
    this.name = "NotAmong";
    this.message = `${named} cannot be '${String(given)}'`;
  }
}

/**
 * The word itself where it is one of those that a formula knows.
 *
 * @throws {NotAmong} otherwise
 */
export function oneOf<Word extends string>(quantity: string, choices: readonly Word[], word: Word): Word {
  if (!choices.includes(word)) throw new NotAmong(quantity, choices, word);
  return word;
}
