import { type Browser, chromium, type Page } from "@playwright/test";
import { chromiumPath } from "../browser/chromium.mjs";

export const chromiumArguments = [
  "--no-sandbox",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

export function launch(): Promise<Browser> {
  const executablePath = chromiumPath();
  return chromium.launch({ ...(executablePath && { executablePath }), args: chromiumArguments });
}

/** A page of its own, at the projector's size, that may run the bench's own scripts. */
export async function openPage(browser: Browser, url: string): Promise<Page> {
  const context = await browser.newContext({ bypassCSP: true, viewport: { width: 1280, height: 1500 } });
  const page = await context.newPage();
  await page.goto(url, { waitUntil: "networkidle" });
  return page;
}

/** Slows the page's processor `times` times, as a cheap tablet's is. */
export async function slow(page: Page, times: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: times });
}
