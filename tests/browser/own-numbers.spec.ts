import { entry, saveTeal } from "./own-school.ts";
import { chapter, expect, field, shownFor, test } from "./page.ts";

test("a chapter follows the school's own cruise in prose, figure, title and the line that says whose", async ({
  page,
}) => {
  await saveTeal(page);
  await page.goto(chapter);
  await expect(page.locator("html")).toHaveAttribute("data-own", "shown");
  await page.locator("#figure-1").scrollIntoViewIfNeeded();
  await expect.poll(async () => new Set((await shownFor(page, "tas")).prose)).toEqual(new Set(["124\u00a0kt"]));
  await expect(field(page, "#figure-1", "tas")).toHaveValue("124");
  await expect(page.locator("#figure-1 .plot[data-live] > svg")).toBeVisible();
  await expect(page.locator("#figure-1 [data-part='model']")).toContainText("Teal");
  await expect(page.locator(".frontispiece figcaption")).toContainText("124");
  for (const line of await page.locator('[data-part="whose"]').all())
    await expect(line).toHaveText("Teal, Northmere School");
  // The page is true from the start: nothing counts as changed by the reader.
  expect(new URL(page.url()).search).toBe("");
});

test("an exercise that uses a number of the aircraft's asks with the school's own, the others stay", async ({
  page,
}) => {
  await page.route(`**/${chapter}`, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: withStallIn(await response.text()) });
  });
  await page.goto("aircraft.html");
  await entry(page, "aircraft.stall").fill("52");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.locator('[data-part="state"]')).toContainText("Kept in this browser");
  await page.goto(chapter);
  const asks = page.locator("exercise-cell [data-part='ask']");
  await expect(asks.first()).toHaveText("She stalls at 52\u00a0kt.");
  await expect(asks.nth(1)).toBeVisible();
});

/** A chapter's page whose first exercise asks with the stalling speed; the built-in chapter has none that does. */
function withStallIn(html: string): string {
  return html.replace(/(<script type="application\/json" id="sheet">)(.*?)(<\/script>)/s, (_, open, json, close) => {
    const sheet = JSON.parse(json);
    const [built] = sheet.exercises;
    built.exercise.facts = { "aircraft.stall": { value: 47, unit: "kt" } };
    built.exercise.measures["aircraft.stall"] = { label: "stall", unit: "kt", digits: 0, circle: false };
    built.html.ask = "She stalls at {aircraft.stall}.";
    return open + JSON.stringify(sheet).replaceAll("<", "\\u003c") + close;
  });
}

for (const path of [chapter, "notes/turning.html", "index.html", "aircraft.html"]) {
  test(`${path} never shows the Dunlin's numbers before the school's own are in`, async ({ page }) => {
    await saveTeal(page);
    await page.route("**/*.js", (route) => route.abort());
    const trouble: string[] = [];
    page.removeAllListeners("console");
    page.removeAllListeners("response");
    await page.goto(path, { waitUntil: "domcontentloaded" });
    await page.waitForTimeout(200);
    for (const element of await page
      .locator(
        ".given, .live, [data-part='whose'], .frontispiece, .plot svg, .readings, .set input, exercise-cell .ask, .steps, school-form input",
      )
      .all()) {
      const seen = await element.evaluate(
        (one) => getComputedStyle(one).visibility !== "hidden" && one.getClientRects().length > 0,
      );
      if (seen) trouble.push(await element.evaluate((one) => one.outerHTML.slice(0, 80)));
    }
    expect(trouble).toEqual([]);
    await expect(page.locator("h1")).toBeVisible();
  });
}

test("a page without a school of one's own hides nothing", async ({ page }) => {
  await page.route("**/*.js", (route) => route.abort());
  page.removeAllListeners("console");
  await page.goto(chapter, { waitUntil: "domcontentloaded" });
  await expect(page.locator('.given[data-given="tas"]').first()).toBeVisible();
  await expect(page.locator("#figure-1 .plot svg:visible").first()).toBeVisible();
});

test("a chapter that is open follows another tab's save and keeps what its reader has changed", async ({
  page,
  context,
}) => {
  const reading = await context.newPage();
  await reading.goto(`${chapter}?bank=20`);
  await saveTeal(page);
  await expect.poll(async () => (await shownFor(reading, "tas")).prose[0]).toBe("124\u00a0kt");
  expect((await shownFor(reading, "bank")).prose[0]).toBe("20°");
  await page.getByRole("button", { name: "Back to the Dunlin" }).click();
  await expect.poll(async () => (await shownFor(reading, "tas")).prose[0]).toBe("95\u00a0kt");
});

test("an address written with own numbers says so where others stand, and not at home", async ({ page, browser }) => {
  await saveTeal(page);
  await page.goto(chapter);
  await page.locator("#figure-1").scrollIntoViewIfNeeded();
  await field(page, "#figure-1", "bank").fill("20");
  await field(page, "#figure-1", "bank").press("Enter");
  await expect(page).toHaveURL(/aircraft=Teal/);
  const address = page.url();
  await page.goto(address);
  await expect(page.locator("html")).toHaveAttribute("data-own", "shown");
  await expect(page.locator(".notice")).toHaveCount(0);

  const other = await (await browser.newContext()).newPage();
  await other.goto(address);
  await expect(other.locator('[data-part="notices"]')).toContainText(
    "written with the numbers of “Teal, Northmere School”; what follows from the aircraft shows the Dunlin’s here",
  );
  await other.goto(address.replace(/Teal[^&]*/, encodeURIComponent("<img src=x onerror=alert(1)>~00000000")));
  await expect(other.locator('[data-part="notices"]')).toContainText("the numbers of another school");
  await other.context().close();
});

test("damaged or foreign storage leaves the Dunlin's numbers, said plainly", async ({ page }) => {
  for (const kept of ["{", "[]", '{"version":9}', '{"version":1,"text":"","school":{"aircraft":{}}}']) {
    await page.addInitScript((json) => localStorage.setItem("hoodwork.school", json), kept);
    await page.goto(chapter);
    await expect(page.locator(".notice").first()).toContainText("the Dunlin’s stand here");
    await expect(page.locator('.given[data-given="tas"]').first()).toHaveText(/^95\skt$/);
    await expect(page.locator('.given[data-given="tas"]').first()).toBeVisible();
  }
});
