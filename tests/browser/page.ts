import { test as base, expect, type Page } from "@playwright/test";

export { expect };

/** A test whose page fails it on any script error, refused request or missing file. */
export const test = base.extend({
  page: async ({ page }, use) => {
    const trouble: string[] = [];
    page.on("pageerror", (error) => trouble.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error") trouble.push(message.text());
    });
    page.on("response", (response) => {
      if (response.status() >= 400) trouble.push(`${response.status()} ${response.url()}`);
    });
    await use(page);
    expect(trouble).toEqual([]);
  },
});

export const chapter = "chapters/turning.html";

/** The slider, or the number field, of a quantity in a figure. */
export const slider = (page: Page, figure: string, name: string) =>
  page.locator(`${figure} .set[data-given="${name}"] [data-part="range"]`);
export const field = (page: Page, figure: string, name: string) =>
  page.locator(`${figure} .set[data-given="${name}"] [data-part="field"]`);

/** The numbers a page shows for a quantity: in prose and in number fields. */
export async function shownFor(page: Page, name: string): Promise<{ prose: string[]; fields: string[] }> {
  return {
    prose: await page
      .locator(`.given[data-given="${name}"]`)
      .evaluateAll((all) => all.map((value) => value.textContent ?? "")),
    fields: await field(page, "figure-cell", name).evaluateAll((all) =>
      all.map((input) => (input as HTMLInputElement).value),
    ),
  };
}
