import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser"];

/** The system's own Chromium, or undefined where there is none (the test tool's own browser is then used). */
export function chromiumPath() {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find((file) => existsSync(file));
}

/** Makes sure that there is a browser: the system's, else Debian's package, else the test tool's own download. */
export async function ensureBrowser(say = console.log) {
  const found = chromiumPath();
  if (found) return say(`Browser: the system's Chromium, ${found}.`);
  if (await hasOwnDownload()) return say("Browser: the test tool's own Chromium, downloaded before.");
  if (process.getuid?.() === 0 && spawnSync("apt-get", ["--version"]).status === 0) {
    say("Browser: none found. Installing Debian's package 'chromium' (apt-get, as root) …");
    if (installPackage()) return say(`Browser: Debian's Chromium, ${chromiumPath()}.`);
    say("Debian's package could not be installed.");
  }
  say("Browser: none found. Downloading the test tool's own Chromium (npx playwright install chromium) …");
  execFileSync("npx", ["playwright", "install", "chromium"], { stdio: "inherit" });
}

function installPackage() {
  const quiet = { stdio: ["ignore", "ignore", "inherit"], env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } };
  spawnSync("apt-get", ["update", "-qq"], quiet);
  spawnSync("apt-get", ["install", "-y", "-qq", "chromium"], quiet);
  return Boolean(chromiumPath());
}

async function hasOwnDownload() {
  const { chromium } = await import("@playwright/test");
  return existsSync(chromium.executablePath());
}
