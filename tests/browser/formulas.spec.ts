import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { expect, test } from "./page.ts";

const path = "formulas.html";
const find = (page: Page) => page.getByRole("searchbox", { name: "Find" });
const shown = (page: Page) => page.locator("formula-cell:visible");
const cell = (page: Page, name: string) => page.locator(`formula-cell#${name}`);
const calculator = async (page: Page, name: string) => {
  await cell(page, name)
    .getByRole("button", { name: /^Calculate/ })
    .click();
  return cell(page, name).getByRole("form");
};
const field = (page: Page, name: string, label: RegExp) => cell(page, name).getByLabel(label);
const result = (page: Page, name: string) => cell(page, name).locator(".now");

async function objections(axe: AxeBuilder): Promise<string[]> {
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(" ; ")}`);
}

for (const width of [1280, 390]) {
  test(`the sheet at ${width} px has nothing that axe objects to`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await page.goto(path);
    await cell(page, "holdEntry").scrollIntoViewIfNeeded();
    await page.waitForLoadState("networkidle");
    // One topic stands for all, with the widest equations: seventeen thousand elements would take axe a minute.
    const axe = new AxeBuilder({ page });
    for (const part of [".mast", ".title", ".find", ".place", "#topic-holding", ".foot"]) axe.include(part);
    expect(await objections(axe)).toEqual([]);
  });
}

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("the sheet reads, with no control that would do nothing", async ({ page }) => {
    await page.goto(path);
    await expect(shown(page)).toHaveCount(await page.locator("formula-cell").count());
    await expect(page.getByRole("heading", { name: "Radius of turn exact", exact: true })).toBeVisible();
    await expect(cell(page, "turnRadius").locator(".katex-html").first()).toBeVisible();
    await expect(page.locator("main :is(button, input):visible")).toHaveCount(0);
  });
});

test("an address with a formula's name shows that formula at the top, wherever it stands on the sheet", async ({
  page,
}) => {
  for (const name of ["turnRadius", "holdEntry", "feltRate"]) {
    await page.goto("about:blank");
    await page.goto(`${path}#${name}`);
    await expect.poll(async () => Math.abs((await cell(page, name).boundingBox())!.y - 80)).toBeLessThan(2);
  }
});

test.describe("the search", () => {
  test("shows what has every word typed, says how many, and keeps the words in the address", async ({ page }) => {
    await page.goto(path);
    const all = await shown(page).count();
    await find(page).fill("crossw");
    await expect(shown(page)).toHaveCount(1);
    await expect(page.getByText(`1 of ${all} formulas`)).toBeVisible();
    await expect(page.locator(".topic:visible")).toHaveCount(1);
    await find(page).press("Enter");
    await expect(page).toHaveURL(/\?find=crossw$/);
    await expect(page.getByRole("link", { name: "Headwind and crosswind" })).toBeFocused();
    await page.reload();
    await expect(shown(page)).toHaveCount(1);
    await expect(find(page)).toHaveValue("crossw");
    await find(page).press("Escape");
    await expect(shown(page)).toHaveCount(all);
    await expect(page).not.toHaveURL(/find/);
  });

  test("says what to do where nothing matches, whatever was typed", async ({ page }) => {
    await page.goto(`${path}?find=${encodeURIComponent('<b>"zebra" .*')}`);
    await expect(shown(page)).toHaveCount(0);
    await expect(page.getByText(/Nothing on the sheet has all of/)).toContainText('<b>"zebra" .*');
    await page.getByRole("button", { name: "Show all formulas" }).click();
    await expect(shown(page)).not.toHaveCount(0);
    await expect(find(page)).toBeFocused();
  });

  test("gives way to a link that leads to what it has put out of sight", async ({ page }) => {
    await page.goto(`${path}?find=fifteen`);
    await expect(shown(page)).toHaveCount(1);
    await page.getByRole("link", { name: "bank for a rate of turn", exact: true }).click();
    await expect(cell(page, "bankForRate")).toBeInViewport();
    await page.goto(`${path}?find=fifteen#turnRate`);
    await expect(cell(page, "turnRate")).toBeInViewport();
  });

  test("begins what it found under its field, from however far down the sheet", async ({ page }) => {
    await page.goto(path);
    await cell(page, "fitLag").scrollIntoViewIfNeeded();
    await find(page).fill("turnRate");
    await expect(cell(page, "turnRate")).toBeInViewport();
  });
});

test.describe("a calculator", () => {
  test.beforeEach(({ page }) => page.goto(path));

  test("opens in place at its first field, follows what is typed, and leaves the page when closed", async ({
    page,
  }) => {
    await expect(page.locator("formula-cell input")).toHaveCount(0);
    await calculator(page, "turnRadius");
    await expect(field(page, "turnRadius", /^True airspeed/)).toBeFocused();
    await expect(result(page, "turnRadius")).toHaveText(/^0\.49\s*NM$/);
    await field(page, "turnRadius", /^Bank/).fill("30");
    // 48.87² / (9.80665 × tan 30°) = 421.8 m
    await expect(result(page, "turnRadius")).toHaveText(/^0\.23\s*NM$/);
    await cell(page, "turnRadius")
      .getByRole("button", { name: /^Close/ })
      .click();
    await expect(page.locator("formula-cell input")).toHaveCount(0);
    await expect(cell(page, "turnRadius").getByRole("button", { name: /^Calculate/ })).toBeFocused();
  });

  test("reads other units and decimal commas, and says how", async ({ page }) => {
    await calculator(page, "heightError");
    await calculator(page, "slantRange");
    await field(page, "slantRange", /^Height/).fill("1 829 m");
    await expect(cell(page, "slantRange").getByText(/^= 6001\sft$/)).toBeVisible();
    await field(page, "heightError", /^Time/).fill("0,5 min");
    await expect(result(page, "heightError")).toHaveText(/^−80\s*ft$/);
  });

  test("says at the field which limit is passed, and goes on when it is mended", async ({ page }) => {
    await calculator(page, "turnRate");
    const bank = field(page, "turnRate", /^Bank/);
    await bank.fill("95");
    await expect(bank).toHaveAttribute("aria-invalid", "true");
    await expect(bank).toHaveAccessibleDescription("Bank must be over −90 and under 90°.");
    await expect(result(page, "turnRate")).toHaveText("—");
    await bank.fill("15");
    await expect(bank).not.toHaveAttribute("aria-invalid");
    await expect(result(page, "turnRate")).toHaveText(/^3\.08\s*°\/s$/);
  });

  test("shows a rule's error, with a field for what the rule leaves out", async ({ page }) => {
    const form = await calculator(page, "bankByTenthPlusSevenRule");
    await expect(form.getByText("For the exact value")).toBeVisible();
    await expect(form.locator(".difference")).toHaveText(/^error \+1\.9° \(\+13\s%\)$/);
    await field(page, "bankByTenthPlusSevenRule", /^Rate of turn/).fill("1.5");
    await expect(form.getByText(/^The rule is made for a rate of turn of 3\s°\/s\.$/)).toBeVisible();
    const model = await calculator(page, "levelOffLeadByRule");
    await expect(model.locator(".difference")).toHaveText(/^differs from the model by \+28\sft/);
    const exact = await calculator(page, "bankForRate");
    await expect(exact.locator(".difference")).toHaveCount(2);
  });

  test("says in words that there is no solution", async ({ page }) => {
    const form = await calculator(page, "maximumDrift");
    await field(page, "maximumDrift", /^Wind speed/).fill("120");
    await expect(form.getByText("No solution: the wind is stronger than the true airspeed.")).toBeVisible();
  });

  test("works its result out, with formulas, in rows that follow in place", async ({ page }) => {
    const form = await calculator(page, "turnRate");
    await form.getByText("Working").click();
    const last = form.getByRole("listitem").last();
    await expect(last).toContainText("3.08");
    await expect(last.locator(".katex").first()).toBeVisible();
    await last.evaluate((row) => row.setAttribute("data-kept", ""));
    await field(page, "turnRate", /^True airspeed/).fill("190");
    await expect(form.locator("[data-kept] .comes")).toHaveText(/^1\.54\s°\/s$/);
  });

  test("begins with what was typed for the same quantity in another, where it can take it", async ({ page }) => {
    await calculator(page, "turnRate");
    await field(page, "turnRate", /^True airspeed/).fill("110");
    await calculator(page, "loadFactor");
    await calculator(page, "turnRadius");
    await expect(field(page, "turnRadius", /^True airspeed/)).toHaveValue("110");
    await cell(page, "turnRadius").getByRole("button", { name: "Example values" }).click();
    await expect(field(page, "turnRadius", /^True airspeed/)).toHaveValue("95");
    await field(page, "turnRadius", /^True airspeed/).fill("650");
    await calculator(page, "bankByFifteenPercentRule");
    await expect(field(page, "bankByFifteenPercentRule", /^True airspeed/)).toHaveValue("95");
  });

  test("offers words as a choice and follows it", async ({ page }) => {
    await calculator(page, "holdEntry");
    await expect(result(page, "holdEntry")).toHaveText("parallel");
    await field(page, "holdEntry", /^Way of turning/).selectOption("left");
    await expect(result(page, "holdEntry")).toHaveText("offset");
  });

  test("tells a listener what came of a change once it is made", async ({ page }) => {
    const form = await calculator(page, "turnRate");
    await expect(form.getByRole("status")).toHaveText("");
    await field(page, "turnRate", /^Bank/).fill("30");
    await page.keyboard.press("Tab");
    await expect(form.getByRole("status")).toHaveText("Rate of turn 6.64 degrees a second");
  });

  for (const colorScheme of ["light", "dark"] as const) {
    test(`has nothing that axe objects to in ${colorScheme}, open, with its working and a notice`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await page.goto(`${path}?find=outbound`);
      const form = await calculator(page, "holdOutboundByRule");
      await form.getByText("Working").click();
      await calculator(page, "holdOutbound");
      await field(page, "holdOutbound", /^Wind speed/).fill("400");
      await expect(cell(page, "holdOutbound").locator("[aria-invalid]")).toHaveCount(1);
      expect(await objections(new AxeBuilder({ page }))).toEqual([]);
    });
  }

  for (const width of [1280, 820, 390]) {
    test(`never makes the page scroll sideways at ${width} px`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      for (const name of ["convert", "recoveryCost", "holdOutboundByRule", "spiralDive"]) {
        await (await calculator(page, name)).getByText("Working").click();
      }
      const [inner, outer] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
      expect(inner).toBeLessThanOrEqual(outer!);
    });
  }
});
