import { isMap, isScalar, isSeq, type Node, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type { Mistake } from "./lexemes.ts";
import { quoted } from "./near.ts";

/** Maps, lists and scalars as plain values, with what no author means in them: nulls, double keys, misread braces. */
export function plainValue(root: Node | null): { value: unknown; mistakes: Mistake[] } {
  const reader = new Reader();
  const value = root === null ? {} : reader.read(root);
  return { value, mistakes: reader.mistakes };
}

/** What braces and brackets may hold unquoted: a number or one word. Anything longer is misread in silence. */
const safeInFlow = /^[\w.+\-%°]+(?:\/[\w.]+)?$/u;

class Reader {
  readonly mistakes: Mistake[] = [];

  read(node: Node | null, key?: Scalar): unknown {
    if ((isMap(node) || isSeq(node)) && node.flow && !this.#sound(node)) return undefined;
    if (isMap(node)) return this.#map(node);
    if (isSeq(node)) return node.items.map((item) => this.read(item as Node | null));
    if (isScalar(node) && node.value !== null) return node.value;
    this.#nothing(node, key);
    return undefined;
  }

  #map(map: YAMLMap): Record<string, unknown> {
    const seen = new Set<string>();
    const entries: [string, unknown][] = [];
    for (const { key, value } of map.items) {
      const name = this.#key(key as Node | null, map);
      if (name === undefined) continue;
      if (seen.has(name))
        this.#add(key as Node, `The key ${quoted(name)} stands here twice.`, "Delete one of the two.");
      seen.add(name);
      entries.push([name, this.read(value as Node | null, key as Scalar)]);
    }
    return Object.fromEntries(entries);
  }

  #key(key: Node | null, map: YAMLMap): string | undefined {
    if (!isScalar(key) || key.value === null || key.value === "") {
      this.#add(key ?? map, "A key is missing before ':'.", "Write 'key: value', with a word as key.");
      return undefined;
    }
    const name = String(key.value);
    if (name in Object.prototype) {
      this.#add(key, `${quoted(name)} is no key.`, "Delete it or choose another word.");
      return undefined;
    }
    return name;
  }

  /** Braces around more than numbers and words are one mistake, whatever came of them. */
  #sound(collection: YAMLMap | YAMLSeq): boolean {
    if (scalarsOf(collection).every(isSafe)) return true;
    this.#add(
      collection,
      "Braces and brackets may hold only numbers and single words: a comma or a bracket in a sentence or an expression is misread in silence.",
      "Write it one key a line, indented, without braces; put a sentence that starts with { or [ in quotes.",
    );
    return false;
  }

  #nothing(node: Node | null, key?: Scalar): void {
    const name = key ? ` after ${quoted(String(key.value))}` : "";
    const place = isScalar(node) && node.source ? node : (key ?? node);
    if (isScalar(node) && node.source) {
      this.#add(
        node,
        `${quoted(node.source)} stands for nothing${name}.`,
        "Write its value, or delete the key; the word itself goes in quotes.",
      );
    } else this.#add(place, `Nothing stands${name || " here"}.`, "Write its value, or delete it.");
  }

  #add(node: Node | null, message: string, mend: string): void {
    this.mistakes.push({ at: node?.range?.[0] ?? 0, message, mend });
  }
}

function isSafe(scalar: Scalar | null): boolean {
  if (scalar === null || scalar.value === null) return false;
  return scalar.type !== "PLAIN" || safeInFlow.test(scalar.source ?? "");
}

function scalarsOf(node: Node | null): (Scalar | null)[] {
  if (isMap(node))
    return node.items.flatMap(({ key, value }) => [
      ...scalarsOf(key as Node | null),
      ...scalarsOf(value as Node | null),
    ]);
  if (isSeq(node)) return node.items.flatMap((item) => scalarsOf(item as Node | null));
  return [isScalar(node) ? node : null];
}
