// What a chapter is made of. These names are a contract: arguments may grow, they keep working.
export type * from "./chapter.ts";
export { builtIn, type Course, readCourse, readGlossary } from "./course.ts";
export type { Draw, Exercise, Measured, Question, Reply, Settings, Verdict } from "./exercises/index.ts";
export { DrawProblem, draw, fill, mark, pose } from "./exercises/index.ts";
export { ExpressionError, evaluate, parseExpression } from "./expressions/index.ts";
export { figures } from "./figures.ts";
export type * from "./known.ts";
export { printed, printedParts } from "./printed.ts";
export type * from "./problem.ts";
export { quantities } from "./quantities.ts";
export { readChapter } from "./reading/index.ts";
export { workingOf } from "./workings.ts";
export { addressOf, fromAddress, Worksheet } from "./worksheet.ts";
