import fc from "fast-check";
import { expect, test } from "vitest";
import { readInline } from "../../src/cells/reading/inline.ts";
import { readYaml } from "../../src/cells/reading/yaml.ts";
import { read } from "./fixtures/chapter.ts";
import { front } from "./fixtures/hostile.ts";
import { known } from "./fixtures/known.ts";

/** Sentences of words, live values and what must not be taken for one; every value has a name of its own. */
const sentence = fc
  .array(
    fc.constantFrom(
      ...["so", "a turn", "{NAME}", "*at {NAME} there*", "**{NAME}**", "`{NAME} in code`", "$x_{NAME}$", "\\{NAME\\}"],
      ...[
        "[see {NAME}](https://example.org/a_b)",
        "[balanced](term:balance)",
        "**so *{NAME}* on**",
        "5 * 3",
        "snake_case",
      ],
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((parts) => parts.join(" "));

/** Blocks in which sentences may stand. */
const block = fc.oneof(
  sentence,
  fc.array(sentence, { minLength: 1, maxLength: 3 }).map((lines) => lines.map((line) => `and ${line}`).join("\n")),
  fc.array(sentence, { minLength: 1, maxLength: 3 }).map((items) => items.map((item) => `- ${item}`).join("\n")),
  fc
    .array(sentence, { minLength: 1, maxLength: 3 })
    .map((items) => `1. first\n${items.map((item) => `   - ${item}\n\n     ${item}`).join("\n")}`),
  fc.array(sentence, { minLength: 1, maxLength: 3 }).map((lines) => lines.map((line) => `> and ${line}`).join("\n")),
  fc
    .array(sentence, { minLength: 1, maxLength: 2 })
    .map((lines) => `> - ${lines.map((line) => `and ${line}`).join("\n>   ")}`),
  sentence.map((cell) => `| a | b |\n| :-- | --: |\n| ${cell} | \`x\\|y\` ${cell} |`),
  sentence.map((text) => `> [!NOTE] title\n> and ${text}\n>\n> - ${text}`),
  sentence.map((text) => `\`\`\`notes\nand ${text}\n\n- ${text}\n\`\`\``),
  sentence.map((text) => `\`\`\`brief\n\n${text}\n\`\`\``),
  sentence.map((text) => `\`\`\`figure turn-rate-radius\nsee: and ${text}\n\`\`\``),
  sentence.map((text) => `\`\`\`figure turn-rate-radius\nsee: >-\n  and\n  ${text}\n\`\`\``),
);

/** Gives each value a name of its own; says where those stand that are live. */
function named(text: string): { text: string; live: string[] } {
  let count = 0;
  const whole = text.replaceAll("NAME", () => `q${count++}x`);
  const bare = whole.replace(/`[^`\n]*`|\$[^$\n]*\$|\\\{/g, "");
  return { text: whole, live: [...bare.matchAll(/\{(q\d+x)\}/g)].map(([, name]) => name!) };
}

test("readChapter finds line and column of every live value, wherever it stands", { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(fc.array(block, { minLength: 1, maxLength: 5 }), (blocks) => {
      const { text, live } = named(front + blocks.join("\n\n"));
      const found = read(text).problems.filter(({ message }) => message.endsWith("no given or work has that name."));
      const expected = live.map((name) => {
        const lines = text.slice(0, text.indexOf(`{${name}}`)).split("\n");
        return `{${name}} ${lines.length}:${lines.at(-1)!.length + 1}`;
      });
      const places = found.map(({ message, line, column }) => `${message.split(" ")[0]} ${line}:${column}`);
      expect(places.sort()).toEqual(expected.sort());
    }),
    { numRuns: 300 },
  );
});

test.each([
  ["plain", "ask: At MARK now\n"],
  ["in single quotes", "ask: 'It''s at MARK now'\n"],
  ["in double quotes", 'ask: "A \\"turn\\", \\u00b0, at MARK now"\n'],
  ["on several lines", "ask: At one\n  place and\n  then at MARK now\n"],
  ["folded", "ask: >\n  At one place\n  and at MARK now\n"],
  ["kept by lines", "ask: |\n  At one place\n\n    and at MARK now\n"],
  ["in a list", "ask:\n  - one\n  - at MARK now\n"],
])("readYaml says where a character of a text stands: %s", (_, yaml) => {
  const file = { file: "x.md", line: 10, column: 1 };
  const fence = readYaml(yaml, file);
  const path = yaml.includes("- ") ? ["ask", 1] : ["ask"];
  const value = path.reduce<unknown>(
    (part, key) => (part as Record<string | number, unknown>)[key],
    fence.value,
  ) as string;
  const lines = yaml.slice(0, yaml.indexOf("MARK")).split("\n");
  expect(fence.problems).toEqual([]);
  expect(fence.within(path, value.indexOf("MARK"))).toEqual({
    line: 9 + lines.length,
    column: lines.at(-1)!.length + 1,
  });
});

test("readInline places its problems where the text stands", () => {
  const scope = {
    file: "x.md",
    place: (offset: number) => ({ line: 7, column: 20 + offset }),
    names: new Set(["tas"]),
    known,
  };
  const { tokens, problems } = readInline("At {tas} and {bank}.", scope);
  expect(tokens.map(({ type }) => type)).toEqual(["text", "live", "text", "live", "text"]);
  expect(problems).toEqual([expect.objectContaining({ file: "x.md", line: 7, column: 33 })]);
});
