import { describe, expect, test } from "vitest";
import { formulasPage } from "../../src/build/templates/formulas.ts";
import { fontsFor, typeset } from "../../src/build/typeset.ts";
import { catalogue, topics } from "../../src/calc/index.ts";
import { piecesOf } from "../../src/widgets/formula-cell/shell.ts";

const { path, html } = formulasPage("1.2.3");
const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!);
const sheet = JSON.parse(/<script type="application\/json" id="sheet">(.*?)<\/script>/s.exec(html)![1]!);
const cellOf = (name: string): string =>
  new RegExp(`<formula-cell [^>]*id="${name}".*?</formula-cell>`, "s").exec(html)![0];

describe("formulasPage", () => {
  test("formulasPage has every entry of the catalogue once, under its topic, in the catalogue's order", () => {
    const shown = [...html.matchAll(/<formula-cell [^>]*id="([^"]+)"/g)].map(([, id]) => id);
    expect(shown).toEqual(
      topics.flatMap((topic) => catalogue.filter((each) => each.topic === topic)).map(({ name }) => name),
    );
    expect(shown).toHaveLength(catalogue.length);
  });

  test("formulasPage gives every anchor a name of its own, and no link leads nowhere", () => {
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    const links = [...html.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id!);
    expect(links.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test.each(catalogue.map((formula) => [formula.name, formula] as const))(
    "formulasPage says of %s its kind, letters, ranges, assumptions, source and name",
    (name, { kind, args, assumes, source, tex, symbol }) => {
      const cell = cellOf(name);
      const words = { exact: "exact", model: "model", rule: "rule of thumb" }[kind];
      expect(cell).toMatch(new RegExp(`<span class="kind ${kind}"><svg .*?</svg>${words}</span>`, "s"));
      expect(cell.match(/<dt>/g)?.length ?? 0).toBe(args.length);
      expect(cell.match(/class="range[ "]/g)?.length ?? 0).toBe(args.length);
      for (const argument of args) expect(cell).toContain(argument.words);
      expect(plain(cell)).toContain(plain(assumes));
      expect(plain(cell)).toContain(plain(`Source: ${source}.`));
      expect(cell).toContain(`<code>${name}(`);
      for (const piece of piecesOf(`${symbol} = ${tex}`))
        expect(() => typeset(`\\displaystyle ${piece}`, false)).not.toThrow();
      expect(cell.match(/class="piece"><span class="katex">/g)).toHaveLength(piecesOf(tex).length);
    },
  );

  test("formulasPage typesets nothing as an error and leaves no TeX in the text", () => {
    expect(html).not.toContain("katex-error");
    const text = html.slice(0, html.indexOf('id="sheet"')).replace(/<annotation [^>]*>[^<]*<\/annotation>/g, "");
    expect(text).not.toContain("\\");
  });

  test("formulasPage numbers each source once, and every formula by its own", () => {
    const list = /<section class="numbered-sources".*?<\/section>/s.exec(html)![0];
    const numbered = [...list.matchAll(/<b>(\d+)<\/b> (.*?)(?=; <b>|\.<\/p>)/gs)].map(([, , text]) => plain(text!));
    expect(new Set(numbered).size).toBe(numbered.length);
    for (const { name, source } of catalogue) {
      const [, number] = /<span class="numbered">(\d+)<\/span>/.exec(cellOf(name))!;
      expect(numbered[Number(number) - 1]).toBe(plain(source));
    }
  });

  test("formulasPage carries the maths of the workings for the eye alone: their numbers are read in words", () => {
    const typesets = Object.values(sheet.typeset as Record<string, string>);
    expect(typesets.length).toBeGreaterThan(100);
    for (const each of typesets)
      expect(each).toMatch(/^<span class="katex"><span class="katex-html" aria-hidden="true">/);
  });

  test("formulasPage is a page of the navigation, and asks for the fonts its maths needs", () => {
    expect(html).toContain(`<a href="./${path}" aria-current="page">Formulas</a>`);
    for (const font of fontsFor(html)) expect(html).toContain(`fonts/${font}.woff2`);
    expect(fontsFor(html)).toContain("KaTeX_Main-Regular");
  });
});

/** A text without tags, entities and the ways to write a letter or an apostrophe. */
function plain(text: string): string {
  return text
    .replace(/<[^>]*>/g, "")
    .replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)))
    .replaceAll("&amp;", "&")
    .replace(/[_’‘']/g, "");
}
