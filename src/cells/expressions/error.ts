/** A mistake in an expression: what is wrong, where in its text, and what would mend it. */
export class ExpressionError extends Error {
  /** Offset in the expression's text, from 0. */
  readonly at: number;
  readonly mend: string;

  constructor(message: string, at: number, mend: string) {
    super(message);
    this.name = "ExpressionError";
    this.at = at;
    this.mend = mend;
  }
}
