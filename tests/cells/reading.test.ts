import { expect, test } from "vitest";
import type { Cell, Chapter } from "../../src/cells/chapter.ts";
import { plainText } from "../../src/cells/plain-text.ts";
import { levelTurn, read } from "./fixtures/chapter.ts";

const chapter = read(levelTurn);

const cells = <Kind extends Cell["kind"]>(kind: Kind, of: Chapter = chapter) =>
  of.cells.filter((cell): cell is Extract<Cell, { kind: Kind }> => cell.kind === kind);

test("readChapter finds no problem in a sound chapter", () => {
  expect(chapter.problems).toEqual([]);
});

test("readChapter names the chapter by its file", () => {
  expect(chapter.meta).toEqual({
    name: "level-turn",
    title: "The level turn",
    code: "LVT",
    summary: "Rate, radius and load of a level turn, in little.",
    minutes: 20,
    objectives: [
      { code: "LVT-1", text: "Find the radius from speed and bank" },
      { code: "LVT-2", text: "Say what the load does" },
    ],
    sources: ["Equilibrium of lift and weight.", "FAA, *Instrument Flying Handbook*, FAA-H-8083-15B, 2012: on turns."],
  });
});

test("readChapter gives a given what quantities.ts says of it and the chapter narrows", () => {
  const tas = {
    name: "tas",
    quantity: "tas",
    label: "True airspeed",
    unit: "kt",
    value: 95,
    from: 60,
    to: 180,
    step: 5,
  };
  const bank = {
    name: "bank",
    quantity: "bank",
    label: "Angle of bank",
    unit: "deg",
    value: 15,
    from: 5,
    to: 45,
    step: 1,
  };
  const slow = {
    name: "slow",
    quantity: "ias",
    label: "Indicated airspeed",
    unit: "kt",
    value: 70,
    from: 40,
    to: 250,
    step: 5,
    follows: "aircraft.approach",
  };
  expect(chapter.given).toMatchObject([tas, bank, slow].map((each) => ({ ...each, digits: 0, circle: false })));
});

test("readChapter labels work by the formula it calls, and knows a direction by it", () => {
  expect(chapter.work.map(({ name, label, circle }) => ({ name, label, circle }))).toEqual([
    { name: "rate", label: "Rate of turn", circle: false },
    { name: "radius", label: "Radius of turn", circle: false },
    { name: "width", label: "Width of half a turn", circle: false },
    { name: "backTrack", label: "Back track", circle: true },
  ]);
});

test("readChapter keeps the cells in the order of the file, each with its place", () => {
  expect(chapter.cells.map(({ kind }) => kind).join(" ")).toBe(
    "prose section brief prose predict figure working notes exercise section prose callout callout exercise",
  );
  const lines = levelTurn.split("\n");
  expect(lines[cells("figure")[0]!.line - 1]).toBe("```figure turn-rate-radius");
  expect(lines[cells("prose")[0]!.line - 1]).toMatch(/^Before the first heading/);
  expect(lines[cells("callout")[1]!.line - 1]).toBe("> [!NOTE]");
});

test("readChapter makes ids: sections of their words, cells of their kind and number", () => {
  expect(cells("section").map(({ id, number, text }) => [id, number, text])).toEqual([
    ["rate-and-radius", 1, "Rate and radius"],
    ["load", 2, "Load"],
  ]);
  expect([cells("figure")[0]!.id, cells("working")[0]!.id, cells("predict")[0]!.id]).toEqual([
    "figure-1",
    "working-1",
    "predict-1",
  ]);
});

test("readChapter numbers side notes by first use and hangs their text on the marker", () => {
  const note = JSON.stringify(cells("prose")[1]!.tokens).match(/"type":"note","raw":"\[\^radius\]","number":1/);
  expect(note).not.toBeNull();
});

test("readChapter leaves braces in code, maths and behind a backslash alone", () => {
  const words = plainText(cells("prose")[1]!.tokens);
  expect(words).toContain("A plain {brace}, a plain $5, {code} and R_{\\text{min}} = V^2/(g\\tan\\varphi) stay");
});

test("readChapter reads a prediction's options, the change and the folded sentence", () => {
  const [predict] = cells("predict");
  expect(predict!.options.map(({ key, text, right }) => [key, text, right])).toEqual([
    ["A", "It stays as it is", false],
    ["B", "It doubles", false],
    ["C", "Four times", true],
  ]);
  // biome-ignore lint/suspicious/noThenProperty: the key's name in a chapter
  expect(predict).toMatchObject({ then: [{ name: "tas", is: "2 * tas - 10" }] });
  expect(predict!.say).toBe("The radius is now {radius}, because the speed acts twice.");
});

test("readChapter lets a step of a working use the name of an earlier one", () => {
  expect(cells("working")[0]).toMatchObject({
    of: "half a turn",
    steps: [
      { what: "Radius", is: "turnRadius(tas, bank)", unit: "NM", digits: 2, name: "r" },
      { what: "Width", is: "2 * r", unit: "NM", digits: 2, symbol: "w", tex: "2 R" },
    ],
  });
});

test("readChapter tells cautions from notes, with the words after the mark", () => {
  expect(cells("callout").map(({ tone, title }) => [tone, title])).toEqual([
    ["caution", "avoid first"],
    ["note", ""],
  ]);
});

test("readChapter lists the exercises in their order", () => {
  expect(chapter.exercises.map(({ id, objective, kind }) => [id, objective, kind])).toEqual([
    ["level-radius-1", "LVT-1", "number"],
    ["level-load-1", "LVT-2", "choice"],
  ]);
});

test("readChapter keeps what is sound of a chapter with mistakes in it", () => {
  const broken = read(
    levelTurn.replace("turnRate(tas, bank)", "turnRate(tas)").replace("minutes: 20", "minutes: soon"),
  );
  expect(broken.problems).toHaveLength(2);
  expect(broken.meta).toMatchObject({ title: "The level turn", minutes: 0 });
  expect(broken.work.map(({ name }) => name)).toEqual(["radius", "width", "backTrack"]);
  expect(broken.cells).toHaveLength(chapter.cells.length);
});

test("readChapter reads a file from another system alike: byte order mark, other line ends", () => {
  const other = read(`\uFEFF${levelTurn.replaceAll("\n", "\r\n")}`);
  expect(other).toEqual(chapter);
});

test("readChapter lets summary, minutes, given, work and sources be left out", () => {
  const { meta, given, work, problems } = read(
    "---\ntitle: Short\ncode: SHT\nobjectives:\n  SHT-1: x\n---\n\n## One\n",
  );
  expect(problems).toEqual([]);
  expect([given, work, meta.sources, meta.summary, meta.minutes]).toEqual([[], [], [], "", 0]);
});
