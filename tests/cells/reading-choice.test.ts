import { describe, expect, test } from "vitest";
import { chosenOf, figures } from "../../src/cells/figures.ts";
import { edited, read } from "./fixtures/chapter.ts";

const fence = (body: string): string => `\`\`\`figure error-atlas\n${body}\n\`\`\`\n\n## Load`;
const withTolerance = (body: string) => {
  const { text, line } = edited("## Load", `¦${fence(body)}`);
  const given = "  bank:\n    value: 15";
  const more = "  bankTolerance: { value: 1 }\n";
  return { text: text.replace(given, more + given), line: line + 1 };
};
const found = (body: string) => {
  const { text, line } = withTolerance(body);
  return read(text).problems.map(({ line: at, message, mend }) => ({ at: at - line, message, mend }));
};

describe("a figure whose option chooses what it shows", () => {
  test("readChapter takes a word the figure knows, and hands it on with the figure's own title and needs", () => {
    const { text } = withTolerance("see: x\nrule: bankByTenthPlusSevenRule");
    const { problems, cells } = read(text);
    expect(problems).toEqual([]);
    const cell = cells.find((one) => one.kind === "figure" && one.name === "error-atlas");
    expect(cell).toMatchObject({ options: { rule: "bankByTenthPlusSevenRule" } });
    const signature = figures.find(({ name }) => name === "error-atlas")!;
    expect(chosenOf(signature, { rule: "bankByTenthPlusSevenRule" })).toEqual({
      title: "Bank for 3 °/s by a tenth of the speed and seven",
      needs: ["tas", "bankTolerance"],
    });
  });

  test("readChapter wants the option", () => {
    expect(found("see: x").map(({ message }) => message)).toEqual(["There is no 'rule'."]);
  });

  test("readChapter names a word the figure doesn't know at its place, with the nearest that it does", () => {
    expect(found("see: x\nrule: bankByTenthPlusSeven")).toEqual([
      {
        at: 2,
        message: "'bankByTenthPlusSeven' is no 'rule' of this figure.",
        mend: "Did you mean 'bankByTenthPlusSevenRule'?",
      },
    ]);
    expect(found("see: x\nrule: toString").map(({ message }) => message)).toEqual([
      "'toString' is no 'rule' of this figure.",
    ]);
    expect(found("see: x\nrule: 3").map(({ message }) => message)).toEqual(["'rule' should be text, not 3."]);
  });

  test("readChapter asks for the quantities of the chosen rule, and of no other", () => {
    const { text } = edited("## Load", fence("see: x\nrule: maximumDriftByRule"));
    expect(read(text).problems.map(({ message }) => message)).toEqual([
      "The figure 'error-atlas' needs the quantity 'windSpeed'.",
      "The figure 'error-atlas' needs the quantity 'trackTolerance'.",
    ]);
  });
});
