import "./dom.ts"; // before Lit
import { describe, expect, test } from "vitest";
import { mark } from "../../src/cells/exercises/index.ts";
import { exerciseShell } from "../../src/widgets/exercise-cell/shell.ts";
import { verdictHtml, workingHtml } from "../../src/widgets/exercise-cell/verdict.ts";
import { bodyOf } from "./dom.ts";
import { builtOf, entry, first, radius, shellOf, sink } from "./exercise-of.ts";

describe("exerciseShell", () => {
  test("exerciseShell reads as a question, numbers in, where no script runs", () => {
    const body = bodyOf(shellOf(radius));
    expect(body.querySelector(".ask")!.textContent).toBe(first(radius).ask);
    expect(body.querySelector("details p")!.textContent).toBe(
      `Speed squared, over g times the tangent of ${first(radius).printed["bank"]}.`,
    );
    for (const form of body.querySelectorAll("form")) expect(form.className).toContain("needs-script");
  });

  test("exerciseShell names the field and its unit", () => {
    const body = bodyOf(shellOf(radius));
    const field = body.querySelector("input")!;
    expect(body.querySelector(`label[for="${field.id}"]`)!.textContent).toBe("Radius, nautical miles");
    expect(body.querySelector(".unit")!.textContent).toBe("NM");
  });

  test("exerciseShell asks for a keyboard that can write a minus where one may be wanted", () => {
    const keyboard = (html: string): string | null => bodyOf(html).querySelector("input")!.getAttribute("inputmode");
    expect(keyboard(shellOf(radius))).toBe("decimal");
    const signed = { ...radius, slips: [{ is: "-turnRadius(tas, bank)", say: "" }] };
    expect(keyboard(exerciseShell(builtOf(signed), first(signed), 1))).toBe("text");
  });

  test("exerciseShell letters a choice's rows in the order drawn, and reads without scripts", () => {
    const body = bodyOf(shellOf(sink));
    const rows = [...body.querySelectorAll("fieldset > label")];
    expect(rows.map((row) => row.querySelector("input")!.getAttribute("value"))).toEqual(first(sink).options);
    expect(rows.map((row) => row.querySelector("kbd")!.textContent)).toEqual(["A", "B", "C"]);
    expect(body.querySelectorAll("noscript li")).toHaveLength(3);
  });

  test("exerciseShell tells no right row from a wrong one", () => {
    const rows = [...bodyOf(shellOf(sink)).querySelectorAll("fieldset > label")];
    const shape = (row: Element): string => row.outerHTML.replaceAll(/(?<=>)[^<]+|(data-key|value)="[^"]*"/g, "");
    expect(new Set(rows.map(shape)).size).toBe(1);
  });

  test("exerciseShell gives each row of an order a button up and a button down, named with the row", () => {
    const body = bodyOf(shellOf(entry));
    for (const button of body.querySelectorAll("[data-move]")) {
      const [own, text] = button.getAttribute("aria-labelledby")!.split(" ");
      expect(own).toBe(button.id);
      expect(button.closest("li")!.querySelector(`#${text}`)).not.toBeNull();
    }
    expect(body.querySelectorAll("[data-move]")).toHaveLength(8);
  });

  test("exerciseShell offers fresh numbers only where numbers are drawn", () => {
    expect(bodyOf(shellOf(radius)).querySelector('[data-do="fresh"]')).not.toBeNull();
    expect(bodyOf(shellOf(entry)).querySelector('[data-do="fresh"]')).toBeNull();
  });
});

describe("verdictHtml", () => {
  const question = first(radius);
  const { answer } = question;
  const built = builtOf(radius, { R: '<i class="typeset">R</i>' });
  const verdict = (reply: number | string) => mark(question, String(reply));

  test.each([
    ["right", answer],
    ["slip", 2 * answer],
    ["wrong", 5 * answer],
    ["unreadable", "about a mile"],
  ])("verdictHtml says %s in a word and by a mark", (kind, reply) => {
    const body = bodyOf(verdictHtml(verdict(reply), question, built));
    expect(body.querySelector(".word")!.textContent.toLowerCase()).toBe(kind);
    expect(body.querySelector(".word svg")!.getAttribute("aria-hidden")).toBe("true");
  });

  test("verdictHtml names the wrong path with the question's numbers", () => {
    const html = verdictHtml(verdict(2 * answer), question, built);
    expect(html).toContain(`That is the diameter, the width of the whole circle at ${question.printed["tas"]}.`);
  });

  test("verdictHtml lets no typed mark through", () => {
    expect(verdictHtml(verdict("<b>1</b>"), question, built)).not.toContain("<b>");
  });

  test("workingHtml shows the way to the answer, and after a slip the reader's own way last", () => {
    const rows = [...bodyOf(workingHtml(verdict(2 * answer), question, built)).querySelectorAll(".steps li")];
    const comes = rows.map((row) => row.querySelector(".comes")!.textContent);
    expect(comes.at(-2)).toBe(question.printed["answer"]);
    expect(Number.parseFloat(comes.at(-1)!)).toBeCloseTo(2 * answer, 1);
  });

  test("workingHtml gives nothing away after a reply that can't be read", () => {
    expect(workingHtml(verdict("about a mile"), question, built)).toBe("");
  });

  test("workingHtml shows no TeX that wasn't typeset", () => {
    const body = bodyOf(workingHtml(verdict(answer), question, builtOf(radius)));
    expect(body.textContent).not.toContain("\\");
  });

  test("workingHtml lists the order after one that isn't right, and not after one that is", () => {
    const order = first(entry);
    const shown = (keys: readonly string[]) => bodyOf(workingHtml(mark(order, keys), order, builtOf(entry)));
    expect(
      [...shown(["check", "roll", "raise", "clear"]).querySelectorAll(".ordered li")].map((li) => li.textContent),
    ).toEqual(entry.items.map(({ text }) => text));
    expect(shown(entry.answer).querySelector(".ordered")).toBeNull();
  });
});
