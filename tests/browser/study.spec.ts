import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { turnRadius, turnRate } from "../../src/calc/index.ts";
import { chapter, expect, field, slider, test } from "./page.ts";

test.beforeEach(async ({ page }) => {
  await page.goto(chapter);
});

/** The two numbers that an exercise's question names. */
async function numbersOf(page: Page, id: string): Promise<{ tas: number; bank: number }> {
  const ask = await page.locator(`#${id} [data-part="ask"]`).textContent();
  return { tas: Number(/(\d+)\s*kt/.exec(ask!)![1]), bank: Number(/(\d+)°/.exec(ask!)![1]) };
}

const verdict = (page: Page, id: string) => page.locator(`#${id} [data-part="verdict"] .word`);

test("a student types the diameter, is told so, and marks the radius right", async ({ page }) => {
  const { tas, bank } = await numbersOf(page, "turning-radius");
  const radius = turnRadius(tas, bank);
  const reply = page.locator("#turning-radius-reply");
  await reply.fill(`${(2 * radius).toFixed(2)} NM`);
  await reply.press("Enter");
  await expect(verdict(page, "turning-radius")).toHaveText("Slip");
  await expect(page.locator("#turning-radius [data-part='verdict']")).toContainText("diameter");
  await expect(page.locator("#turning-radius [data-part='working']")).toContainText("9.80665");
  await reply.fill(radius.toFixed(2).replace(".", ","));
  await reply.press("Enter");
  await expect(verdict(page, "turning-radius")).toHaveText("Right");
});

test("fresh numbers change the question and clear the verdict", async ({ page }) => {
  const before = await numbersOf(page, "turning-rate");
  await page.locator("#turning-rate-reply").fill(turnRate(before.tas, before.bank).toFixed(2));
  await page.locator("#turning-rate-reply").press("Enter");
  await expect(verdict(page, "turning-rate")).toHaveText("Right");
  await expect
    .poll(async () => {
      await page.locator('#turning-rate [data-do="fresh"]').click();
      return JSON.stringify(await numbersOf(page, "turning-rate"));
    })
    .not.toBe(JSON.stringify(before));
  await expect(verdict(page, "turning-rate")).toHaveCount(0);
  const { tas, bank } = await numbersOf(page, "turning-rate");
  await page.locator("#turning-rate-reply").fill(turnRate(tas, bank).toFixed(2));
  await page.locator("#turning-rate-reply").press("Enter");
  await expect(verdict(page, "turning-rate")).toHaveText("Right");
});

test("a reply that cannot be read stays in its field", async ({ page }) => {
  const reply = page.locator("#turning-radius-reply");
  await reply.fill("half a mile or so");
  await reply.press("Enter");
  await expect(verdict(page, "turning-radius")).toHaveText("Unreadable");
  await expect(reply).toHaveValue("half a mile or so");
});

test("a choice and an order are answered with the keyboard alone", async ({ page }) => {
  const right = page.locator('#turning-sink input[value="falls"]');
  await right.focus();
  await page.keyboard.press("Space");
  await page.keyboard.press("Enter");
  await expect(verdict(page, "turning-sink")).toHaveText("Right");
  const wanted = ["lean", "short", "pull", "grow", "slow"];
  const rows = () =>
    page.locator("#turning-chain [data-key]").evaluateAll((all) => all.map((row) => row.getAttribute("data-key")));
  for (const [place, key] of wanted.entries()) {
    for (let at = (await rows()).indexOf(key); at > place; at--) {
      const up = page.locator(`#turning-chain [data-key="${key}"]`).locator('[data-move="-1"]');
      await up.focus();
      await page.keyboard.press("Enter");
    }
  }
  expect(await rows()).toEqual(wanted);
  await page.locator('#turning-chain [data-part="mark"]').focus();
  await page.keyboard.press("Enter");
  await expect(verdict(page, "turning-chain")).toHaveText("Right");
});

test("a prediction keeps the present curve, makes the change and says what to see", async ({ page }) => {
  await page.locator('#predict-1 [data-key="B"]').click();
  await expect(page.locator("#predict-1 [data-part='answer']")).toHaveText("D is right, not B.");
  await expect(page.locator("#predict-1 .reveal")).toContainText(turnRadius(190, 15).toFixed(2));
  await page.locator("#figure-1").scrollIntoViewIfNeeded();
  await expect(field(page, "#figure-1", "tas")).toHaveValue("190");
  await expect(page.locator("#figure-1 [data-part='kept']")).toBeVisible();
  await expect(page).toHaveURL(/tas=190/);
  await page.locator("#predict-1 [data-part='again']").click();
  await expect(field(page, "#figure-1", "tas")).toHaveValue("95");
  await expect(page.locator("#figure-1 [data-part='kept']")).toBeHidden();
});

test.describe("a figure", () => {
  test.beforeEach(async ({ page }) => {
    await page.locator("#figure-1").scrollIntoViewIfNeeded();
  });

  test("keeps a curve to compare with, and lets it go", async ({ page }) => {
    await page.locator("#figure-1 [data-part='keep']").click();
    await slider(page, "#figure-1", "tas").focus();
    await page.keyboard.press("ArrowRight");
    await expect(page.locator("#figure-1 .drawing .curve.ghost").first()).toBeVisible();
    await expect(page.locator("#figure-1 [data-part='kept-words']")).toContainText("95");
    await page.locator("#figure-1 [data-part='let-go']").click();
    await expect(page.locator("#figure-1 .drawing .curve.ghost")).toHaveCount(0);
  });

  test("shows a table whose numbers are those of the formula", async ({ page }) => {
    await page.locator("#figure-1 [data-part='show-table']").click();
    const texts = () => page.locator("#figure-1 table tbody tr").allInnerTexts();
    await expect
      .poll(async () => (await texts()).find((row) => /^[▸⋯\s]*15\s/.test(row)))
      .toContain(turnRate(95, 15).toFixed(2));
  });

  for (const [kind, starts] of [
    ["svg", /^(<\?xml|<svg)/],
    ["png", /^.PNG/],
    ["csv", /Bank/],
  ] as const) {
    test(`saves itself as ${kind}`, async ({ page }) => {
      await page.locator("#figure-1 [data-part='save'] summary").click();
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.locator(`#figure-1 [data-save="${kind}"]`).click(),
      ]);
      const content = readFileSync((await download.path())!, "latin1");
      expect(content).toMatch(starts);
      if (kind === "svg") expect(content).not.toMatch(/var\(|currentColor/);
    });
  }

  test("resets to the chapter's own numbers", async ({ page }) => {
    await field(page, "#figure-1", "bank").fill("28");
    await field(page, "#figure-1", "bank").press("Enter");
    await expect(page).toHaveURL(/bank=28/);
    await page.locator("#figure-1 [data-part='reset']").click();
    await expect(field(page, "#figure-1", "bank")).toHaveValue("15");
    await expect(page).not.toHaveURL(/bank=/);
  });

  test("says plainly when a number lies outside its model, and the page lives on", async ({ page }) => {
    await field(page, "#figure-1", "bank").fill("95");
    await field(page, "#figure-1", "bank").press("Enter");
    await expect(page.locator("#figure-1 [data-part='notice']")).toContainText("85");
    await expect(page.locator('.live.trouble[data-is="radius"]').first()).toBeVisible();
    await field(page, "#figure-1", "bank").fill("20");
    await field(page, "#figure-1", "bank").press("Enter");
    await expect(page.locator('.live[data-is="radius"]').first()).toHaveText(
      `${turnRadius(95, 20).toFixed(2)}\u00a0NM`,
    );
  });

  test("does not shift or flash when its live drawing takes over", async ({ page }) => {
    const box = () => page.locator("#figure-1 .plot").boundingBox();
    const before = await box();
    await slider(page, "#figure-1", "tas").focus();
    await page.keyboard.press("ArrowRight");
    await expect(page.locator("#figure-1 .plot[data-live]")).toHaveCount(1);
    const after = await box();
    expect(after!.height).toBeCloseTo(before!.height, 0);
    expect(after!.width).toBeCloseTo(before!.width, 0);
  });
});

test("an answer in the page's own JSON never reaches the text before it is asked for", async ({ page }) => {
  await expect(page.locator("exercise-cell [data-part='verdict'] .word")).toHaveCount(0);
  await expect(page.locator("predict-cell .reveal:visible")).toHaveCount(0);
});
