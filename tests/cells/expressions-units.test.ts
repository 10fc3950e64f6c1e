import fc from "fast-check";
import { expect, test } from "vitest";
import { catalogue } from "../../src/calc/index.ts";
import { checkUnits, parseExpression } from "../../src/cells/expressions/index.ts";
import { fewFormulas } from "./few-formulas.ts";

const quantities: Readonly<Record<string, string>> = {
  ...{
    tas: "kt",
    wind: "kt",
    bank: "deg",
    turn: "word",
    ratio: "plain",
    time: "s",
    leg: "NM",
    height: "ft",
    steep: "boolean",
  },
  "aircraft.cruise": "kt",
};
const unitOf = (name: string): string | undefined => (Object.hasOwn(quantities, name) ? quantities[name] : undefined);
const check = (text: string) => checkUnits(parseExpression(text), unitOf, fewFormulas);

test.each([
  ["3", undefined],
  ["2 * 3 + 1", undefined],
  ["tas", "kt"],
  ["tas + 10", "kt"],
  ["10 - tas", "kt"],
  ["tas + wind - aircraft.cruise", "kt"],
  ["-tas", "kt"],
  ["tas * 2", "kt"],
  ["0.5 * tas", "kt"],
  ["tas / 2", "kt"],
  ["tas * ratio", "kt"],
  ["tas / ratio", "kt"],
  ["ratio * ratio", "plain"],
  ["tas / wind", "plain"],
  ["tas / wind * bank", "deg"],
  ["tas * time", undefined],
  ["60 / tas", undefined],
  ["leg / tas * 60", undefined],
  ["leg / tas + time", "s"],
  ["100 * ratio", undefined],
  ["tas ^ 2", undefined],
  ["ratio ^ 2", "plain"],
  ["2 ^ (time / time)", "plain"],
  ["sqrt(tas * tas)", undefined],
  ["sqrt(ratio)", "plain"],
  ["abs(tas)", "kt"],
  ["round(tas, 5)", "kt"],
  ["min(tas, wind, 90)", "kt"],
  ["if(bank > 20, tas, wind + 5)", "kt"],
  ["sin(bank)", "plain"],
  ["sin(30)", "plain"],
  ["tas * sin(bank)", "kt"],
  ["asin(ratio)", "deg"],
  ["atan2(height, height)", "deg"],
  ["ln(ratio) + exp(0.5)", "plain"],
  ["tas > wind and not steep or turn == 'left'", "boolean"],
  ["true", "boolean"],
  ["turn", "word"],
  ["leaning(tas, bank)", "deg/s"],
  ["leaning(90, 15)", "deg/s"],
  ["reach(tas)", "NM"],
  ["sides(tas).way + bank", "deg"],
  ["sideOf(bank, 'left')", "word"],
  ["convert(leg, 'NM', 'ft') + height", "ft"],
  ["convert(1.5, 'h', 'min')", "min"],
] as const)("checkUnits finds in %s the unit %s and no slip", (text, unit) => {
  expect(check(text)).toEqual({ unit, errors: [] });
});

test.each([
  ["tas + bank", "both sides of + must agree: tas is in kt and bank in deg", "give a value in kt there"],
  ["leg - height", "both sides of − must agree: leg is in NM and height in ft", 'write convert(height, "ft", "NM")'],
  ["tas + ratio", "both sides of + must agree: tas is in kt and ratio a plain number", "give a value in kt there"],
  ["ratio + tas", "both sides of + must agree: ratio is a plain number and tas in kt", "give a plain number there"],
  ["tas > bank", "both sides of > must agree: tas is in kt and bank in deg", "give a value in kt there"],
  ["turn == 3 + tas", "both sides of == must agree: turn is a word and 3 + tas in kt", 'write a quoted word: "left"'],
  ["max(tas, 3, bank)", "the arguments of max must agree: tas is in kt and bank in deg", "give a value in kt there"],
  ["if(steep, tas, bank)", "both values of if must agree: tas is in kt and bank in deg", "give a value in kt there"],
  ["leaning(leg, bank)", "leaning takes the true airspeed in kt, and leg is in NM", "give a value in kt there"],
  ["leaning(tas, ratio)", "leaning takes the bank in deg, and ratio is a plain number", "give a value in deg there"],
  ["sin(tas)", "sin takes its angle in deg, and tas is in kt", "give a value in deg there"],
  [
    "sin(convert(bank, 'deg', 'rad'))",
    "sin takes its angle in deg, and",
    "write convert(convert(bank, 'deg', 'rad'), \"rad\", \"deg\")",
  ],
  ["asin(tas)", "asin takes a plain number, and tas is in kt", "divide it by another value in kt"],
  ["exp(time)", "exp takes a plain number, and time is in s", "divide it by another value in s"],
  ["2 ^ time", "an exponent takes a plain number, and time is in s", "divide it by another value in s"],
  [
    "convert(leg, 'ft', 'm')",
    "convert is told its value comes in ft, and leg is in NM",
    'write convert(leg, "NM", "ft")',
  ],
  ["convert(leg, 'NM', 'kt')", "NM does not convert into kt", "name a unit of the kind of NM"],
  ["convert(leg, turn, 'ft')", "convert needs its units as quoted words", 'write convert(height, "ft", "m")'],
  ["turn + 1", "turn is a word where a number is due", "write a number or a quantity there"],
  ["steep * 2", "steep is a condition where a number is due", "write a number or a quantity there"],
  ["tas and steep", "tas is no condition", "write a comparison, such as bank > 30"],
  ["if(tas, 1, 2)", "tas is no condition", "write a comparison, such as bank > 30"],
  ["sideOf(bank, 'up')", "sideOf knows no turn named ‘up’", 'write "left" or "right"'],
  ["sideOf(bank, tas)", "sideOf takes a word for the turn", 'write "left" or "right"'],
  ["leaning(turn, bank)", "turn is a word where a number is due", "write a number or a quantity there"],
  ["tass + 1", "nothing is named tass", "did you mean tas?"],
  ["cruise * 2", "nothing is named cruise", "did you mean aircraft.cruise?"],
  ["altogetherUnknown", "nothing is named altogetherUnknown", "give it a value under given or work"],
  ["leening(tas, bank)", "there is no function leening", "did you mean leaning?"],
  ["leaning(tas)", "leaning takes 2 arguments: tas, bank; here it has 1", "write leaning(tas, bank)"],
  ["sides(tas)", "sides gives several values", "write sides(…).half or sides(…).way"],
  ["sides(tas).third", "sides gives no third", "write sides(…).half or sides(…).way"],
  ["sides(tas).constructor", "sides gives no constructor", "write sides(…).half or sides(…).way"],
  ["abs(tas).half", "abs gives one value, without parts", "leave out .half"],
])("checkUnits finds the slip in %s and names its mend", (text, message, mend) => {
  const { errors } = check(text);
  expect(errors).toHaveLength(1);
  expect(errors[0]!.message).toContain(message);
  expect(errors[0]!.mend).toContain(mend);
});

test("checkUnits takes every formula of the catalogue with arguments in its units, and gives its result’s unit", () => {
  for (const { name, args, result } of catalogue.filter((each) => each.name !== "convert")) {
    const field = "fields" in result ? Object.keys(result.fields)[0]! : undefined;
    const text = `${name}(${args.map((_, i) => `a${i}`).join(", ")})${field ? `.${field}` : ""}`;
    const { unit, errors } = checkUnits(parseExpression(text), (each) => args[Number(each.slice(1))]?.unit);
    expect(errors, name).toEqual([]);
    expect(unit, name).toBe("fields" in result ? result.fields[field!]!.unit : result.unit);
  }
});

test.each([
  ["turnRate(wind, tas)", ["turnRate takes the bank in deg, and tas is in kt ~ give a value in deg there"]],
  [
    "turnRadius(speed, bank)",
    ['turnRadius takes the true airspeed in kt, and speed is in m/s ~ write convert(speed, "m/s", "kt")'],
  ],
  ["bankForRate(tas, 3)", []],
  ["turnRadius(tas)", ["turnRadius takes 2 arguments: tas, bank; here it has 1 ~ write turnRadius(tas, bank)"]],
  ["radius(tas, bank)", ["there is no function radius ~ did you mean turnRadius or bankForRadius?"]],
])("checkUnits knows the catalogue: %s", (text, slips) => {
  const { errors } = checkUnits(parseExpression(text), (name) => (name === "speed" ? "m/s" : unitOf(name)));
  expect(errors.map(({ message, mend }) => `${message} ~ ${mend}`)).toEqual(slips);
});

test("checkUnits lists every slip, each at its place", () => {
  const { errors } = check("leaning(leg, bnk) + nothing(tsa)");
  expect(errors.map(({ at }) => at)).toEqual([8, 13, 20, 28]);
});

test("checkUnits never throws on what parses", () => {
  const piece = fc.constantFrom(..."tas bank turn ratio 3 'left' true unknown".split(" "));
  const signs = fc.constantFrom("+", "*", "/", "^", "<", "==", "and", "or");
  const calls = fc.constantFrom(
    "leaning",
    "reach",
    "sides",
    "convert",
    "sideOf",
    "if",
    "min",
    "sin",
    "atan2",
    "constructor",
  );
  const expressions = fc.letrec<{ text: string }>((tie) => ({
    text: fc.oneof(
      { maxDepth: 3 },
      piece,
      fc.tuple(tie("text"), signs, tie("text")).map(([a, sign, b]) => `(${a} ${sign} ${b})`),
      fc.tuple(calls, fc.array(tie("text"), { maxLength: 3 })).map(([name, args]) => `${name}(${args.join(", ")})`),
      tie("text").map((a) => `(not ${a})`),
    ),
  })).text;
  fc.assert(
    fc.property(expressions, (text) => {
      fc.pre(text.length <= 400);
      for (const { at, mend } of check(text).errors) {
        expect(at).toBeLessThan(text.length);
        expect(mend).not.toBe("");
      }
    }),
  );
});
