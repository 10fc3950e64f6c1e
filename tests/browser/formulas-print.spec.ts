import type { Page } from "@playwright/test";
import { expect, test } from "./page.ts";

const path = "formulas.html";

/** Pages of a PDF: its page objects stand in it uncompressed. */
async function pagesOf(page: Page, format: "A4" | "Letter"): Promise<number> {
  const pdf = await page.pdf({ format, preferCSSPageSize: true });
  return pdf.toString("latin1").match(/\/Type\s*\/Page(?![a-zA-Z])/g)?.length ?? 0;
}

for (const format of ["A4", "Letter"] as const) {
  test(`the whole sheet prints on two pages of ${format}`, async ({ page }) => {
    await page.goto(path);
    await page.waitForLoadState("networkidle");
    expect(await pagesOf(page, format)).toBe(2);
  });
}

test("an open calculator takes no room on paper", async ({ page }) => {
  await page.goto(path);
  for (const name of ["recoveryCost", "holdOutbound", "spiralDive", "fitRollRate"]) {
    await page.locator(`#${name} [data-part="open"]`).click();
  }
  expect(await pagesOf(page, "Letter")).toBe(2);
});

test("what the search has put out of sight is not printed", async ({ page }) => {
  await page.goto(`${path}?find=crosswind`);
  await page.emulateMedia({ media: "print" });
  await expect(page.locator("formula-cell:visible")).toHaveCount(1);
  expect(await pagesOf(page, "A4")).toBe(1);
});

test("on paper every formula has its words, equation, kind and source, and the sheet its sources and caution", async ({
  page,
}) => {
  await page.goto(path);
  await page.emulateMedia({ media: "print" });
  const lacking = await page.locator("formula-cell").evaluateAll((cells) =>
    cells
      .filter((cell) =>
        ["h3 a", ".set-in .katex-html", ".kind svg", ".numbered"].some((part) => {
          const box = cell.querySelector(part)?.getBoundingClientRect();
          return !box || box.width === 0 || box.height === 0;
        }),
      )
      .map(({ id }) => id),
  );
  expect(lacking).toEqual([]);
  await expect(page.getByRole("region", { name: "Sources" })).toContainText("ICAO Doc 8168");
  await expect(page.getByText("Not for flight planning or use in flight.").locator("visible=true")).toHaveCount(1);
  await expect(page.locator(":is(button, input):visible")).toHaveCount(0);
});

test("on paper nothing but exponents and indices is set under 7.5 pt, and nothing leaves its column", async ({
  page,
}) => {
  await page.setViewportSize({ width: 718, height: 1047 }); // A4 within its margins
  await page.goto(path);
  await page.emulateMedia({ media: "print" });
  const { small, wide } = await page.evaluate(() => {
    const small: string[] = [];
    const texts = document.createTreeWalker(document.querySelector("main")!, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const parent = text.parentElement!;
      if (!text.textContent!.replace("\u200b", "").trim() || parent.getClientRects().length === 0) continue;
      if (parent.closest(".msupsub, .op-limits, .katex-mathml, .hidden-words, script")) continue;
      const size = Number.parseFloat(getComputedStyle(parent).fontSize);
      if (size > 0 && size < 10 - 0.01) small.push(`${parent.closest("formula-cell")?.id}: ${text.textContent}`);
    }
    const column = (document.querySelector(".all")!.clientWidth - 2 * 15.1) / 3;
    const wide = [...document.querySelectorAll("formula-cell .base")]
      .filter((base) => base.getBoundingClientRect().width > column + 1)
      .map((base) => base.closest("formula-cell")!.id);
    return { small, wide };
  });
  expect(small).toEqual([]);
  expect(wide).toEqual([]);
});
