export { DrawProblem, draw, pose } from "./draw.ts";
export type * from "./exercise.ts";
export { fill } from "./fill.ts";
export { mark, type Reply, type Verdict } from "./mark.ts";
export type * from "./question.ts";
