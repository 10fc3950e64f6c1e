import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { chromiumPath } from "../browser/chromium.mjs";
import { chromiumArguments } from "./browser.ts";
import type { Measured } from "./budget.ts";

interface Report {
  readonly categories: Record<string, { readonly score: number | null }>;
  readonly audits: Record<string, { readonly numericValue?: number }>;
}

/** Lighthouse's scores for a page on its simulated phone, and when its text can be read there. */
export async function measureLighthouse(name: string, url: string): Promise<Measured[]> {
  const flags = ["--headless=new", ...chromiumArguments].join(" ");
  const options = [
    "lighthouse",
    url,
    "--quiet",
    "--output=json",
    "--only-categories=performance,accessibility,best-practices",
  ];
  // Not the blocking form: the pages are served by this very process.
  const { stdout } = await promisify(execFile)("npx", [...options, `--chrome-flags=${flags}`], {
    maxBuffer: 64e6,
    env: { ...process.env, ...(chromiumPath() && { CHROME_PATH: chromiumPath() }) },
  });
  const { categories, audits }: Report = JSON.parse(stdout);
  const score = (category: string) => 100 * (categories[category]?.score ?? 0);
  return [
    { what: `lighthouse, ${name}: performance`, measured: score("performance"), unit: "", atLeast: 95 },
    { what: `lighthouse, ${name}: accessibility`, measured: score("accessibility"), unit: "", atLeast: 100 },
    { what: `lighthouse, ${name}: best practices`, measured: score("best-practices"), unit: "", atLeast: 100 },
    {
      what: `lighthouse, ${name}: text readable`,
      measured: (audits["first-contentful-paint"]?.numericValue ?? Number.NaN) / 1000,
      unit: "s",
      atMost: 1.2,
    },
  ];
}
