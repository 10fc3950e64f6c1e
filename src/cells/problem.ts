/** Where something stands in a file; lines and columns count from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** A mistake an author made: where, what, and what would mend it. */
export interface Problem extends Position {
  readonly file: string;
  readonly message: string;
  readonly mend: string;
}
