import fc from "fast-check";
import type { Token } from "marked";
import { expect, test } from "vitest";
import type { Term } from "../../src/cells/known.ts";
import {
  escapeHtml,
  inlineHtml,
  inlineTokens,
  notesIn,
  type ProseContext,
  plainText,
  proseHtml,
  termForms,
} from "../../src/cells/prose.ts";
import { read } from "./fixtures/chapter.ts";
import { front } from "./fixtures/hostile.ts";
import { known } from "./fixtures/known.ts";

const context: ProseContext = {
  typeset: (tex, display) => `<m${display ? " display" : ""}>${escapeHtml(tex)}</m>`,
  live: (name) => `<live ${name}>`,
  term: (key, text) => `<term ${key}>${escapeHtml(text)}</term>`,
  link: (href) => href.replace(".md", ".html"),
};

const scope = { file: "x.md", place: (offset: number) => ({ line: 1, column: 1 + offset }), known };
const inline = (markdown: string) => inlineTokens(markdown, scope).tokens;
const html = (markdown: string) => inlineHtml(inline(markdown), context);

const prose = (markdown: string): readonly Token[] => {
  const cell = read(front + markdown).cells.find(({ kind }) => kind === "prose");
  return cell?.kind === "prose" ? cell.tokens : [];
};
const block = (markdown: string) => proseHtml(prose(markdown), context);

test.each([
  ["a *b* **c** `d`", "a <em>b</em> <strong>c</strong> <code>d</code>"],
  ["at {tas} and \\{tas\\}", "at <live tas> and {tas}"],
  ["`{tas}` stays", "<code>{tas}</code> stays"],
  ["$a_{1}*b*c$ and $5 or $6", "<m>a_{1}*b*c</m> and $5 or $6"],
  ["*so $a*b$ on*", "<em>so <m>a*b</m> on</em>"],
  ["[balanced](term:balance) turn", "<term balance>balanced</term> turn"],
  ["[this](turning.md#load)", '<a href="turning.html#load">this</a>'],
  ['[this](https://example.org/?a=1&b="2")', '<a href="https://example.org/?a=1&amp;b=&quot;2&quot;">this</a>'],
  ["[this](https://example.org/?a=1&b=2)", '<a href="https://example.org/?a=1&amp;b=2">this</a>'],
  ["[this](javascript:alert(1))", "this"],
  ["a < b & c > \"d\" 'e'", "a &lt; b &amp; c &gt; &quot;d&quot; &#39;e&#39;"],
  ["<b onclick=x>y</b>", "&lt;b onclick=x&gt;y&lt;/b&gt;"],
  ["![dial](x.png)", "![dial](x.png)"],
  ["one  \ntwo", "one<br>two"],
  ["‘so’ – 3×4 … fin-de-siècle", "‘so’ – 3×4 … fin-de-siècle"],
  ["www.example.org and ~~old~~ and a@example.org", "www.example.org and ~~old~~ and a@example.org"],
])("inlineHtml sets %j", (markdown, expected) => {
  expect(html(markdown)).toBe(expected);
});

test.each([
  ["one\ntwo\n\nthree", "<p>one\ntwo</p>\n<p>three</p>"],
  ["- a\n- b\n  - c {tas}", "<ul><li>a</li><li>b<ul><li>c <live tas></li></ul></li></ul>"],
  ["- a\n\n- b", "<ul><li><p>a</p></li><li><p>b</p></li></ul>"],
  ["3. a\n4. b", '<ol start="3"><li>a</li><li>b</li></ol>'],
  ["> a\n> b", "<blockquote><p>a\nb</p></blockquote>"],
  ["### Smaller *still*", "<h3>Smaller <em>still</em></h3>"],
  ["$$\nx < y\n$$", '<div class="math"><m display>x &lt; y</m></div>'],
  ["```text\na < {b}\n```", "<pre><code>a &lt; {b}</code></pre>"],
  [
    "| a | b |\n| - | -: |\n| {tas} | `x\\|y` |",
    '<div class="scroller" tabindex="0"><table><thead><tr><th scope="col">a</th><th class="right" scope="col">b</th></tr></thead>' +
      '<tbody><tr><td><live tas></td><td class="right"><code>x|y</code></td></tr></tbody></table></div>',
  ],
  ["one[^a] two[^b]\n\n[^b]: B\n[^a]: A *it*", "<p>one<sup>1</sup> two<sup>2</sup></p>"],
])("proseHtml sets %j", (markdown, expected) => {
  expect(block(markdown)).toBe(expected);
});

test("notesIn gives the side notes of paragraphs, lists and tables in the order of their sentences", () => {
  const tokens = prose("one[^a]\n\n- two[^b]\n\n| c |\n| - |\n| three[^c] |\n\n[^a]: A *it*\n\n[^b]: B\n\n[^c]: C");
  expect(notesIn(tokens).map((note) => `${note.number} ${inlineHtml(note.tokens, context)}`)).toEqual([
    "1 A <em>it</em>",
    "2 B",
    "3 C",
  ]);
});

test("plainText gives the words alone", () => {
  expect(plainText(inline("A *level* [turn](https://a.b) at {tas}, `so` $x$"))).toBe("A level turn at {tas}, so x");
});

test("inlineTokens names what is wrong in a sentence, where it stands", () => {
  expect(inlineTokens("so <b>", scope).problems).toEqual([expect.objectContaining({ line: 1, column: 4 })]);
  expect(inlineTokens("so {x}", { ...scope, names: new Set<string>() }).problems).toHaveLength(1);
  expect(inlineTokens("so {x}", scope).problems).toEqual([]);
});

test("inlineHtml and proseHtml never pass on a tag or an open quote of an author's", () => {
  const marks = fc.constantFrom(
    ..."<>\"'&`*_[]()!\\{}$|#-\n a".split(""),
    "script",
    "https://",
    "javascript:",
    "onload=",
  );
  const tag =
    /<(?!\/?(?:p|em|strong|code|a|ul|ol|li|blockquote|h[3-6]|hr|br|div|table|thead|tbody|tr|t[hd]|pre|sup|m|live|term)\b)/;
  fc.assert(
    fc.property(fc.array(marks, { maxLength: 40 }), (parts) => {
      const text = parts.join("");
      for (const set of [html(text), block(text)]) {
        expect(set).not.toMatch(tag);
        expect(set).not.toMatch(/<a href="(?!https:|[a-z][a-z0-9-]*\.html)/);
        expect(set.replace(/<[^<>]*>/g, "")).not.toMatch(/[<>"']/);
      }
    }),
    { numRuns: 300 },
  );
});

const balance = known.terms[0] as Term;

test.each([
  ["balance", { british: "balance", american: "coordination" }],
  ["coordinated", { british: "balanced", american: "coordinated" }],
  ["Balanced", { british: "Balanced", american: "Coordinated" }],
  ["something else", { british: "something else", american: "something else" }],
])("termForms gives both regions' words for %j", (text, expected) => {
  expect(termForms(balance, text)).toEqual(expected);
});
