import { describe, expect, test } from "vitest";
import { edited, read } from "./fixtures/chapter.ts";

/** What is replaced, by what (¦ where the problem is expected), its message, its mend: one problem each. */
type Row = readonly [stretch: string, by: string, message: RegExp, mend: RegExp];

function finds(...rows: Row[]): void {
  test.each(rows)("readChapter finds the mistake where %j becomes %j", (stretch, by, message, mend) => {
    const { text, line, column } = edited(stretch, by);
    const found = { message: expect.stringMatching(message), mend: expect.stringMatching(mend) };
    expect(read(text).problems).toEqual([{ file: "chapters/level-turn.md", line, column, ...found }]);
  });
}

describe("front matter", () => {
  const title = "title: The level turn";
  finds(
    ["summary: Rate", "¦summray: x\nsummary: Rate", /no key 'summray'/, /^Did you mean 'summary'\?$/],
    [title, "title: ¦2024", /'title' should be text, not 2024/, /in quotes/],
    [title, "¦title:", /^Nothing stands after 'title'\.$/, /^Write its value/],
    [title, "title: ¦~", /'~' stands for nothing after 'title'/, /^Write its value/],
    [title, "title: The level turn ¦# 2", /comment after text/, /line of its own/],
    [title, "title: T\n¦title: U", /'title' stands here twice/, /Delete one/],
    [title, "title: ¦&t The level turn", /An anchor/, /quotes/],
    [title, "title: ¦!!str The level turn", /A tag/, /quotes/],
    [title, `${title}\n¦constructor: 1`, /'constructor' is no key/, /Delete it/],
    [title, "title:¦\tThe level turn", /A tab/, /spaces/],
    ["code: LVT", "code: ¦lvt", /three capital letters, not 'lvt'/, /TRN/],
    ["minutes: 20", "minutes: ¦2.5", /'minutes' should be a whole number, not 2.5/, /decimal point/],
    ["minutes: 20", "minutes: ¦500", /at most 240/, /240/],
    ["  LVT-2: Say", "  ¦LVT-3: x\n  LVT-2: Say", /No exercise serves the objective LVT-3/, /objective: LVT-3/],
    ["2012: on turns", "2012: on ¦{tas}", /can't stand in a source/, /Write the words out/],
    ["*Instrument Flying Handbook*", "*Instrument* ¦<b>", /Raw HTML.*'<b>'/, /Markdown/],
  );

  test("readChapter finds a key that is missing at the map that lacks it", () => {
    const { problems } = read(edited("title: The level turn\n", "¦").text);
    expect(problems).toEqual([expect.objectContaining({ line: 2, column: 1, message: "There is no 'title'." })]);
  });

  test("readChapter names an objective's code that isn't the chapter's, and its exercise's", () => {
    const { problems } = read(edited("  LVT-2: Say", "  TRN-2: Say").text);
    expect(problems.map(({ line, column, message }) => [line, column, message])).toEqual([
      [8, 3, "'TRN-2' is no code of an objective of this chapter."],
      [8, 3, "No exercise serves the objective TRN-2."],
      [expect.any(Number), 12, expect.stringMatching(/LVT-2/)],
    ]);
  });

  test.each([
    ["title: *t", /An alias/],
    ["title: He said: no", /second ': '/],
    ["title: @tas", /start with this sign/],
    ['title: "never closed', /missing/],
    ["title: x\n   code: y", /second ': '|indentation|line without/],
    ["? title\n: x", /'\?'/],
    [`title: ${"[".repeat(13)}`, /too deep/],
  ])("readChapter says what is wrong with the YAML of %j", (by, message) => {
    const { problems } = read(edited("title: The level turn", by).text);
    expect(problems[0]!.message).toMatch(message);
    expect(problems[0]!.line).toBeLessThanOrEqual(3);
  });

  test.each([
    ["no front matter at all", /no front matter/, 1],
    ["---\ntitle: x\n", /isn't closed/, 1],
    ["---\n- a\n---\n", /no list of keys/, 2],
    ["---\njust words\n---\n", /no list of keys/, 2],
    ["", /no front matter/, 1],
  ])("readChapter says so of %j", (text, message, line) => {
    const { problems } = read(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]!.message).toMatch(message);
    expect(problems[0]!.line).toBe(line);
  });

  test("readChapter complains of no name in the text where the front matter can't be read", () => {
    const { problems } = read(edited("title: The level turn", "title: a: b").text);
    expect(problems.map(({ line }) => line)).toEqual([2]);
  });
});

describe("given", () => {
  const bank = "    value: 15\n    from: 5\n    to: 45";
  finds(
    ["from: 60, to: 180", "from: 60, to: ¦300", /'to' leaves the quantity's own range/, /40 to 250 kt/],
    ["value: 95, from", "value: ¦50, from", /50 lies outside 60 to 180 kt/, /Widen/],
    ["180, step: 5 }", "180, step: ¦0 }", /step doesn't fit/, /over 0 and at most 120/],
    ["180, step: 5 }", "180, step: 5, ¦stop: 9 }", /no key 'stop'/, /'step'/],
    ["180, step: 5 }", "180, step: ¦five }", /'given.tas.step' should be a number, not 'five'/, /plain number/],
    [bank, "    value: 15\n    from: ¦45\n    to: 5", /range is empty/, /within 0 to 60 deg/],
    [bank, "    value: ¦aircraft.rollRate", /in deg\/s, and this quantity is in deg/, /Choose another/],
    [bank, "    value: ¦aircraft.phases.climb.power", /is a word/, /Choose another/],
    [bank, "    value: ¦aircraft.crusie", /neither a number/, /aircraft\.cruise/],
    ["    quantity: ias", "    quantity: ¦iass", /'iass' is no quantity/, /'ias'/],
    ["  slow:\n", "  ¦Slow:\n", /no name for a quantity/, /small letter/],
    ["  slow:\n", "  ¦turnRate:\n", /name of something else/, /another name/],
  );
});

describe("work", () => {
  finds(
    ["is: 2 * radius", "is: 2 * ¦raduis", /named raduis/, /radius/],
    ["is: 2 * radius", "is: ¦2 * tas", /gives kt, and its unit is said to be NM/, /unit: kt/],
    ["is: 2 * radius", "is: radius + ¦tas", /must agree/, /./],
    ["is: 2 * radius", "is: ¦backTrack", /'backTrack' stands further down/, /above/],
    ["is: 2 * radius", "is: radius + ¦width", /'width' stands further down/, /above/],
    ["is: 2 * radius", "is: ¦turnRadius(tas, 6.5 * bank)", /can't be computed: bank must be/, /within its range/],
    ["is: 2 * radius", "is: turnRadius¦(tas, bank", /closed|bracket/, /./],
    ["is: 2 * radius", `is: ${"1 + ".repeat(100)}¦1`, /400 characters/, /names of their own/],
    ["is: 2 * radius", "¦is:", /Nothing stands after 'is'/, /./],
    [
      "is: 2 * radius\n    unit: NM",
      "is: 2 * radius\n    unit: ¦nm",
      /'work.width.unit' should be a unit, not 'nm'/,
      /NM/,
    ],
    ["is: 2 * radius\n    unit: NM\n    digits: 2", "is: 2 * radius\n    unit: NM\n    digits: ¦9", /at most 6/, /6/],
    [
      "  # Twice the radius.",
      "  ¦tas:\n    is: 2 * radius\n    unit: NM\n    digits: 2",
      /'tas' is given already/,
      /another name/,
    ],
  );

  test("readChapter calls braces around an expression misread, once, and blames nothing that follows", () => {
    const block = "    is: turnRadius(tas, bank)\n    unit: NM\n    digits: 2\n  # Twice";
    const { text, line, column } = edited(
      `  radius:\n${block}`,
      "  radius: ¦{ is: turnRadius(tas, bank), unit: NM }\n  # Twice",
    );
    const { problems } = read(text);
    expect(problems).toEqual([expect.objectContaining({ line, column, message: expect.stringMatching(/misread/) })]);
  });
});

describe("prose", () => {
  const live = "with {tas}.";
  finds(
    [live, "with ¦{tsa}.", /\{tsa\} stands for nothing/, /'tas'/],
    [live, "with ¦{ tas }.", /isn't a live value/, /\\\{/],
    [live, "with ¦{tas.", /isn't a live value/, /\\\{/],
    [live, "with ¦<b>.", /Raw HTML/, /\\</],
    [live, "with ¦<!-- a remark -->.", /Raw HTML/, /notes fence/],
    [live, "with ¦![a dial](dial.png).", /picture/, /figure/],
    [live, "with ¦[this](http://example.org).", /can't lead to 'http:/, /https:/],
    [live, "with ¦[this](javascript:alert).", /can't lead to/, /https:/],
    [live, "with ¦[this](data:text/html,x).", /can't lead to/, /https:/],
    [live, "with ¦[this](#load).", /can't lead to '#load'/, /turning\.md#section/],
    [live, "with ¦[this](turnin.md).", /no chapter 'turnin.md'/, /./],
    [live, "with ¦[this](level-turn.md#lode).", /no section '#lode'/, /load/],
    [live, "with ¦[this](https://example.org/{tas}).", /in an address/, /Write the address out/],
    [live, "with ¦[this](term:balanse).", /no term 'balanse'/, /'balance'/],
    [live, "with ¦[a level](term:balance) turn.", /none of the glossary's forms/, /balanced/],
    [live, "with [¦{tas}](term:ball).", /can't stand in a term/, /./],
    [live, "with ¦&deg; in it.", /HTML only/, /character itself/],
    [live, "with ¦$ 5.", /opens or closes nothing/, /\\\$/],
    [live, "with $x$ and ¦$$ x.", /only on lines of its own/, /first column/],
    [live, "with $x¦\\frob y$.", /can't be typeset/, /./],
    [live, "with $¦\\def\\a{\\a}$.", /can't stand in a formula/, /./],
    [live, "with ¦[^lost].", /no side note 'lost'/, /\[\^lost\]:/],
    ["radius.[^radius] Half", "radius.[^radius] Half¦[^radius]", /'radius' is used twice/, /another label/],
    [
      "[^radius]: From",
      "¦[^gone]: Never used.\n\n[^radius]: From",
      /Nothing refers to the side note 'gone'/,
      /\[\^gone\]/,
    ],
    ["[^radius]: From", "[^radius]: x\n\n¦[^radius]: From", /written twice/, /another label/],
    ["[^radius]: From $R", "[^radius]: From ¦{raduis} $R", /\{raduis\} stands for nothing/, /radius/],
    ["### A smaller", "### ¦{tas}: a smaller", /can't stand in a heading/, /./],
    ["## Load", "## Load ¦{tas}", /can't stand in a heading/, /./],
    ["## Load", "¦## Rate and radius", /'#rate-and-radius' already/, /otherwise/],
    ["## Load", "¦# Load", /single '#'/, /'## '/],
    ["## Load", "¦##", /no words/, /after '## '/],
    ["## Load", "¦Load\n----", /opens no section/, /'## '/],
    ["Before the first heading", "    ¦Before the first heading", /block of code/, /Indent it less/],
  );
});

describe("fences", () => {
  finds(
    ["```figure turn-rate-radius", "¦```figure turn-rate-radus", /no figure 'turn-rate-radus'/, /'turn-rate-radius'/],
    ["```figure turn-rate-radius", "¦```figure turn-rate-radius wide", /'wide' has no meaning/, /one key a line/],
    ["```figure turn-rate-radius", "¦```figure", /isn't named/, /turn-rate-radius/],
    ["see: At one bank", "¦sea: x\nsee: At one bank", /no key 'sea'/, /'see'/],
    ["see: At one bank, a", "see: At ¦{bnak}, a", /\{bnak\} stands for nothing/, /'bank'/],
    ["```working", "¦```workin", /no fence of kind 'workin'/, /'working'/],
    ["```working", "¦```", /doesn't say what it is/, /figure/],
    ["```text", "¦```js", /no fence of kind 'js'/, /text/],
    ["```brief\n", "¦```brief today\n", /'today' has no meaning/, /Delete it/],
    [
      "```brief\nAt {bank}, twice the speed makes *four times* the radius.",
      "¦```brief\n",
      /brief is empty/,
      /one sentence/,
    ],
    ["of: half a turn", "of: half a turn at ¦{bank}", /can't stand in a heading/, /./],
    ["    is: 2 * r\n", "    is: ¦2 * tas\n", /gives kt, and its unit is said to be NM/, /unit: kt/],
    ["    is: 2 * r\n", "    is: 2 * ¦q\n", /named q/, /./],
    ["    symbol: w\n", "    name: ¦bank\n    symbol: w\n", /has a meaning already/, /another name/],
    ["    tex: 2 R", "    tex: ¦\\frob R", /can't be typeset/, /./],
    ["B: It doubles\n", "B: It doubles\n  ¦G: It trebles\n", /capital letter/, /A, B, C/],
    [
      '"Four times", right: true }',
      '"Four times", right: ¦false }',
      /should be true, not false/,
      /nothing on the others/,
    ],
    ["tas: 2 * tas - 10", "tas: ¦2 * bank", /gives deg, and its unit is said to be kt/, /./],
    ["tas: 2 * tas - 10", "tas: ¦3 * tas", /sets 'tas' to 285/, /40 to 250 kt/],
    ["tas: 2 * tas - 10", "¦radius: 1", /'radius' is computed/, /tas/],
    ["tas: 2 * tas - 10", "¦tsa: 100", /'tsa' is none of the chapter's given/, /'tas'/],
    ["  because the speed", "  because ¦{speed} the speed", /\{speed\} stands for nothing/, /./],
    ["ask: Keep {bank}", "ask: Keep ¦{bnak}", /\{bnak\} stands for nothing/, /'bank'/],
    ["**Five minutes.** Ask", "**Five minutes.** ¦<b>Ask", /Raw HTML/, /./],
    ["> [!NOTE]", "¦> [!NOTES]", /no callout 'NOTES'/, /'NOTE'/],
    ["> [!NOTE]\n> The [ball](term:ball) tells.", "¦> [!NOTE]", /no text/, /beneath/],
    ["> [!CAUTION] avoid first", "> [!CAUTION] ¦avoid {tas}", /plain words/, /./],
    ["> At {bank} it takes", "> At ¦{bnak} it takes", /\{bnak\} stands for nothing/, /'bank'/],
    [
      "> A quotation, with {rate}",
      "> ¦```brief\n> x\n> ```\n> A quotation",
      /inside a list or a quote/,
      /first column/,
    ],
    [
      "  1. at {tas},",
      "  1. at {tas},\n     ¦```figure turn-rate-radius\n     see: x\n     ```",
      /inside a list or a quote/,
      /./,
    ],
    ["  2. or slower.", "  2. or slower.\n\n  > ¦[!NOTE]\n  > x", /callout can't stand inside/, /first column/],
    ["$$\n\\omega", "¦$$\n\n\\omega", /blank line parts/, /\$\$/],
    ["$$\n\\omega = \\frac{g\\tan\\varphi}{V}\n$$", "¦$$\n\\omega\n\n### Next", /isn't closed/, /of its own after it/],
    ["\\frac{g\\tan\\varphi}{V}", "\\frac{g\\tan\\varphi}¦", /can't be typeset/, /./],
    ["id: level-load-1", "id: ¦level-radius-1", /'level-radius-1' stands in line \d+, too/, /another id/],
    ["kind: choice", "kind: ¦chioce", /./, /./],
    ["ask: What does the load", "ask: ¦<i>What does the load", /Raw HTML/, /./],
  );

  test("readChapter reads on behind a fence that isn't closed", () => {
    const { text, line } = edited("a much larger circle.\n```", "a much larger circle.\n¦");
    const { problems, cells } = read(text);
    expect(problems).toEqual([expect.objectContaining({ line: line - 2, message: "This fence isn't closed." })]);
    expect(cells.map(({ kind }) => kind)).toContain("working");
  });

  test("readChapter names a quantity that a figure needs and the chapter doesn't give", () => {
    const { text } = edited("## Load", "```figure tilted\nsee: x\n```\n\n## Load");
    expect(read(text).problems).toEqual([]);
    const without = read(text.replace("  bank:\n    value: 15", "  tilt:\n    quantity: height\n    value: 15"));
    const figures = without.problems.filter(({ message }) => message.startsWith("The figure"));
    expect(figures.map(({ message }) => message)).toEqual([
      "The figure 'turn-rate-radius' needs the quantity 'bank'.",
      "The figure 'tilted' needs the quantity 'bank'.",
    ]);
  });

  test("readChapter checks a figure's options by what the figure takes", () => {
    const options = "turns: two\nside: left\nopen: true\nhue: 3";
    const { text, line } = edited("## Load", `¦\`\`\`figure tilted\nsee: x\n${options}\n\`\`\`\n\n## Load`);
    expect(read(text).problems.map(({ line: at, message }) => [at - line, message])).toEqual([
      [2, "'turns' should be a number, not 'two'."],
      [5, "There is no key 'hue' here."],
    ]);
  });

  test("readChapter wants exactly one right option, lettered without a gap", () => {
    const { text } = edited("  B: It doubles\n", "");
    const { problems } = read(text.replace('C: { text: "Four times", right: true }', "C: Four times"));
    expect(problems.map(({ message }) => message)).toEqual([
      "The options' letters leave a gap or stand out of order.",
      "No option is marked as right.",
    ]);
  });

  test("readChapter lists every mistake of a file, in its order", () => {
    const { text } = edited("with {tas}.", "with {tsa}, <b> and {bnak}.");
    const { problems } = read(text.replace("minutes: 20", "minutes: x").replace("unit: deg/s", "unit: knots"));
    expect(problems.map(({ message }) => message.slice(0, 24))).toEqual([
      "'minutes' should be a nu",
      "'work.rate.unit' should ",
      "{tsa} stands for nothing",
      "Raw HTML can't stand in ",
      "{bnak} stands for nothin",
    ]);
    expect(problems.every(({ mend }) => mend.length > 0)).toBe(true);
  });
});
