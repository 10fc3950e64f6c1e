import type { Formula } from "./formula.ts";

export * from "./formula.ts";

/** Every formula, in the order of the formula sheet. */
export const catalogue: readonly Formula[] = [];
