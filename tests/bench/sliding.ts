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
  const moved = await page.evaluate(timeMoves, { count: moves, knob: `figure-cell ${knob}` });
  await page.addScriptTag({ content: await replotScript() });
  const replotted = await page.evaluate(timeMoves, { count: moves });
  await page.evaluate(addFigures, 6);
  const among = await page.evaluate(timeMoves, { count: moves, knob: `figure-cell ${knob}` });
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

/** A slider of the error atlas: the rule's error is computed over the whole range, its crossings are found, and it is painted. */
export async function measureAtlas(browser: Browser, url: string): Promise<Measured[]> {
  const page = await openPage(browser, `${url}#bankByTenthPlusSevenRule`);
  await page.locator(`#bankByTenthPlusSevenRule ${knob}`).focus();
  await page.keyboard.press("ArrowRight");
  await page.waitForTimeout(1500);
  await slow(page, 4);
  const times = await page.evaluate(timeMoves, { count: moves, knob: `#bankByTenthPlusSevenRule ${knob}` });
  await page.context().close();
  return [
    { what: "atlas recomputed and painted, processor slowed 4 times, p50", measured: quantile(times, 0.5), unit: "ms" },
    { what: "the same, p95", measured: quantile(times, 0.95), unit: "ms" },
  ];
}

/** The slider of the true airspeed in a figure. */
const knob = '.set[data-given="tas"] [data-part="range"]';

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

interface Moves {
  readonly count: number;
  /** The slider to move; without one, both figures are drawn anew with Plot. */
  readonly knob?: string;
}

/**
 * Milliseconds of main-thread work for each move: the handling of the input, and its frame from the first callback to
 * the paint. Waiting for the frame to begin is not work. Runs in the page.
 */
async function timeMoves({ count, knob }: Moves): Promise<number[]> {
  const { drawAnew } = window as unknown as { drawAnew(tas: number): void };
  const slider = knob ? document.querySelector<HTMLInputElement>(knob)! : undefined;
  const times: number[] = [];
  for (let i = 0; i < count; i++) {
    const tas = 70 + ((i * 5) % 100);
    let begun = 0;
    requestAnimationFrame(() => {
      begun = performance.now();
      if (!slider) drawAnew(tas);
    });
    const from = performance.now();
    if (slider) {
      slider.value = String(tas);
      slider.dispatchEvent(new Event("input", { bubbles: true }));
    }
    const handled = performance.now() - from;
    const framed = await new Promise<number>((done) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => done(performance.now() - begun);
        port2.postMessage(0);
      });
    });
    times.push(handled + framed);
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
