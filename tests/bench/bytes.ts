import type { Browser } from "@playwright/test";
import type { Measured } from "./budget.ts";

/** Bytes over the wire of a first visit that reads the whole chapter, by kind, and the shift of its layout. */
export async function measureVisit(browser: Browser, url: string): Promise<Measured[]> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  const kinds = new Map<string, string>();
  const bytes = new Map<string, number>();
  await session.send("Network.enable");
  session.on("Network.responseReceived", ({ requestId, type }) => kinds.set(requestId, type));
  session.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    const kind = kinds.get(requestId) ?? "Other";
    bytes.set(kind, (bytes.get(kind) ?? 0) + encodedDataLength);
  });
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[])
        shifts.push(entry.value);
    }).observe({ type: "layout-shift", buffered: true });
  });
  await page.goto(url, { waitUntil: "networkidle" });
  for (const id of ["#figure-1", "#figure-2"]) {
    await page.locator(id).scrollIntoViewIfNeeded();
    await page.waitForTimeout(500);
  }
  await page.locator('#figure-2 [data-part="range"]').first().focus();
  await page.keyboard.press("ArrowRight");
  await page.waitForTimeout(500);
  const shift = await page.evaluate(() =>
    (window as unknown as { shifts: number[] }).shifts.reduce((sum, value) => sum + value, 0),
  );
  await context.close();
  const kilobytes = (kind: string) => (bytes.get(kind) ?? 0) / 1000;
  const total = [...bytes.values()].reduce((sum, value) => sum + value, 0) / 1000;
  return [
    { what: "first visit to the chapter, all bytes, Brotli", measured: total, unit: "kB", atMost: 250 },
    { what: "of these, JavaScript", measured: kilobytes("Script"), unit: "kB", atMost: 130 },
    { what: "of these, the page", measured: kilobytes("Document"), unit: "kB" },
    { what: "of these, styles", measured: kilobytes("Stylesheet"), unit: "kB" },
    { what: "of these, fonts", measured: kilobytes("Font"), unit: "kB" },
    { what: "layout shift, loading, hydrating and first move", measured: shift, unit: "", atMost: 0.02 },
  ];
}
