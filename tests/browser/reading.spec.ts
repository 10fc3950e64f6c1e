import AxeBuilder from "@axe-core/playwright";
import { chapter, expect, test } from "./page.ts";

const pages = ["index.html", chapter, "glossary.html", "notes/turning.html"];
const sizes = [
  { width: 1280, height: 720 },
  { width: 1024, height: 768 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
];

test("the contents page leads to the chapter", async ({ page }) => {
  await page.goto("index.html");
  await page.getByRole("link", { name: "Turning by numbers" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Turning by numbers" })).toBeVisible();
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("the chapter shows its text, values and first drawings, and no control that would do nothing", async ({
    page,
  }) => {
    await page.goto(chapter);
    await expect(page.locator('.given[data-given="tas"]').first()).toHaveText(/^95\skt$/);
    await expect(page.locator("#figure-1 svg text:visible").first()).toBeVisible();
    await expect(page.locator("#figure-2 svg text:visible").first()).toBeVisible();
    await expect(page.getByRole("slider").and(page.locator("input"))).toHaveCount(0);
    await expect(page.locator("button:visible")).toHaveCount(0);
  });
});

for (const path of pages) {
  for (const colorScheme of ["light", "dark"] as const) {
    test(`${path} in ${colorScheme} has nothing that axe objects to`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await page.goto(path);
      await page.waitForLoadState("networkidle");
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(" ; ")}`)).toEqual([]);
    });
  }

  for (const size of sizes) {
    test(`${path} at ${size.width} px never scrolls sideways`, async ({ page }) => {
      await page.setViewportSize(size);
      await page.goto(path);
      await page.waitForLoadState("networkidle");
      const [inner, outer] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
      expect(inner).toBeLessThanOrEqual(outer);
    });
  }
}

test("every link within the site leads somewhere", async ({ page, request }) => {
  const seen = new Set<string>();
  for (const path of pages) {
    await page.goto(path);
    const links = await page
      .locator("a[href]")
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    for (const link of links.filter((href) => href.startsWith("http://127.0.0.1"))) seen.add(link);
  }
  const texts = new Map<string, string>();
  for (const link of seen) {
    const { pathname, hash } = new URL(link);
    if (!texts.has(pathname)) {
      const response = await request.get(pathname);
      expect(response.status(), link).toBe(200);
      texts.set(pathname, await response.text());
    }
    if (hash) expect(texts.get(pathname), link).toContain(`id="${hash.slice(1)}"`);
  }
});

test("the shade and the regional words are kept from page to page", async ({ page }) => {
  await page.emulateMedia({ colorScheme: "light" });
  await page.goto("glossary.html");
  await page.getByRole("button", { name: "Dark" }).click();
  await page.getByRole("radio", { name: /standard rate/ }).check();
  await page.goto(chapter);
  await expect(page.locator("html")).toHaveAttribute("data-theme", "dark");
  await expect(page.locator(".term .american").first()).toBeVisible();
  await expect(page.locator(".term .british").first()).toBeHidden();
});

test("on paper the chapter is black on white and shows no control", async ({ page }) => {
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  await page.goto(chapter);
  await expect(page.locator("button:visible:not(.choices button), input[type=range]:visible")).toHaveCount(0);
  await expect(page.getByText("It becomes four times as large")).toBeVisible();
  const [ground, ink] = await page.evaluate(() => {
    const style = getComputedStyle(document.documentElement);
    return [style.backgroundColor, style.color];
  });
  expect([ground, ink]).toEqual(["rgb(255, 255, 255)", "rgb(0, 0, 0)"]);
});
