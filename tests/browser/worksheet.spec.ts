import { chapter, expect, field, shownFor, slider, test } from "./page.ts";

test.beforeEach(async ({ page }) => {
  await page.goto(chapter);
  await page.locator("#figure-1").scrollIntoViewIfNeeded();
});

const everywhere = async (page: Parameters<typeof shownFor>[0], knots: string) => {
  await expect.poll(async () => new Set((await shownFor(page, "tas")).prose)).toEqual(new Set([`${knots}\u00a0kt`]));
  const { fields } = await shownFor(page, "tas");
  expect(fields).toEqual([knots, knots]);
};

test("a slider changes the quantity in prose, in every figure and, once let go, in the address", async ({ page }) => {
  await slider(page, "#figure-1", "tas").focus();
  await page.keyboard.press("ArrowRight");
  await everywhere(page, "100");
  await expect(page).toHaveURL(/[?&]tas=100(&|$)/);
});

test("a number field changes the same quantity, and a value beyond the slider's end widens it", async ({ page }) => {
  await field(page, "#figure-1", "tas").fill("207.5");
  await field(page, "#figure-1", "tas").press("Enter");
  await everywhere(page, "207.5");
  expect(Number(await slider(page, "#figure-1", "tas").getAttribute("max"))).toBe(207.5);
  await expect(page).toHaveURL(/[?&]tas=207\.5(&|$)/);
});

test("a live value in prose changes the same quantity by keys and by typing", async ({ page }) => {
  const value = page.locator('.given[data-given="tas"]').first();
  await value.focus();
  await page.keyboard.press("ArrowRight");
  await everywhere(page, "100");
  await page.keyboard.press("Enter");
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("110");
  await page.keyboard.press("Enter");
  await everywhere(page, "110");
});

test("an address restores the sheet", async ({ page }) => {
  await page.goto(`${chapter}?tas=120&bank=20`);
  await everywhere(page, "120");
  expect((await shownFor(page, "bank")).fields).toContain("20");
});

for (const search of ["?tas=abc", "?tas=1e9", "?nothing=5", "?tas=%3Cscript%3E", `?tas=${"9".repeat(5000)}`]) {
  test(`the address ${search.slice(0, 20)} falls back to the defaults with a notice`, async ({ page }) => {
    await page.goto(`${chapter}${search}`);
    await everywhere(page, "95");
    await expect(page.locator('[data-part="notices"] .notice').first()).toBeVisible();
  });
}
