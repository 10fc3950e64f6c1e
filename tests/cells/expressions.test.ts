import { expect, test } from "vitest";
import { OutOfRange } from "../../src/calc/limits.ts";
import { ExpressionError, evaluate, namesIn, parseExpression, type Value } from "../../src/cells/expressions/index.ts";
import { fewFormulas } from "./few-formulas.ts";

const quantities: Readonly<Record<string, Value>> = {
  tas: 90,
  bank: 20,
  turn: "left",
  none: null,
  "aircraft.climb.speed": 75,
};
const named = (name: string): Value | undefined => (Object.hasOwn(quantities, name) ? quantities[name] : undefined);
const valueIn = (text: string): Value => evaluate(parseExpression(text), named, fewFormulas);

function mistake(work: () => unknown): ExpressionError {
  try {
    work();
  } catch (error) {
    if (error instanceof ExpressionError) return error;
    throw error;
  }
  throw new Error("no mistake was found");
}

test.each([
  ["-2^2", -4],
  ["2^-1", 0.5],
  ["2^3^2", 512],
  ["2^-2^2", 1 / 16],
  ["7 − 2 × 3 ÷ 4", 5.5],
  ["- -2", 2],
  ["8 - 3 - 2", 3],
  ["1.5 + .5 + 1e3 + 2E-1", 1002.2],
  ["round(72.5)", 73],
  ["round(-72.5)", -73],
  ["round(1.005, 0.01)", 1.01],
  ["round(72, 5)", 70],
  ["round(0.3 / 0.1)", 3],
  ["floor(0.3 / 0.1)", 3],
  ["ceil(1.1)", 2],
  ["floor(-1.1)", -2],
  ["min(3, 1, 2) + max(1, 2)", 3],
  ["abs(-3) + sqrt(16) + ln(exp(2))", 9],
  ["if(tas > 80, 1, 2)", 1],
  ["if(tas > 100, 1, 2)", 2],
  ["aircraft.climb.speed * 2", 150],
  ["reach(100)", 1],
  ["reach(100, 72) + reach(50)", 2.5],
  ["sides(90).way", 360],
])("evaluate gives for %s the value %d", (text, value) => {
  expect(valueIn(text)).toBe(value);
});

test.each([
  ["sin(30)", 0.5],
  ["cos(60)", 0.5],
  ["tan(45)", 1],
  ["asin(0.5)", 30],
  ["acos(0.5)", 60],
  ["atan(1)", 45],
  ["atan2(1, -1)", 135],
])("evaluate takes angles in degrees and gives them so: %s is %d", (text, value) => {
  expect(valueIn(text)).toBeCloseTo(value as number, 12);
});

test.each([
  ["1 < 2", true],
  ["2 <= 2", true],
  ["0.1 + 0.2 == 0.3", true],
  ["0.1 + 0.2 <= 0.3", true],
  ["0.1 + 0.2 > 0.3", false],
  ["1 / 0 > 5", true],
  ["1 / 0 == 5", false],
  ["1 != 2", true],
  ["turn == 'left'", true],
  ['turn != "left"', false],
  ["not tas > 100 and bank == 20 or false", true],
  ["not (true or true)", false],
  ["true or false and false", true],
])("evaluate answers %s with %s", (text, value) => {
  expect(valueIn(text)).toBe(value);
});

test.each([
  "none + 1",
  "-none",
  "sin(none)",
  "reach(none)",
  "sides(300).half",
  "if(none > 1, 1, 2)",
  "none == 3",
  "not none > 1",
  "none > 1 and true",
])("evaluate lets a null flow through %s", (text) => {
  expect(valueIn(text)).toBeNull();
});

test("evaluate looks only at the branch and the side that decide", () => {
  expect(valueIn("if(tas > 80, 1, reach(0))")).toBe(1);
  expect(valueIn("tas > 80 or reach(0) > 1")).toBe(true);
  expect(valueIn("tas > 100 and reach(0) > 1")).toBe(false);
});

test("evaluate passes on the OutOfRange of the formula it calls", () => {
  expect(() => valueIn("1 + reach(0)")).toThrow(OutOfRange);
});

test.each(["constructor", "__proto__", "toString", "hasOwnProperty", "prototype"])(
  "%s is but an unknown name, function, field and part",
  (name) => {
    expect(mistake(() => valueIn(name)).message).toBe(`nothing is named ${name}`);
    expect(mistake(() => valueIn(`${name}(1)`)).message).toBe(`there is no function ${name}`);
    expect(mistake(() => valueIn(`sides(90).${name}`)).message).toBe(`sides gives no ${name}`);
    expect(mistake(() => valueIn(`aircraft.${name}`)).message).toBe(`nothing is named aircraft.${name}`);
  },
);

test.each([
  ["", 0, "the expression is empty"],
  ["1 +", 3, "the expression breaks off"],
  ["(1 + 2", 0, "a bracket is never closed"],
  ["sin(30", 3, "a bracket is never closed"],
  ["1 + 2)", 5, "this bracket closes nothing, or nothing stands before it"],
  ["1,200 + 3", 1, "a comma has no meaning here"],
  ["2 tas", 2, "tas has no meaning here"],
  ["1 < 2 < 3", 6, "comparisons can’t be chained"],
  ["tas = 3", 4, "= has no meaning here"],
  ["2 ** 3", 2, "** has no meaning here"],
  ["'left", 0, "the word that starts with ' has no end"],
  ["tas.x", 3, "tas has no parts"],
  ["aircraft.", 9, "a name is missing after aircraft."],
  ["1.5.2", 3, ".2 has no meaning here"],
  ["1e999", 0, "1e999 is too large a number"],
  ["tas @ 3", 4, "@ has no meaning here"],
  ["* 2", 0, "* has no meaning here"],
  ["f(1,)", 4, "this bracket closes nothing, or nothing stands before it"],
  ["1 + and", 4, "and has no meaning here"],
])("parseExpression of %j points at %d and says what is wrong", (text, at, message) => {
  const error = mistake(() => parseExpression(text));
  expect([error.at, error.message]).toEqual([at, message]);
  expect(error.mend).not.toBe("");
});

test.each([
  ["tsa * 2", "nothing is named tsa", "did you mean tas?"],
  ["climb.speed", "climb has no parts", "lead on by a dot"],
  ["reech(90)", "there is no function reech", "did you mean reach?"],
  ["reach()", "reach takes 1 or 2 arguments: tas, time (36 if left out); here it has 0", "write reach(tas, time)"],
  ["leaning(90)", "leaning takes 2 arguments: tas, bank; here it has 1", "write leaning(tas, bank)"],
  ["sin(1, 2)", "sin takes 1 argument: angle; here it has 2", "write sin(angle)"],
  ["sides(90)", "sides gives several values", "write sides(…).half or sides(…).way"],
  ["reach(90).half", "reach gives one value, without parts", "leave out .half"],
  ["sin(30).half", "sin gives one value, without parts", "leave out .half"],
  ["turn + 1", "turn is the word ‘left’ where a number is due", "write a number or a quantity there"],
  ["leaning(turn, 3)", "turn is the word ‘left’ where a number is due", "write a number or a quantity there"],
  ["sideOf(20, 3)", "sideOf takes a word for turn", 'write "left" or "right"'],
  ["if(1, 2, 3)", "1 is no condition", "write a comparison, such as bank > 30"],
  ["turn < 'right'", "turn < 'right' compares what can’t be compared", "compare numbers with numbers"],
])("evaluate of %s says what is wrong and what would mend it", (text, message, mend) => {
  const error = mistake(() => valueIn(text));
  expect(error.message).toBe(message);
  expect(error.mend).toContain(mend);
});

test("parseExpression refuses what is too long or nested too deep, and reads what is just within", () => {
  expect(valueIn(`${"1+".repeat(199)}1`)).toBe(200);
  expect(mistake(() => parseExpression(`${"1+".repeat(200)}1`)).message).toContain("400");
  for (const [open, close] of [
    ["(", ")"],
    ["-", ""],
    ["not ", ""],
    ["2^", ""],
    ["abs(", ")"],
  ] as const) {
    expect(() => parseExpression(`${open.repeat(60)}1${close.repeat(60)}`)).not.toThrow();
    expect(mistake(() => parseExpression(`${open.repeat(61)}1${close.repeat(61)}`)).message).toContain("60");
  }
});

test("parseExpression gives the same tree for the same text", () => {
  expect(parseExpression("tas + 1")).toBe(parseExpression("tas + 1"));
});

test("namesIn lists the names of quantities once, in the order of the text, without functions", () => {
  const node = parseExpression(
    "if(bank > 3 and not turn == 'left', -tas * sides(bank).half, aircraft.climb.speed ^ tas)",
  );
  expect(namesIn(node)).toEqual(["bank", "turn", "tas", "aircraft.climb.speed"]);
});
