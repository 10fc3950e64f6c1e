import type { Formula } from "../../calc/index.ts";

export type Kind = Formula["kind"];

export const kindWords: Readonly<Record<Kind, string>> = { exact: "exact", model: "model", rule: "rule of thumb" };

const lines: Readonly<Record<Kind, string>> = {
  exact: '<path class="line exact" d="M0 5h32"/>',
  model: '<path class="spread" d="M0 1h32v8H0z"/><path class="line exact" d="M0 5h32"/>',
  rule: '<path class="line rule" d="M0 5h32"/>',
};

/** How a formula of that kind is drawn in every figure: solid, solid within its band, dashed. */
export const kindSample = (kind: Kind): string =>
  `<svg class="line-sample" viewBox="0 0 32 10" aria-hidden="true">${lines[kind]}</svg>`;
