export { type FormulaCall, formulaCalls } from "./calls.ts";
export { ExpressionError } from "./error.ts";
export { evaluate, type ValueOf } from "./evaluate.ts";
export { nearIn } from "./near.ts";
export { type CallNode, type Node, namesIn, type Value } from "./node.ts";
export { DEEPEST, LONGEST, parseExpression } from "./parse.ts";
export { substituted, substitutedNumber } from "./substituted.ts";
export { checkUnits } from "./units.ts";
