import { chapter, expect, shownFor, test } from "./page.ts";

test.beforeEach(async ({ page }) => {
  await page.goto(chapter);
  await page.locator("#figure-1").scrollIntoViewIfNeeded();
});

const everywhere = async (page: Parameters<typeof shownFor>[0], knots: string) => {
  await expect.poll(async () => new Set((await shownFor(page, "tas")).prose)).toEqual(new Set([`${knots}\u00a0kt`]));
  expect(new Set((await shownFor(page, "tas")).fields)).toEqual(new Set([knots]));
};

test("a slider changes the quantity in prose, in every figure and, once let go, in the address", async ({ page }) => {
  const slider = page.locator('#figure-1 input[type="range"][name="tas"]');
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  await everywhere(page, "100");
  await expect(page).toHaveURL(/[?&]tas=100(&|$)/);
});

test("a number field changes the same quantity, and a value beyond the slider's end widens it", async ({ page }) => {
  const field = page.locator('#figure-1 input[inputmode="decimal"][name="tas"]');
  await field.fill("197.5");
  await field.press("Enter");
  await everywhere(page, "197.5");
  const slider = page.locator('#figure-1 input[type="range"][name="tas"]');
  expect(Number(await slider.getAttribute("max"))).toBeGreaterThanOrEqual(197.5);
  await expect(page).toHaveURL(/[?&]tas=197\.5(&|$)/);
});

test("a live value in prose changes the same quantity by keys and by typing", async ({ page }) => {
  const value = page.locator('[data-given="tas"]').first();
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
