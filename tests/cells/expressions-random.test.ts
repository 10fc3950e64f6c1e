import fc from "fast-check";
import { expect, test } from "vitest";
import { ExpressionError, evaluate, parseExpression } from "../../src/cells/expressions/index.ts";

/** An expression as the tests build it: a sign or a name over its parts. */
interface Tree {
  readonly sign: string;
  readonly parts: readonly Tree[];
}

const variables = { a: 3, b: -1.5, c: 0, d: 7.25 };
const names = Object.keys(variables) as (keyof typeof variables)[];

const { number, condition } = fc.letrec<{ number: Tree; condition: Tree }>((tie) => {
  const over = (signs: readonly string[], ...parts: readonly ("number" | "condition")[]) =>
    fc
      .tuple(fc.constantFrom(...signs), fc.tuple(...parts.map((part) => tie(part))))
      .map(([sign, parts]) => ({ sign, parts }));
  const leaf = fc
    .oneof(fc.constantFrom(...names), fc.constantFrom("0", "1", "2", "10", "0.5", ".25", "1e2", "3.125"))
    .map((sign) => ({ sign, parts: [] }));
  return {
    number: fc.oneof(
      { maxDepth: 5, depthSize: "medium" },
      leaf,
      over(["+", "-", "*", "/", "^"], "number", "number"),
      over(["neg"], "number"),
      over(["abs", "sqrt", "exp"], "number"),
      over(["min", "max"], "number", "number"),
      over(["if"], "condition", "number", "number"),
    ),
    condition: fc.oneof(
      { maxDepth: 5, depthSize: "medium" },
      over(["<", "<=", ">", ">=", "==", "!="], "number", "number"),
      over(["<", "<=", ">", ">=", "==", "!="], "number", "number"),
      over(["and", "or"], "condition", "condition"),
      over(["not"], "condition"),
      over(["==", "!="], "condition", "condition"),
    ),
  };
});

/** How tightly a sign binds; everything unnamed is a name, a number or a call. */
const binding: Readonly<Record<string, number>> = {
  ...{ or: 1, and: 2, not: 3, "<": 4, "<=": 4, ">": 4, ">=": 4, "==": 4, "!=": 4 },
  ...{ "+": 5, "-": 5, "*": 6, "/": 6, neg: 7, "^": 8 },
};
const bindingOf = ({ sign }: Tree): number => binding[sign] ?? 9;

/** A tree in our own notation, with no bracket that isn't needed. */
function ours(tree: Tree): string {
  const own = bindingOf(tree);
  const part = (i: number, least: number): string => {
    const inner = tree.parts[i]!;
    return bindingOf(inner) < least ? `(${ours(inner)})` : ours(inner);
  };
  if (tree.sign === "neg") return `-${part(0, 7)}`;
  if (tree.sign === "not") return `not ${part(0, 3)}`;
  if (tree.sign === "^") return `${part(0, 9)}^${part(1, 7)}`;
  if (own === 9)
    return tree.parts.length === 0 ? tree.sign : `${tree.sign}(${tree.parts.map((each) => ours(each)).join(", ")})`;
  return `${part(0, own === 4 ? 5 : own)} ${tree.sign} ${part(1, own + 1)}`;
}

/** The same tree in JavaScript, by JavaScript's own binding; it wants brackets round the base and the negative of a power. */
function theirs(tree: Tree): string {
  const [a, b, c] = tree.parts.map((each) => theirs(each));
  const bracketed = (i: number, least: number): string =>
    bindingOf(tree.parts[i]!) < least ? `(${theirs(tree.parts[i]!)})` : theirs(tree.parts[i]!);
  switch (tree.sign) {
    case "neg":
      return tree.parts[0]!.sign === "^" ? `-(${a})` : `- ${bracketed(0, 7)}`;
    case "not":
      return `!(${a})`;
    case "and":
      return `${bracketed(0, 2)} && ${bracketed(1, 3)}`;
    case "or":
      return `${bracketed(0, 1)} || ${bracketed(1, 2)}`;
    case "^":
      return `${bracketed(0, 9)} ** ${bracketed(1, 7)}`;
    case "if":
      return `(${a} ? ${b} : ${c})`;
  }
  const own = bindingOf(tree);
  if (own < 9) return `${bracketed(0, own === 4 ? 5 : own)} ${tree.sign} ${bracketed(1, own + 1)}`;
  return tree.parts.length === 0
    ? tree.sign
    : `Math.${tree.sign}(${tree.parts.map((each) => theirs(each)).join(", ")})`;
}

const inJavaScript = (tree: Tree): unknown =>
  new Function(...names, `return ${theirs(tree)};`)(...Object.values(variables));

/** Whether two numbers are compared that differ by rounding alone, which we call equal and JavaScript doesn't. */
function hasNearTie({ sign, parts }: Tree): boolean {
  if (bindingOf({ sign, parts }) === 4 && bindingOf(parts[0]!) > 4) {
    const [left, right] = parts.map((each) => inJavaScript(each)) as [number, number];
    if (left !== right && Math.abs(left - right) < 1e-9 * Math.abs(left)) return true;
  }
  return parts.some(hasNearTie);
}

test.each([
  ["number", number],
  ["condition", condition],
])("evaluate agrees with JavaScript on random expressions that give a %s", (_, trees) => {
  fc.assert(
    fc.property(trees, (tree) => {
      const text = ours(tree);
      fc.pre(text.length <= 400 && !hasNearTie(tree));
      const value = evaluate(parseExpression(text), (name) => variables[name as keyof typeof variables]);
      expect(value, `${text} against ${theirs(tree)}`).toBe(inJavaScript(tree));
    }),
    { numRuns: 1200 },
  );
});

test("parseExpression answers any text with a tree or an ExpressionError", () => {
  const pieces = fc.constantFrom(
    "tas",
    "aircraft",
    ".",
    "(",
    ")",
    ",",
    "+",
    "-",
    "^",
    "<",
    "==",
    "not",
    "and",
    "1",
    "2.5",
    '"',
    "'",
    " ",
    "if",
    "é",
    "𝑥",
  );
  const texts = fc.oneof(
    fc.string({ unit: "binary", maxLength: 500 }),
    fc.array(pieces, { maxLength: 60 }).map((each) => each.join("")),
  );
  fc.assert(
    fc.property(texts, (text) => {
      try {
        parseExpression(text);
      } catch (error) {
        expect(error).toBeInstanceOf(ExpressionError);
        const { at, mend } = error as ExpressionError;
        expect(at).toBeGreaterThanOrEqual(0);
        expect(at).toBeLessThanOrEqual(text.length);
        expect(mend).not.toBe("");
      }
    }),
    { numRuns: 2000 },
  );
});
