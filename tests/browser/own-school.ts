import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { expect } from "./page.ts";

/** The control of a field on the page Aircraft. */
export const entry = (page: Page, id: string) => page.locator(`#of-${id.replaceAll(".", "-")}`);

/** What is said to be wrong with a field. */
export const trouble = (page: Page, id: string) => page.locator(`[data-trouble="${id}"]`);

/** Fills fields in as a hand does: types and leaves the field. */
export async function enter(page: Page, entries: Readonly<Record<string, string>>): Promise<void> {
  for (const [id, text] of Object.entries(entries)) {
    const control = entry(page, id);
    await control.evaluate((element) => element.closest("details")?.setAttribute("open", ""));
    await control.fill(text);
    await control.blur();
  }
}

/** A faster aeroplane than the Dunlin, sound as a whole. */
const teal = {
  "aircraft.title": "Teal",
  "aircraft.owner": "Teal, Northmere School",
  "aircraft.neverExceed": "190",
  "aircraft.cruise": "124",
  "aircraft.cruiseIas": "120",
};

/** Puts the Teal in and saves it. */
export async function saveTeal(page: Page): Promise<void> {
  await page.goto("aircraft.html");
  await enter(page, teal);
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.locator('[data-part="state"]')).toContainText("Kept in this browser");
}

/** A file of the built-in school, with lines of it written otherwise. */
export function fileWith(changes: readonly (readonly [line: string, other: string])[], downloaded: string): string {
  return changes.reduce(
    (text, [line, other]) => {
      expect(text).toContain(line);
      return text.replace(line, other);
    },
    readFileSync(downloaded, "utf8"),
  );
}
