import { join } from "node:path";
import { build } from "vite";

/** The bench's own drawing of both figures from nothing, as one classic script for the page. */
export async function replotScript(): Promise<string> {
  const here = import.meta.dirname;
  const result = await build({
    configFile: false,
    logLevel: "warn",
    root: here,
    build: {
      write: false,
      target: "es2022",
      lib: { entry: join(here, "replot.ts"), formats: ["iife"], name: "replot" },
    },
  });
  const [bundle] = Array.isArray(result) ? result : [result];
  if (!bundle || !("output" in bundle)) throw new Error("The bench's script was not built");
  return bundle.output[0].code;
}
