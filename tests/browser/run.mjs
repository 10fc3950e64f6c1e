// Finds or gets a browser, then runs the browser tests on the built site.
import { spawnSync } from "node:child_process";
import { ensureBrowser } from "./chromium.mjs";

await ensureBrowser();
const { status } = spawnSync("npx", ["playwright", "test", ...process.argv.slice(2)], { stdio: "inherit" });
process.exit(status ?? 1);
