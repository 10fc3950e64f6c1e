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

/** The numbers a page shows for a quantity: in prose and in number fields. */
export async function shownFor(page: Page, name: string): Promise<{ prose: string[]; fields: string[] }> {
  return {
    prose: await page.locator(`[data-given="${name}"]`).allInnerTexts(),
    fields: await page
      .locator(`figure-cell input[inputmode="decimal"][name="${name}"]`)
      .evaluateAll((all) => all.map((field) => (field as HTMLInputElement).value)),
  };
}
