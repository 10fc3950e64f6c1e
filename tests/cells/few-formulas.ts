import type { Formula } from "../../src/calc/catalogue/formula.ts";
import { within } from "../../src/calc/limits.ts";
import { convert, type Unit } from "../../src/calc/units.ts";

const common = { topic: "units", tex: "x", assumes: "nothing", source: "the tests", kind: "exact" } as const;
const speed = { name: "tas", words: "true airspeed", symbol: "V", unit: "kt", example: 90 };
const angle = { name: "bank", words: "bank", symbol: "\\varphi", unit: "deg", example: 15 };
const word = (name: string, ...options: string[]) => ({
  name,
  words: name,
  symbol: name,
  unit: "word",
  options,
  example: options[0]!,
});
const SPEED = { quantity: "true airspeed", unit: "kt", from: 0, to: 700, openFrom: true };

/** A few formulas of simple arithmetic, so that what the tests expect can be reckoned by hand. */
export const fewFormulas: readonly Formula[] = [
  {
    ...common,
    name: "leaning",
    words: "leaning",
    symbol: "\\lambda",
    args: [speed, angle],
    result: { unit: "deg/s" },
    digits: 2,
    tex: "\\frac{V\\varphi}{1000}",
    call: (tas: number, bank: number) => (within(SPEED, tas) * bank) / 1000,
    steps: (tas: number, bank: number) => [
      { what: "Product", symbol: "p", numbers: `${tas} × ${bank}`, comes: `${tas * bank} kt·deg` },
      { what: "Leaning", symbol: "\\lambda", tex: "\\frac{p}{1000}", numbers: `${tas * bank} / 1000` },
    ],
  },
  {
    ...common,
    name: "reach",
    words: "reach",
    symbol: "r",
    args: [speed, { name: "time", words: "time", symbol: "t", unit: "s", example: 60, default: 36 }],
    result: { unit: "NM" },
    digits: 2,
    call: (tas: number, time = 36) => (within(SPEED, tas) * time) / 3600,
    steps: (tas: number, time: number) => [
      { what: "Reach", symbol: "r", tex: "Vt", numbers: `${tas} × ${time} / 3600` },
    ],
  },
  {
    ...common,
    name: "sides",
    words: "the two sides",
    symbol: "s",
    args: [speed],
    result: { fields: { half: { unit: "kt" }, way: { unit: "deg", circle: true } }, nullable: true },
    digits: 0,
    call: (tas: number) => (tas > 200 ? null : { half: tas / 2, way: tas * 4 }),
  },
  {
    ...common,
    name: "sideOf",
    words: "side",
    symbol: "s",
    args: [angle, word("turn", "left", "right")],
    result: { unit: "word", options: ["near", "far"] },
    digits: 0,
    call: (bank: number, turn: string) => (bank > 20 === (turn === "left") ? "near" : "far"),
  },
  {
    ...common,
    name: "convert",
    words: "value in another unit",
    symbol: "x",
    args: [{ name: "value", words: "value", symbol: "x", unit: "plain", example: 1 }, word("from"), word("to")],
    result: { unit: "plain" },
    digits: 2,
    call: (value: number, from: string, to: string) => convert(value, from as Unit, to as Unit),
  },
];
