import { existsSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { join, resolve } from "node:path";
import { ensureBrowser } from "../browser/chromium.mjs";
import { serve } from "../serve.mjs";
import { launch } from "./browser.ts";
import { type Measured, meets, table } from "./budget.ts";
import { measureBuild } from "./building.ts";
import { measureVisit } from "./bytes.ts";
import { measureEvaluating } from "./evaluating.ts";
import { measureLighthouse } from "./lighthouse.ts";
import { measureAtlas, measureSliding } from "./sliding.ts";

/** Measures what the budgets name and prints both side by side; --json prints the rows as JSON. */
export async function main(options: readonly string[]): Promise<number> {
  const json = options.includes("--json");
  const dist = resolve(import.meta.dirname, "../../dist");
  if (!existsSync(join(dist, "index.html"))) {
    console.error("Nothing is built: run `npm run build` first.");
    return 1;
  }
  await ensureBrowser(json ? () => {} : console.log);
  const server = await serve(dist);
  const site = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const chapter = `${site}/chapters/turning.html`;
  const rows: Measured[] = [];
  const took = (more: readonly Measured[]) => {
    rows.push(...more);
    if (!json) console.log(table(more));
  };
  const browser = await launch();
  took(await measureSliding(browser, chapter));
  took(await measureAtlas(browser, `${site}/atlas.html`));
  took(await measureVisit(browser, chapter));
  await browser.close();
  for (const [name, path] of [
    ["contents", `${site}/index.html`],
    ["chapter", chapter],
  ] as const) {
    took(await measureLighthouse(name, path));
  }
  server.close();
  took(measureEvaluating());
  took(measureBuild());
  if (json)
    console.log(
      JSON.stringify(
        rows.map((row) => ({ ...row, met: meets(row) })),
        null,
        2,
      ),
    );
  else console.log(`${rows.filter((row) => !meets(row)).length} of ${rows.length} over budget.`);
  return 0;
}
