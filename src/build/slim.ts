import { join } from "node:path";
import type { Plugin } from "vite";

/** Keeps out of a reader's browser what only the build reads, and what no drawing needs. */
export const slim = (): Plugin[] => [withoutMaps, withoutUnasked, withoutSentences];

const withoutMaps: Plugin = {
  name: "without-maps",
  apply: "build",
  enforce: "pre",
  resolveId: (id) => (id === "d3-geo" ? join(import.meta.dirname, "without-maps.ts") : undefined),
};

/** Colour schemes and dates, which Plot offers and no drawing asks for: their names stay, without anything behind. */
const unasked = ["d3-scale-chromatic", "d3-time-format"];

const withoutUnasked: Plugin = {
  name: "without-unasked",
  apply: "build",
  enforce: "pre",
  resolveId: (id) => (unasked.includes(id) ? `\0unasked:${id}` : undefined),
  async load(id) {
    if (!id.startsWith("\0unasked:")) return;
    const names = Object.keys(await import(id.slice("\0unasked:".length)));
    return names.map((name) => `export const ${name} = () => undefined;`).join("\n");
  },
};

/** The catalogue's assumptions and sources stand in the built HTML of the formula sheet. */
const withoutSentences: Plugin = {
  name: "without-sentences",
  apply: "build",
  enforce: "post",
  transform(code, id) {
    if (!/src\/calc\/catalogue\/[^/]+\.ts$/.test(id)) return;
    return { code: without(["assumes", "source"], code, this.parse(code)), map: null };
  },
};

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

/** The code without these properties of its object literals. */
function without(names: readonly string[], code: string, root: unknown): string {
  const cuts: Node[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    const node = value as Node & { key?: { name?: string }; shorthand?: boolean };
    if (node.type === "Property" && names.includes(node.key?.name ?? "")) {
      cuts.push(node);
      return;
    }
    for (const child of Object.values(node)) walk(child);
  };
  walk(root);
  return cuts
    .toSorted((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => `${text.slice(0, start)}${text.slice(end).replace(/^\s*,/, "")}`, code);
}
