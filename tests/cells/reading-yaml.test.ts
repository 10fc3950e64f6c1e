import * as v from "valibot";
import { expect, test } from "vitest";
import { checked, wanted } from "../../src/cells/reading/checked.ts";
import { type ReadYaml, readYaml } from "../../src/cells/reading/yaml.ts";

const file = "x.md";
const readAt = (text: string, line = 1): ReadYaml => readYaml(text, { file, line, column: 1 });
const said = ({ problems }: Pick<ReadYaml, "problems">) =>
  problems.map(({ line, column, message }) => `${line}:${column} ${message}`);

test("readYaml gives plain values: words, numbers, truths, lists and maps", () => {
  const { value, problems } = readAt('a: word\nb: 1.5\nc: true\nd: [1, two]\ne: { f: -3 }\ng:\n  - h: "yes, # no"\n');
  expect(problems).toEqual([]);
  expect(value).toEqual({ a: "word", b: 1.5, c: true, d: [1, "two"], e: { f: -3 }, g: [{ h: "yes, # no" }] });
});

test("readYaml keeps a number's look-alikes apart: words, dates and leading zeros are text or plain numbers", () => {
  expect(readAt("a: 12 kt\nb: 2012-05\nc: no\nd: 1e3\n").value).toEqual({ a: "12 kt", b: "2012-05", c: "no", d: 1000 });
});

test("readYaml leaves comments on lines of their own alone, and '#' within a word", () => {
  const { value, problems } = readAt("# one\na: b#c\n  # two\nd: 'e # f'\n");
  expect(problems).toEqual([]);
  expect(value).toEqual({ a: "b#c", d: "e # f" });
});

test.each([
  ["x: { is: f(a, b), unit: NM }", "1:4 Braces and brackets may hold only"],
  ["x: { ask: It turns left }", "1:4 Braces and brackets may hold only"],
  ["x: [so, and so on]", "1:4 Braces and brackets may hold only"],
  ["x: {tas}", "1:4 Braces and brackets may hold only"],
  ["x:\n  - a\n  -\n", "3:4 Nothing stands"],
  ["x: null", "1:4 'null' stands for nothing after 'x'."],
  ["x: 1\ny: 2\nx: 3", "3:1 The key 'x' stands here twice."],
  ["__proto__: 1", "1:1 '__proto__' is no key."],
  [": 1", "1:1 A key is missing before ':'."],
])("readYaml takes no part in what YAML would take in silence: %j", (text, start) => {
  const all = said(readAt(text));
  expect(all).toHaveLength(1);
  expect(all[0]).toContain(start);
});

test("readYaml gives places in the file's own lines", () => {
  const read = readAt("a: 1\nb:\n  c:\n    - d\n    - e: 5\n", 21);
  expect(read.at(["a"])).toEqual({ line: 21, column: 4 });
  expect(read.at(["b", "c"], "key")).toEqual({ line: 23, column: 3 });
  expect(read.at(["b", "c", 1, "e"])).toEqual({ line: 25, column: 10 });
  expect(read.at(["b", "c", 1, "gone"])).toEqual({ line: 25, column: 7 });
});

test.each([
  ["brackets", `a: ${"[".repeat(13)}${"]".repeat(13)}`],
  ["maps by indentation", Array.from({ length: 14 }, (_, i) => `${" ".repeat(i)}a:`).join("\n")],
  ["lists in one line", `${"- ".repeat(14)}a`],
  ["characters", `a: ${"b".repeat(20_000)}`],
])("readYaml refuses too many %s before the library sees them", (_, text) => {
  const { value, problems } = readAt(text);
  expect(value).toBeUndefined();
  expect(problems[0]!.mend).toMatch(/Nest|Divide/);
});

const schema = v.strictObject({
  ask: v.string(),
  within: v.pipe(v.number(), v.minValue(1)),
  kind: v.optional(v.picklist(["left", "right"])),
  steps: v.optional(v.array(v.strictObject({ is: v.string(wanted("an expression", "Write one.")) })), []),
  odd: v.optional(v.pipe(v.number(), v.multipleOf(2, "write an even number"))),
});

test("checked gives what the schema makes of sound YAML", () => {
  expect(checked(schema, readAt("ask: x\nwithin: 2\n"), file)).toEqual({ output: { ask: "x", within: 2, steps: [] } });
});

test.each([
  ["ask: x\n", ["1:1 There is no 'within'."]],
  [
    "ask: x\nwithn: 2\nstep: 1\n",
    ["2:1 There is no key 'withn' here.", "3:1 There is no key 'step' here.", "1:1 There is no 'within'."],
  ],
  ["ask: 5\nwithin: x\n", ["1:6 'ask' should be text, not 5.", "2:9 'within' should be a number, not 'x'."]],
  ["ask: x\nwithin: 0\n", ["2:9 'within' should be at least 1, not 0."]],
  ["ask: x\nwithin: 2\nkind: lft\n", ["3:7 'kind' should be one of: left, right, not 'lft'."]],
  [
    "ask: x\nwithin: 2\nsteps:\n  - is: 5\n    si: 6\n",
    ["5:5 There is no key 'si' here.", "4:9 'steps.0.is' should be an expression, not 5."],
  ],
  ["ask: x\nwithin: 2\nsteps:\n  - us: 5\n", ["4:5 There is no key 'us' here.", "4:5 'steps.0' lacks its 'is'."]],
  ["ask: x\nwithin: 2\nodd: 3\n", ["3:6 'odd' isn't as it should be, not 3."]],
  ["ask:\nwithin: x\n", ["1:1 Nothing stands after 'ask'.", "2:9 'within' should be a number, not 'x'."]],
])("checked puts each mistake of %j in words, at its place", (text, expected) => {
  const result = checked(schema, readAt(text), file);
  expect("problems" in result ? said(result) : []).toEqual(expected);
});

test("checked takes the schema's own words for the mend", () => {
  const result = checked(schema, readAt("ask: x\nwithin: 2\nodd: 3\nkind: lft\nsteps:\n  - is: 5\n"), file);
  expect("problems" in result && result.problems.map(({ mend }) => mend)).toEqual([
    "Did you mean 'left'?",
    "Write one.",
    "Write an even number.",
  ]);
});
