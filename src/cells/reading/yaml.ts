import { isMap, isScalar, isSeq, type Node, parseDocument } from "yaml";
import type { Position, Problem } from "../problem.ts";
import { aligned } from "./align.ts";
import { lexicalMistakes, type Mistake } from "./lexemes.ts";
import { limits } from "./limits.ts";
import { deepYamlLine } from "./nesting.ts";
import { Source } from "./source.ts";
import { plainValue } from "./yaml-value.ts";
import { wordsOf } from "./yaml-words.ts";

export type Path = readonly (string | number)[];

/** A piece of YAML as read, able to say where each part of it stands in its file. */
export interface ReadYaml {
  /** Plain maps, lists and scalars, undefined where nothing sound stands; all of it undefined where the YAML is broken. */
  readonly value: unknown;
  readonly problems: readonly Problem[];
  /** Where the value or the key at a path stands; of a part that is missing, where the part around it does. */
  at(path: Path, which?: "key" | "value"): Position;
  /** Where the character at `offset` of the text at a path stands. */
  within(path: Path, offset: number): Position;
}

/** Where a text starts in its file. */
export interface Origin extends Position {
  readonly file: string;
}

/** Reads a map in YAML; never throws, whatever the text. */
export function readYaml(text: string, origin: Origin): ReadYaml {
  const spaced = text.replaceAll("\t", " ");
  const source = new Source(spaced, origin.file);
  const early = [...tabs(text), ...unsafe(spaced)];
  if (early.some(({ stops }) => stops)) return new Read(source, origin, null, early);
  const document = parseDocument(spaced, { uniqueKeys: false, prettyErrors: false, logLevel: "error", schema: "core" });
  const mistakes = [...early, ...lexicalMistakes(spaced), ...syntax(document.errors, source)];
  if (mistakes.some(({ stops }) => stops)) return new Read(source, origin, null, mistakes);
  return new Read(source, origin, document.contents, mistakes);
}

const stop = (mistake: Omit<Mistake, "stops">): Mistake => ({ ...mistake, stops: true });

function tabs(text: string): Mistake[] {
  const at = text.indexOf("\t");
  return at < 0
    ? []
    : [{ at, message: "A tab stands here.", mend: "Write spaces: YAML takes tabs in different ways." }];
}

/** What the library must not be given: it would overflow the stack or take too long. */
function unsafe(text: string): Mistake[] {
  if (text.length > limits.yaml) {
    const message = `This is longer than ${limits.yaml.toLocaleString("en-GB")} characters.`;
    return [stop({ at: 0, message, mend: "Divide it." })];
  }
  const lines = text.split("\n");
  const deep = deepYamlLine(lines);
  if (deep !== undefined) {
    const at = lines.slice(0, deep).join("\n").length + Math.min(deep, 1);
    return [
      stop({ at, message: "Keys stand too deep inside each other.", mend: `Nest ${limits.nesting} levels at most.` }),
    ];
  }
  return deepBrackets(text);
}

function deepBrackets(text: string): Mistake[] {
  if (text.split(/[[{]/).length <= limits.nesting + 1) return [];
  const deep = lexicalMistakes(text);
  return deep.some(({ message }) => message.startsWith("Brackets")) ? deep.map(stop) : [];
}

/** The first error of each run of lines: those after it follow from it. */
function syntax(errors: ReturnType<typeof parseDocument>["errors"], source: Source): Mistake[] {
  let last = -1;
  return errors.flatMap(({ code, pos: [at] }) => {
    const { line } = source.place(at);
    const follows = last >= 0 && line - last < 2;
    last = line;
    if (follows) return [];
    const [message, mend] = wordsOf(code);
    return [stop({ at, message, mend })];
  });
}

class Read implements ReadYaml {
  readonly value: unknown;
  readonly problems: readonly Problem[];
  readonly #source: Source;
  readonly #origin: Origin;
  readonly #root: Node | null;
  readonly #aligned = new Map<Node, readonly number[]>();

  constructor(source: Source, origin: Origin, root: Node | null, mistakes: readonly Mistake[]) {
    this.#source = source;
    this.#origin = origin;
    this.#root = root;
    const read = plainValue(root);
    this.value = mistakes.some(({ stops }) => stops) ? undefined : read.value;
    this.problems = [...mistakes, ...read.mistakes].map(({ at, message, mend }) => ({
      file: origin.file,
      ...this.#place(at),
      message,
      mend,
    }));
  }

  at(path: Path, which: "key" | "value" = "value"): Position {
    const { key, value } = this.#find(path);
    return this.#place((which === "key" ? (key ?? value) : (value ?? key))?.range?.[0] ?? 0);
  }

  within(path: Path, offset: number): Position {
    const { value } = this.#find(path);
    const [start, end] = value?.range ?? [0, 0];
    if (!isScalar(value)) return this.#place(start);
    const offsets = this.#aligned.get(value) ?? aligned(this.#source.text.slice(start, end), String(value.value));
    this.#aligned.set(value, offsets);
    return this.#place(start + (offsets[Math.min(offset, offsets.length - 1)] ?? 0));
  }

  /** The node at a path, or the innermost one around it. */
  #find(path: Path): { key?: Node; value: Node | null } {
    let found: { key?: Node; value: Node | null } = { value: this.#root };
    for (const step of path) {
      const next = child(found.value, step);
      if (!next) return found;
      found = next;
    }
    return found;
  }

  #place(offset: number): Position {
    const { line, column } = this.#source.place(offset);
    const { line: first, column: indent } = this.#origin;
    return { line: first + line - 1, column: line === 1 ? column + indent - 1 : column };
  }
}

function child(parent: Node | null, step: string | number): { key?: Node; value: Node | null } | undefined {
  if (isSeq(parent)) {
    const value = parent.items[Number(step)] as Node | undefined;
    return value && { value };
  }
  if (!isMap(parent)) return undefined;
  const pair = parent.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
  return pair && { key: pair.key as Node, value: pair.value as Node | null };
}
