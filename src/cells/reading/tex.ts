import katex from "katex";
import type { Mistake } from "./lexemes.ts";
import { limits } from "./limits.ts";

/** Commands that define others, load or link: a chapter has no use for them, and some never end. */
const barred =
  /\\(?:[gex]?def|(?:re)?newcommand|providecommand|let|futurelet|global|long|href|url|includegraphics|html\w*|char)(?![A-Za-z])/;

/** What keeps a formula from being typeset, and where in it. */
export function texMistake(tex: string, display: boolean): Mistake | undefined {
  if (tex.length > limits.formula)
    return { at: 0, message: `A formula runs on for more than ${limits.formula} characters.`, mend: "Divide it." };
  const command = barred.exec(tex);
  if (command)
    return { at: command.index, message: `${command[0]} can't stand in a formula.`, mend: "Write the formula out." };
  if (depthOf(tex) > limits.nesting * 2)
    return { at: 0, message: "The formula's braces stand too deep inside each other.", mend: "Write it in steps." };
  try {
    katex.renderToString(tex, {
      displayMode: display,
      throwOnError: true,
      strict: "ignore",
      output: "mathml",
      maxExpand: 100,
    });
    return undefined;
  } catch (error) {
    return {
      at: positionOf(error),
      message: "The formula can't be typeset from here on.",
      mend: "Check the command's name, its braces and their pairs; write % as \\%.",
    };
  }
}

function positionOf(error: unknown): number {
  const position = error instanceof katex.ParseError ? Number(error.position) : 0;
  return Number.isInteger(position) && position > 0 ? position : 0;
}

function depthOf(tex: string): number {
  let [depth, deepest] = [0, 0];
  for (const sign of tex) {
    if (sign === "{" || sign === "[" || sign === "(") depth++;
    if (sign === "}" || sign === "]" || sign === ")") depth = Math.max(0, depth - 1);
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}
