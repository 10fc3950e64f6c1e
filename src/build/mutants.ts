import { parseSync } from "vite";

/** A small change to a source text that its tests ought to notice. */
export interface Mutant {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly line: number;
  /** What changed, for a person: '* → /'. */
  readonly change: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [property: string]: unknown;
}

type Edit = readonly [start: number, end: number, text: string];

const operators: Readonly<Record<string, string>> = {
  "+": "-",
  "-": "+",
  "*": "/",
  "/": "*",
  "%": "*",
  "**": "*",
  "<": "<=",
  "<=": "<",
  ">": ">=",
  ">=": ">",
  "===": "!==",
  "!==": "===",
  "&&": "||",
  "||": "&&",
  "+=": "-=",
  "-=": "+=",
};
/** Members of Math that are easily taken for each other. */
const names: Readonly<Record<string, string>> = {
  max: "min",
  min: "max",
  sin: "cos",
  cos: "sin",
  floor: "ceil",
  ceil: "floor",
};

/**
 * Every mutant of a TypeScript source: operators, signs, comparisons, constants and flags, and checks of limits left
 * out. Types, comments and texts stay as they are.
 */
export function mutants(source: string, file = "source.ts"): Mutant[] {
  const { program, errors } = parseSync(file, source);
  if (errors.length > 0) throw new Error(`${file}: ${errors[0]!.message}`);
  return [...edits(program as unknown as Node, source)].map(([start, end, text]) => ({
    start,
    end,
    text,
    line: source.slice(0, start).split("\n").length,
    change: `${source.slice(start, end).replace(/\s+/g, " ")} → ${text.replace(/\s+/g, " ") || "nothing"}`,
  }));
}

/** The source with the mutant in it. */
export function mutated(source: string, { start, end, text }: Mutant): string {
  return source.slice(0, start) + text + source.slice(end);
}

function* edits(node: Node, source: string): Generator<Edit> {
  yield* editsOf(node, source);
  for (const [property, value] of Object.entries(node)) {
    if (property === "typeAnnotation" || property === "returnType") continue;
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child) && !isType(child)) yield* edits(child, source);
    }
  }
}

function* editsOf(node: Node, source: string): Generator<Edit> {
  if (["BinaryExpression", "LogicalExpression", "AssignmentExpression"].includes(node.type)) {
    yield* operatorEdit(node, source);
  } else if (node.type === "UnaryExpression" && (node["operator"] === "-" || node["operator"] === "!")) {
    yield [node.start, node.start + 1, ""];
  } else if (node.type === "Literal") {
    yield* literalEdit(node);
  } else if (node.type === "CallExpression") {
    yield* callEdit(node, source);
  }
}

function* operatorEdit(node: Node, source: string): Generator<Edit> {
  const replacement = operators[node["operator"] as string];
  if (replacement === undefined) return;
  const [left, right] = [node["left"] as Node, node["right"] as Node];
  const start = source.indexOf(node["operator"] as string, left.end);
  if (start < right.start) yield [start, start + (node["operator"] as string).length, replacement];
}

function* literalEdit({ start, end, value }: Node): Generator<Edit> {
  if (typeof value === "boolean") yield [start, end, String(!value)];
  if (typeof value === "number") yield [start, end, String(Number.isInteger(value) ? value + 1 : value * 1.01)];
}

function* callEdit(node: Node, source: string): Generator<Edit> {
  const callee = node["callee"] as Node;
  const given = node["arguments"] as readonly Node[];
  if (callee.type === "Identifier" && callee["name"] === "within" && given.length === 2) {
    yield [node.start, node.end, `(${source.slice(given[1]!.start, given[1]!.end)})`];
    return;
  }
  const property = callee["property"] as Node | undefined;
  const swapped = names[String(property?.["name"])];
  if (property && swapped) yield [property.start, property.end, swapped];
}

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && "type" in value && "start" in value;
}

function isType({ type }: Node): boolean {
  const wraps = ["TSAsExpression", "TSSatisfiesExpression", "TSNonNullExpression"];
  return type.startsWith("TS") && !wraps.includes(type);
}
