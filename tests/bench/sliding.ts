import type { Browser, Page } from "@playwright/test";
import { openPage, slow } from "./browser.ts";
import type { Measured } from "./budget.ts";
import { replotScript } from "./replot-script.ts";
import { quantile } from "./summary.ts";

const moves = 200;

/**
 * A slider's move to the painted page with two figures in view and the processor slowed four times,
 * against drawing both figures anew with Plot; then the same with eight figures on the page.
 */
export async function measureSliding(browser: Browser, url: string): Promise<Measured[]> {
  const page = await openPage(browser, url);
  await bringIntoView(page);
  await slow(page, 4);
  const moved = await page.evaluate(slide, moves);
  await page.addScriptTag({ content: await replotScript() });
  const replotted = await page.evaluate(replot, moves);
  await page.evaluate(addFigures, 6);
  const among = await page.evaluate(slide, moves);
  await page.context().close();
  const [p95, again, eight] = [moved, replotted, among].map((values) => quantile(values, 0.95)) as [
    number,
    number,
    number,
  ];
  const [p50, again50, eight50] = [moved, replotted, among].map((values) => quantile(values, 0.5)) as [
    number,
    number,
    number,
  ];
  return [
    {
      what: "slider to painted, 2 figures in view, processor slowed 4 times, p95",
      measured: p95,
      unit: "ms",
      atMost: 20,
    },
    { what: "the same, p50", measured: p50, unit: "ms" },
    { what: "drawing both anew with Plot, p95", measured: again, unit: "ms" },
    { what: "slider against drawing anew, p50", measured: p50 / again50, unit: "", atMost: 0.4 },
    { what: "8 figures on the page against 2, p50", measured: eight50 / p50, unit: "", atMost: 1.1 },
    { what: "8 figures on the page, p95", measured: eight, unit: "ms" },
  ];
}

/** Both figures come into view, so that each has its live drawing, and both stay in it. */
async function bringIntoView(page: Page): Promise<void> {
  await page.evaluate(() => {
    const [first, second] = document.querySelectorAll("figure-cell");
    first!.after(second!);
  });
  await page.locator("figure-cell").first().scrollIntoViewIfNeeded();
  await page.setViewportSize({ width: 1280, height: 1900 });
  await page.evaluate(() => document.querySelector("figure-cell")!.scrollIntoView());
  const slider = page.locator('figure-cell .set[data-given="tas"] [data-part="range"]').first();
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  await page.waitForTimeout(1500);
}

/** Milliseconds of main-thread work from a move of the slider to the paint after it. Runs in the page. */
async function slide(count: number): Promise<number[]> {
  const slider = document.querySelector<HTMLInputElement>('figure-cell .set[data-given="tas"] [data-part="range"]')!;
  const times: number[] = [];
  for (let i = 0; i < count; i++) {
    const from = performance.now();
    slider.value = String(70 + ((i * 5) % 100));
    slider.dispatchEvent(new Event("input", { bubbles: true }));
    const handled = performance.now() - from;
    times.push(
      handled +
        (await new Promise<number>((done) => {
          requestAnimationFrame((frame) => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => done(performance.now() - frame);
            port2.postMessage(0);
          });
        })),
    );
  }
  return times;
}

/** The same for drawing both figures anew at the same speeds. Runs in the page. */
async function replot(count: number): Promise<number[]> {
  const times: number[] = [];
  for (let i = 0; i < count; i++) {
    const tas = 70 + ((i * 5) % 100);
    times.push(
      await new Promise<number>((done) => {
        requestAnimationFrame((frame) => {
          (window as unknown as { drawAnew(tas: number): void }).drawAnew(tas);
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => done(performance.now() - frame);
          port2.postMessage(0);
        });
      }),
    );
  }
  return times;
}

/** More figures at the foot of the page, each shown once so that it is live, then out of view. Runs in the page. */
async function addFigures(count: number): Promise<void> {
  type Cell = HTMLElement & { worksheet: unknown; facts: unknown };
  const cells = [...document.querySelectorAll<Cell>("figure-cell")];
  const place = scrollY;
  for (let i = 0; i < count; i++) {
    const model = cells[i % cells.length]!;
    const copy = model.cloneNode(true) as Cell;
    document.querySelector("article")!.append(copy);
    copy.facts = model.facts;
    copy.worksheet = model.worksheet;
    copy.scrollIntoView();
    await new Promise((done) => setTimeout(done, 400));
  }
  scrollTo(0, place);
  await new Promise((done) => setTimeout(done, 800));
}
