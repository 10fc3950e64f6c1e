import { execFileSync } from "node:child_process";
import { chromiumPath } from "../browser/chromium.mjs";
import { chromiumArguments } from "./browser.ts";
import type { Measured } from "./budget.ts";

interface Report {
  readonly categories: Record<string, { readonly score: number | null }>;
  readonly audits: Record<string, { readonly numericValue?: number }>;
}

/** Lighthouse's scores for a page on its simulated phone, and when its text can be read there. */
export function measureLighthouse(name: string, url: string): Measured[] {
  const flags = ["--headless=new", ...chromiumArguments].join(" ");
  const options = [
    "lighthouse",
    url,
    "--quiet",
    "--output=json",
    "--only-categories=performance,accessibility,best-practices",
  ];
  const printed = execFileSync("npx", [...options, `--chrome-flags=${flags}`], {
    encoding: "utf8",
    maxBuffer: 64e6,
    env: { ...process.env, ...(chromiumPath() && { CHROME_PATH: chromiumPath() }) },
    stdio: ["ignore", "pipe", "ignore"],
  });
  const { categories, audits }: Report = JSON.parse(printed);
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
