import { defineConfig } from "@playwright/test";
import { chromiumPath } from "./tests/browser/chromium.mjs";

/** The built site, served from a subfolder as a school's server would. */
const port = Number(process.env["PORT"] ?? 4183);
const executablePath = chromiumPath();

export default defineConfig({
  testDir: "tests/browser",
  outputDir: "test-results/browser",
  fullyParallel: true,
  workers: 2,
  forbidOnly: Boolean(process.env["CI"]),
  reporter: process.env["CI"] ? [["list"], ["json", { outputFile: "test-results/browser.json" }]] : [["list"]],
  use: {
    baseURL: `http://127.0.0.1:${port}/school/hoodwork/`,
    launchOptions: {
      ...(executablePath && { executablePath }),
      args: [
        "--no-sandbox",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
      ],
    },
  },
  webServer: { command: `node tests/serve.mjs dist ${port} /school/hoodwork/`, port, reuseExistingServer: false },
});
