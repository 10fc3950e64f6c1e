import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Measured } from "./budget.ts";

const root = resolve(import.meta.dirname, "../..");

/** The whole build, and the build of ten times as many chapters, in copies of the project. */
export function measureBuild(): Measured[] {
  const [one, ten] = [timed(1), timed(10)];
  return [
    { what: "build of all chapters", measured: one, unit: "s", atMost: 10 },
    { what: "build of ten times as many", measured: ten, unit: "s", atMost: 10 * one },
  ];
}

function timed(times: number): number {
  const copy = mkdtempSync(join(tmpdir(), "hoodwork-build-"));
  for (const name of ["chapters", "src", "public", "package.json", "tsconfig.json", "vite.config.ts"]) {
    cpSync(join(root, name), join(copy, name), { recursive: true });
  }
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
  multiply(join(copy, "chapters"), times);
  const from = performance.now();
  execFileSync("node", ["src/build/run.mjs", "build"], { cwd: copy, stdio: ["ignore", "ignore", "inherit"] });
  const seconds = (performance.now() - from) / 1000;
  rmSync(copy, { recursive: true });
  return seconds;
}

/** Copies of the turning chapter under other names, with exercise ids of their own. */
function multiply(folder: string, times: number): void {
  const text = readFileSync(join(folder, "turning.md"), "utf8");
  const course = readFileSync(join(folder, "course.yaml"), "utf8");
  const names = [...course.matchAll(/name: ([a-z-]+)/g)].map(([, name]) => name!).filter((name) => name !== "turning");
  for (const [i, name] of names.slice(0, times - 1).entries()) {
    writeFileSync(join(folder, `${name}.md`), text.replaceAll(/^(id: .*)$/gm, `$1-copy-${i}`));
  }
}
