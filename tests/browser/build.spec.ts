import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { expect, test } from "@playwright/test";

const root = resolve(import.meta.dirname, "../..");
let copy = "";

test.describe.configure({ mode: "serial", timeout: 120_000 });

test.beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "hoodwork-"));
  for (const name of ["chapters", "src", "public", "package.json", "tsconfig.json", "vite.config.ts"]) {
    cpSync(join(root, name), join(copy, name), { recursive: true });
  }
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
  mkdirSync(join(copy, "dist"));
  writeFileSync(join(copy, "dist/index.html"), "the last good build");
});

test.afterAll(() => rmSync(copy, { recursive: true, force: true }));

const run = (...words: string[]) => spawnSync("node", ["src/build/run.mjs", ...words], { cwd: copy, encoding: "utf8" });

test("build lists all three mistakes of a chapter with line and mend, exits 1 and leaves the last good build", () => {
  const file = join(copy, "chapters/turning.md");
  const good = readFileSync(file, "utf8");
  const bad = good
    .replace("minutes: 45", "minutess: 45")
    .replace("is: turnRadius(tas, bank)", "is: turnRadius(tas, banck)")
    .replace("```figure turn-rate-radius", "```figure turn-rate-radious");
  writeFileSync(file, bad);
  const { status, stderr } = run("build");
  writeFileSync(file, good);
  expect(status).toBe(1);
  for (const wrong of ["minutess", "banck", "turn-rate-radious"]) {
    const line = bad.slice(0, bad.indexOf(wrong)).split("\n").length;
    expect(stderr).toMatch(new RegExp(`chapters/turning\\.md:${line}:\\d+ .*${wrong}`));
  }
  expect(readFileSync(join(copy, "dist/index.html"), "utf8")).toBe("the last good build");
});

test("chapters --json counts what the chapters hold and lists no problem", () => {
  const { status, stdout } = run("chapters", "--json");
  const counts = JSON.parse(stdout);
  expect(status).toBe(0);
  expect(counts.problems).toEqual([]);
  expect(counts.figures).toMatchObject({ "turn-rate-radius": 1, "rate-one-rules": 1 });
  expect(Object.keys(counts.exercises.byKind)).toEqual(expect.arrayContaining(["choice", "number", "order"]));
});

test("build replaces the last build when it is whole", () => {
  const { status, stderr } = run("build");
  expect(stderr).toBe("");
  expect(status).toBe(0);
  expect(readFileSync(join(copy, "dist/index.html"), "utf8")).toContain("Turning by numbers");
  expect(existsSync(join(copy, "dist.new"))).toBe(false);
});
