import { test } from "vitest";
import { readFileSync } from "node:fs";
import { readChapter } from "/work/main/src/cells/reading/index.ts";
const fm = "---\ntitle: T\ncode: TRN\nsummary: S\nminutes: 5\nobjectives:\n  TRN-1: a\ngiven:\n  tas: { value: 95, from: 60, to: 180, step: 5 }\n  bank: { value: 15, from: 5, to: 45, step: 1 }\n---\n\n";
const fill = (u: string, n: number) => u.repeat(Math.ceil(n / u.length)).slice(0, n);
const units = ['[','![','*','_','`','<','a*','*a','_a','**a','[a','[a](','[a][','![a](b','`a``b','<a ','<!--','\\','&a','a**b*c','**a *b ','*a_b','[a](<','($a','a','h','http','@a','{a','] ','[]','[](','a`b','``','`a','*a **','"','[^a','[a]: ','|','a|','- ','> ','1. ','  ','~','<a href="','](','!','*_','**_','* ','_*a*_','$','$a','{tas}','{foo1}','$x$','[a](term:b)','[a](https://b.c)','[^1]','\n','\n\n','a\n','a\n\n','- a\n','- a\n\n','> a\n','> a\n\n','> - a\n','1. a\n','#\n','## a\n','## a\n\nb\n\n','```\n','```text\n```\n','```brief\na\n```\n','```figure turn-rate-radius\nsee: a\n```\n','$$\nx\n$$\n','$$\n','[^a]: b\n','[^a]: b\n\n','> [!NOTE] a\n> b\n\n','> [!NOTE]\n','|a|b|\n|-|-|\n|c|d|\n\n','|-|-|\n','a|b\n-|-\n','|\n','-|\n',':-\n','---\n','===\n','a\n---\n','    a\n','\t','\ta\n','  - a\n','a  \n','a\\\n','<div>\n','<div>\n\n','<!-- a\n','&amp; ','\\{','\\`','{','}','{}','{{','\u0000','\ud800','\r','\r\n','\ufeff','\u202e','é','[a]: b\n','[a]: <\n','```exercise\nid: a\nkind: number\nobjective: TRN-1\nask: a {tas}\nanswer: tas\nunit: kt\nwithin: 1 kt\ndraw:\n  tas: { from: 1, to: 90, step: 1 }\n```\n','```working\nof: a\nsteps:\n  - what: b\n    is: turnLeadDistanceRolling(tas, bank, 90, 5)\n    unit: NM\n    digits: 1\n```\n','```predict\n[[[[[\n```\n','```predict\n- - - - \n```\n', '```predict\n{a: {b: {\n```\n', '```predict\na: |\n b\n```\n','```figure '];
test("slow", () => {
  readChapter(fm, "x.md");
  const rows: [string, number][] = [];
  const run = (name: string, t: string) => { const a = performance.now(); let e = ""; let p = 0; try { p = readChapter(t, "x.md").problems.length; } catch (x) { e = ` THROW ${(x as Error).stack?.slice(0, 300)}`; } rows.push([`${name} (${p}) ${e}`, performance.now() - a]); };
  for (const u of units) {
    run(`raw ${JSON.stringify(u)}`, fill(u, 299_000));
    run(`body ${JSON.stringify(u)}`, fm + fill(u, 299_000));
    run(`para ${JSON.stringify(u)}`, fm + `${fill(u, 5_800)}\n\n`.repeat(50));
    run(`short ${JSON.stringify(u)}`, fm + `${fill(u, 1_000)}\n\n`.repeat(290));
    run(`lines ${JSON.stringify(u)}`, fm + `${fill(u, 80)}\n`.repeat(60).concat("\n").repeat(60).slice(0, 299_000));
    run(`yaml ${JSON.stringify(u)}`, `---\n${fill(u, 19_900)}\n---\n`);
    run(`fence ${JSON.stringify(u)}`, fm + `\`\`\`predict\n${fill(u, 19_000)}\n\`\`\`\n`.repeat(15));
    run(`notes ${JSON.stringify(u)}`, fm + `\`\`\`\`notes\n${fill(u, 5_000)}\n\`\`\`\`\n`.repeat(59));
    run(`see ${JSON.stringify(u)}`, fm + `\`\`\`figure turn-rate-radius\nsee: |\n  ${fill(u, 3_000).replaceAll("\n", "\n  ")}\n\`\`\`\n`.repeat(59));
  }
  rows.sort((a, b) => b[1] - a[1]);
  console.log(rows.slice(0, 45).map(([n, t]) => `${t.toFixed(0)}  ${n}`).join("\n"));
  console.log(rows.filter(([n]) => n.includes("THROW")).slice(0, 10).map(([n]) => n).join("\n"));
}, 600_000);
