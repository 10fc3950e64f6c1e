import AxeBuilder from "@axe-core/playwright";
import { enter, entry, fileWith, saveTeal, trouble } from "./own-school.ts";
import { expect, test } from "./page.ts";

const state = '[data-part="state"]';

test("the page says that these are the Dunlin's numbers until one is saved, and counts what is changed", async ({
  page,
}) => {
  await page.goto("aircraft.html");
  await expect(page.locator(state)).toHaveText("These are the Dunlin’s numbers.");
  await enter(page, { "aircraft.climb": "78" });
  await expect(page.locator(state)).toHaveText("These are the Dunlin’s numbers. 1 entry changed and not yet saved.");
  await page.getByRole("button", { name: "Undo changes" }).click();
  await expect(entry(page, "aircraft.climb")).toHaveValue("75");
  await expect(page.locator(state)).toHaveText("These are the Dunlin’s numbers.");
});

test("an entry that can't stand is named at its field as it is left, and stays; mended, the message goes", async ({
  page,
}) => {
  await page.goto("aircraft.html");
  await enter(page, { "aircraft.stall": "72" });
  await expect(trouble(page, "aircraft.stall")).toContainText(
    "Approach speed, 70 kt, is not above stalling speed, 72 kt",
  );
  await expect(entry(page, "aircraft.stall")).toHaveAttribute("aria-invalid", "true");
  await enter(page, { "aircraft.cruise": "fast" });
  await expect(trouble(page, "aircraft.cruise")).toContainText("‘fast’ is not a number");
  await expect(entry(page, "aircraft.cruise")).toHaveValue("fast");
  await entry(page, "aircraft.stall").fill("47");
  await expect(trouble(page, "aircraft.stall")).toBeEmpty();
  await enter(page, { "aircraft.cruise": "95" });
  await expect(trouble(page, "aircraft.cruise")).toBeEmpty();
});

test("a form that can't stand isn't saved: the first field that is wrong has the focus, in its open fold", async ({
  page,
}) => {
  await page.goto("aircraft.html");
  await enter(page, { "technique.turnBank": "40" });
  await page.locator("#leads").evaluate((fold) => fold.removeAttribute("open"));
  await page.getByRole("button", { name: "Save" }).click();
  await expect(entry(page, "technique.turnBank")).toBeFocused();
  await expect(trouble(page, "technique.turnBank")).toContainText("below bank in a level turn");
  expect(await page.evaluate(() => localStorage.getItem("hoodwork.school"))).toBeNull();
});

test("a save is kept over a reload, shows what the Dunlin has, and can be taken back", async ({ page }) => {
  await saveTeal(page);
  await page.reload();
  await expect(entry(page, "aircraft.cruise")).toHaveValue("124");
  await expect(page.locator('[data-field="aircraft.cruise"] [data-part="base"]')).toHaveText("Dunlin: 95");
  await expect(page.locator(state)).toContainText("Teal, Northmere School: 5 entries differ from the Dunlin’s.");
  await page.getByRole("button", { name: "Back to the Dunlin" }).click();
  await expect(entry(page, "aircraft.cruise")).toHaveValue("95");
  expect(await page.evaluate(() => localStorage.getItem("hoodwork.school"))).toBeNull();
});

test("an exported file, mended by hand, shows what differs and replaces nothing before it is taken over", async ({
  page,
}) => {
  await page.goto("aircraft.html#file");
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Export as YAML" }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toBe("dunlin.yaml");
  const text = fileWith([["    climb: 75 kt", "    climb: 80 kt"]], await download.path());
  await page
    .locator("#import-file")
    .setInputFiles({ name: "ours.yaml", mimeType: "text/plain", buffer: Buffer.from(text) });
  await expect(page.locator('[data-part="offer-words"]')).toContainText("One entry differs");
  await expect(page.locator('[data-part="differences"] tr')).toHaveText("Climbing speed75 kt80 kt");
  await expect(entry(page, "aircraft.climb")).toHaveValue("75");
  await page.getByRole("button", { name: "Take them over" }).click();
  await expect(entry(page, "aircraft.climb")).toHaveValue("80");
});

test("a file that can't stand is refused with each reason at its line, and nothing changes", async ({ page }) => {
  await saveTeal(page);
  const kept = await page.evaluate(() => localStorage.getItem("hoodwork.school"));
  await page.goto("aircraft.html#file");
  await page.reload();
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Export as YAML" }).click();
  const text = fileWith(
    [
      ["    stall: 47 kt", "    stall: 470 kt"],
      ["    bankLimit: 30 deg", "    bankLimit: steep"],
    ],
    await (await downloading).path(),
  );
  await page.locator("#import-text").fill(text);
  await page.getByRole("button", { name: "Read the text" }).click();
  const at = (start: string) => text.split("\n").findIndex((line) => line.trim().startsWith(start)) + 1;
  const reasons = page.locator('[data-part="import-problems"] li');
  await expect(reasons).toHaveCount(2);
  await expect(reasons.nth(0)).toContainText(`Line ${at("stall:")}, column 12: Stalling speed: 470 kt is outside`);
  await expect(reasons.nth(1)).toContainText(`Line ${at("bankLimit:")}`);
  await expect(page.locator('[data-part="offer"]')).toBeHidden();
  expect(await page.evaluate(() => localStorage.getItem("hoodwork.school"))).toBe(kept);
});

test("an address under 2,000 characters hands everything on, and asks before it replaces", async ({
  page,
  browser,
}) => {
  await saveTeal(page);
  await page.locator("#file summary").click();
  await page.getByRole("button", { name: "Make the address" }).click();
  await expect(page.locator("#address")).toBeFocused();
  const address = await page.locator("#address").inputValue();
  expect(address.length).toBeLessThan(2000);

  const other = await (await browser.newContext()).newPage();
  await other.goto(address);
  await expect(other.locator('[data-part="offer-words"]')).toContainText("Teal, Northmere School. 5 entries differ");
  await expect(entry(other, "aircraft.cruise")).toHaveValue("95");
  await other.getByRole("button", { name: "Leave mine" }).click();
  expect(await other.evaluate(() => localStorage.getItem("hoodwork.school"))).toBeNull();
  await other.goto("about:blank");
  await other.goto(address);
  await other.getByRole("button", { name: "Take them over" }).click();
  await expect(entry(other, "aircraft.cruise")).toHaveValue("124");
  await other.context().close();
});

for (const hash of ["1.AAAA", "1.!!!!", "0.WzIsIm4iXQ", "2.x", "1.", `1.${"A".repeat(50_000)}`]) {
  test(`the address #school=${hash.slice(0, 14)} is refused in words, and nothing changes`, async ({ page }) => {
    await page.goto(`aircraft.html#school=${hash}`);
    await expect(page.locator('[data-part="notices"]')).toContainText("is refused; nothing has changed");
    await expect(page.locator('[data-part="offer"]')).toBeHidden();
    await expect(page.locator(state)).toHaveText("These are the Dunlin’s numbers.");
  });
}

test("two tabs agree, and what is being typed in one outlives a save in the other", async ({ page, context }) => {
  await page.goto("aircraft.html");
  const second = await context.newPage();
  await second.goto("aircraft.html");
  await enter(second, { "aircraft.climb": "79" });
  await saveTeal(page);
  await expect(second.locator(state)).toContainText("Teal, Northmere School");
  await expect(entry(second, "aircraft.climb")).toHaveValue("79");
  await second.getByRole("button", { name: "Undo changes" }).click();
  await expect(entry(second, "aircraft.cruise")).toHaveValue("124");
});

test("where the browser keeps nothing, the numbers hold for the page, which says so", async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("refused", "QuotaExceededError");
    };
  });
  await page.goto("aircraft.html");
  await enter(page, { "aircraft.climb": "80" });
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.locator(state)).toContainText(
    "This browser keeps nothing: these numbers hold for this page alone.",
  );
  await expect(entry(page, "aircraft.climb")).toHaveValue("80");
});

test("readings noted in flight give a constant with its uncertainty, which goes into the form", async ({ page }) => {
  await page.goto("aircraft.html#fit");
  const readings = [
    [15, 3.1],
    [30, 5.9],
    [20, 4.1],
  ];
  for (const [row, reading] of readings.entries())
    for (const [column, number] of reading.entries())
      await page.locator(`#fit-roll-${row}-${column}`).fill(String(number));
  await page.locator("#fit-roll-2-1").blur();
  // Least squares through the origin: 1,525 / (15 · 3.1 + 30 · 5.9 + 20 · 4.1) = 4.99.
  await expect(page.locator('[data-fitting="roll"] [data-part="fitted"]')).toHaveText(
    /^5\.0\s°\/s; between 4\.\d and 5\.\d\s°\/s with 95 per cent confidence, from 3 readings$/,
  );
  await page.getByRole("button", { name: "Use as rate of roll-in" }).click();
  await expect(entry(page, "aircraft.rollInRate")).toHaveValue("5");
});

test("with every fold open, axe objects to nothing, in light or dark", async ({ page }) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await page.goto("aircraft.html");
    for (const fold of await page.locator("details.fold").all())
      await fold.evaluate((one) => one.setAttribute("open", ""));
    await enter(page, { "aircraft.stall": "72" });
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(" ; ")}`)).toEqual([]);
  }
});

for (const [width, height] of [
  [1280, 720],
  [1024, 768],
  [820, 1180],
  [390, 844],
] as const) {
  test(`with every fold open the page never scrolls sideways at ${width} px, and every control can be touched`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await page.goto("aircraft.html");
    await page.locator("details.fold").evaluateAll((folds) => {
      for (const fold of folds) fold.setAttribute("open", "");
    });
    const [inner, outer] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(inner).toBeLessThanOrEqual(outer!);
    const low = await page
      .locator("main :is(input, select, textarea, button, summary):visible")
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.id || one.outerHTML.slice(0, 60)),
      );
    expect(low).toEqual([]);
  });
}

test("on paper every entry and room for a signature show, and no control", async ({ page }) => {
  await page.goto("aircraft.html");
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  await expect(page.locator(".sign-off")).toBeVisible();
  await expect(entry(page, "technique.orders.turnOut")).toBeVisible();
  await expect(page.locator("button:visible")).toHaveCount(0);
});
