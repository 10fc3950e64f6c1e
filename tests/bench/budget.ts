/** One measured figure beside what the plan of the house allows. */
export interface Measured {
  readonly what: string;
  readonly measured: number;
  readonly unit: string;
  /** The budget; left out where there is none. */
  readonly atMost?: number;
  readonly atLeast?: number;
}

export const meets = ({ measured, atMost, atLeast }: Measured): boolean =>
  (atMost === undefined || measured <= atMost) && (atLeast === undefined || measured >= atLeast);

/** The figures side by side with their budgets, as a table of text. */
export function table(rows: readonly Measured[]): string {
  const lines = rows.map((row) => [
    row.what,
    `${round(row.measured)} ${row.unit}`.trim(),
    row.atMost === undefined ? (row.atLeast === undefined ? "" : `at least ${row.atLeast}`) : `at most ${row.atMost}`,
    row.atMost === undefined && row.atLeast === undefined ? "" : meets(row) ? "met" : "MISSED",
  ]);
  const widths = [0, 1, 2, 3].map((column) => Math.max(...lines.map((line) => line[column]!.length)));
  return lines
    .map((line) =>
      line
        .map((text, column) => text.padEnd(widths[column]!))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

const round = (value: number): number => Number(value.toPrecision(3));
