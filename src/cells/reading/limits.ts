/**
 * Limits that no honest chapter meets. They are checked first, because the libraries beneath take quadratic time, or
 * overflow the stack, on texts made to hurt.
 */
export const limits = {
  /** Characters of a file. */
  file: 300_000,
  /** Characters of lines without a blank one between: a paragraph, a list, a table. */
  paragraph: 6_000,
  /** Signs in a paragraph that may open or close something: brackets, stars, backticks … */
  signs: 1_500,
  /** The same in the whole file. */
  allSigns: 40_000,
  /** Lists and quotes, or YAML, inside each other. */
  nesting: 12,
  /** Cells of all tables. */
  tableCells: 5_000,
  /** Columns of one table. */
  tableColumns: 24,
  /** Characters of the front matter or of one fence. */
  yaml: 20_000,
  /** Fences, headings and callouts together. */
  blocks: 600,
  /** Exercises, workings, predictions and figures together. */
  cells: 200,
  /** Quantities given, and quantities computed. */
  quantities: 100,
  /** Live values, links, side notes and formulas in prose. */
  references: 3_000,
  /** Formulas typeset. */
  formulas: 400,
  /** Characters of one formula. */
  formula: 1_000,
  /** Calls of formulas in the expressions of work, workings and predictions, in units of `expressionCost`. */
  calls: 20_000,
  /** The same in the trial draws of exercises. */
  trials: 50_000,
  /** Names in those expressions. */
  words: 5_000,
  /** Names in the expressions of exercises. */
  exerciseWords: 4_000,
  /** Calls of formulas in them, each expression counted once. */
  exerciseCalls: 20_000,
  /** Characters of all fences. */
  allFences: 120_000,
} as const;
