import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { saveTeal } from "./own-school.ts";
import { expect, field, slider, test } from "./page.ts";

const atlas = "atlas.html";
const bank = "bankByTenthPlusSevenRule";
const entry = (page: Page, key: string) => page.locator(`#${key}`);
const sentence = (page: Page, key: string) => entry(page, key).locator('[data-part="sentence"]');
const answer = (page: Page, key: string) => entry(page, key).locator('[data-part="answer"]');
const fold = (page: Page, key: string) => entry(page, key).locator("details.fold");
const opener = (page: Page, key: string) => entry(page, key).getByText("Show the figure");

/** Types a number into a figure's field. */
async function type(page: Page, key: string, name: string, text: string): Promise<void> {
  await field(page, `#${key}`, name).fill(text);
  await field(page, `#${key}`, name).press("Enter");
}

test("every rule stands in the list with its sentence, and no figure is open", async ({ page }) => {
  await page.goto(atlas);
  await expect(page.getByRole("heading", { level: 1, name: "Error atlas" })).toBeVisible();
  const rules = page.locator(".atlas-rule");
  expect(await rules.count()).toBeGreaterThan(14);
  for (const words of await page.locator('[data-part="sentence"]').allTextContents())
    expect(words).toMatch(/ is (within|outside) .*\.$/);
  await expect(page.locator("figure-cell:visible")).toHaveCount(0);
});

test("a rule is chosen, its figure opens alone and the address names it", async ({ page }) => {
  await page.goto(atlas);
  await opener(page, bank).click();
  await expect(page.locator(`#${bank} .plot svg text:visible`).first()).toBeVisible();
  expect(new URL(page.url()).hash).toBe(`#${bank}`);
  await opener(page, "levelOffLeadByRule").click();
  await expect(fold(page, bank)).not.toHaveAttribute("open");
  await expect(fold(page, "levelOffLeadByRule")).toHaveAttribute("open", "");
  expect(new URL(page.url()).hash).toBe("#levelOffLeadByRule");
});

test("a tolerance changes the sentence, in the figure and for every rule judged by it", async ({ page }) => {
  await page.goto(`${atlas}#${bank}`);
  await expect(answer(page, bank)).toContainText("within 1° from 115 to 168");
  await type(page, bank, "bankTolerance", "0.5");
  await expect(answer(page, bank)).toContainText("within 0.5° from ");
  await expect(answer(page, bank)).not.toContainText("115 to 168");
  await expect(sentence(page, "bankByFifteenPercentRule")).toContainText("within 0.5° from 47 to ");
  await expect(page.locator('#tolerances .given[data-given="bankTolerance"]')).toHaveText("0.5°");
});

test("the shading follows the tolerance", async ({ page }) => {
  await page.goto(`${atlas}#${bank}`);
  const shaded = page.locator(`#${bank} .drawing:visible .over path`).first();
  await type(page, bank, "tas", "100");
  const before = await shaded.getAttribute("d");
  await type(page, bank, "bankTolerance", "3");
  await expect(shaded).not.toHaveAttribute("d", before!);
});

test("a tolerance is set by the keys in the list at the top", async ({ page }) => {
  await page.goto(atlas);
  await page.locator('#tolerances .given[data-given="altitudeTolerance"]').focus();
  await page.keyboard.press("ArrowLeft");
  await expect(sentence(page, "settingErrorByRule")).toContainText("within 95");
  expect(new URL(page.url()).searchParams.get("altitudeTolerance")).toBe("95");
});

test("the address restores the rule, the numbers and the tolerance", async ({ page }) => {
  await page.goto(`${atlas}#rollOutLeadByRule`);
  await type(page, "rollOutLeadByRule", "tas", "120");
  await type(page, "rollOutLeadByRule", "headingTolerance", "2.5");
  await expect(answer(page, "rollOutLeadByRule")).toContainText(/At 120.* 2\.5°/);
  const [words, address] = [await answer(page, "rollOutLeadByRule").textContent(), page.url()];
  await page.goto("about:blank");
  await page.goto(address);
  await expect(fold(page, "rollOutLeadByRule")).toHaveAttribute("open", "");
  await expect(field(page, "#rollOutLeadByRule", "tas")).toHaveValue("120");
  await expect(answer(page, "rollOutLeadByRule")).toHaveText(words!);
});

test("an address that asks for nonsense says so and opens with the atlas's own numbers", async ({ page }) => {
  await page.goto(`${atlas}?bankTolerance=-4&tas=fast#noSuchRule`);
  await expect(page.locator('[data-part="notices"] .notice')).toHaveCount(2);
  await expect(sentence(page, bank)).toContainText("within 1° from 115 to 168");
});

test("numbers that have no answer say so, and come back with others", async ({ page }) => {
  await page.goto(`${atlas}#rollOutHeadingByRule`);
  await type(page, "rollOutHeadingByRule", "bank", "40");
  await expect(entry(page, "rollOutHeadingByRule").locator('[data-part="notice"]')).toContainText("no value");
  await type(page, "rollOutHeadingByRule", "bank", "15");
  await expect(answer(page, "rollOutHeadingByRule")).toContainText("15° of bank");
});

test("the school's own aircraft is judged over its own range, in the sentences and in a figure", async ({ page }) => {
  await saveTeal(page);
  await page.goto(`${atlas}#${bank}`);
  const range = entry(page, bank).locator('[data-part="judged"]');
  await expect(range).toContainText("the Teal’s true airspeeds");
  await expect(range).not.toContainText("47 to 183");
  await expect(field(page, `#${bank}`, "tas")).toHaveValue("124");
  await expect(answer(page, bank)).toBeVisible();
  await expect(entry(page, bank).locator('[data-part="model"]')).toContainText("Teal");
  await expect(sentence(page, "rollOutLeadByRule")).toContainText("At 124");
  expect(new URL(page.url()).search).toBe("");
});

test("every link of the atlas leads to something that is there", async ({ page, request }) => {
  await page.goto(atlas);
  const links = await page
    .locator("main a[href]")
    .evaluateAll((all) => [...new Set(all.map((link) => (link as HTMLAnchorElement).href))]);
  expect(links.length).toBeGreaterThan(40);
  const texts = new Map<string, string>();
  for (const link of links) {
    const { pathname, hash } = new URL(link);
    if (!texts.has(pathname)) texts.set(pathname, await (await request.get(pathname)).text());
    expect(texts.get(pathname), link).toContain(`id="${hash.slice(1)}"`);
  }
});

test("a curve is kept beside another, and the table and a file hold the numbers", async ({ page }) => {
  await page.goto(`${atlas}#rollOutLeadByRule`);
  const figure = entry(page, "rollOutLeadByRule");
  await figure.getByRole("button", { name: "Keep" }).click();
  await slider(page, "#rollOutLeadByRule", "rollRate").focus();
  await page.keyboard.press("ArrowRight");
  await expect(figure.locator(".drawing:visible .curve.ghost path").first()).toBeVisible();
  await figure.getByRole("button", { name: "Table" }).click();
  await expect(figure.getByRole("table")).toContainText("Error of a half, °");
  await figure.getByText("Save", { exact: true }).click();
  const saved = page.waitForEvent("download");
  await figure.getByRole("button", { name: "Table, CSV" }).click();
  expect((await saved).suggestedFilename()).toBe("error-atlas-rollOutLeadByRule.csv");
});

for (const colorScheme of ["light", "dark"] as const)
  test(`the atlas with a figure open has nothing that axe objects to in ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await page.goto(`${atlas}#holdOutboundHeadingByRule`);
    await page.waitForLoadState("networkidle");
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(" ; ")}`)).toEqual([]);
  });

for (const width of [1280, 1024, 820, 390])
  test(`the atlas at ${width} px never scrolls sideways, with any figure open`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await page.goto(atlas);
    for (const key of await page.locator(".atlas-rule").evaluateAll((all) => all.map(({ id }) => id))) {
      await fold(page, key).evaluate((details: HTMLDetailsElement) => {
        details.open = true;
      });
      const [inner, outer] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
      expect(inner, key).toBeLessThanOrEqual(outer!);
    }
  });

for (const format of ["A4", "Letter"])
  test(`the table of rules prints on two pages of ${format}, without a control`, async ({ page }) => {
    await page.goto(atlas);
    const pages = (await page.pdf({ format })).toString("latin1").match(/\/Type\s*\/Page\b/g) ?? [];
    expect(pages.length).toBeLessThanOrEqual(2);
    await page.emulateMedia({ media: "print" });
    await expect(page.locator("button:visible, summary:visible")).toHaveCount(0);
    await expect(page.locator('[data-part="sentence"]:visible')).toHaveCount(await page.locator(".atlas-rule").count());
  });

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("every sentence reads, and a figure unfolds as built", async ({ page }) => {
    await page.goto(atlas);
    await expect(sentence(page, bank)).toContainText("within 1° from 115 to 168");
    await opener(page, bank).click();
    await expect(page.locator(`#${bank} .plot svg text:visible`).first()).toBeVisible();
    await expect(page.locator("button:visible")).toHaveCount(0);
  });
});
