import { spawn } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { type Mutant, mutants, mutated } from "./mutants.ts";

interface Case extends Mutant {
  /** The source file, from the project's root. */
  readonly file: string;
}

type Outcome = "killed" | "hung" | "survived";

const usage = `node src/build/run.mjs mutate [--files turns.ts,leads.ts] [--sample 100] [--seed 1] [--workers 2]

Changes src/calc in one place at a time, in copies of it, and reports which changes its tests do not notice.
  --files    files of src/calc, by name; all but the catalogue unless given
  --sample   how many changes to try, drawn by the seed; all unless given
  --seed     a whole number, 1 unless given`;

/** Runs the mutants and prints each survivor with its place, then the score; 1 where tests fail before any change. */
export async function main(argv: readonly string[]): Promise<number> {
  const { values } = parseArgs({
    args: [...argv],
    options: {
      files: { type: "string" },
      sample: { type: "string" },
      seed: { type: "string", default: "1" },
      workers: { type: "string", default: "2" },
      help: { type: "boolean", default: false },
    },
  });
  if (values.help) return say(usage, 0);
  const cases = sampled(allCases(values.files?.split(",")), Number(values.sample ?? Infinity), Number(values.seed));
  const home = mkdtempSync(join(tmpdir(), "hoodwork-mutants-"));
  const end = () => rmSync(home, { recursive: true, force: true });
  process.once("SIGINT", () => process.exit(130)).once("exit", end);
  const copies = Array.from({ length: Number(values.workers) }, (_, i) => copyOf(join(home, String(i))));
  const began = performance.now();
  if (!(await passes(copies[0]!, [], 600_000))) return say("The tests of src/calc fail before any change.", 1);
  const limit = 5000 + 4 * (performance.now() - began);
  report(await tried(cases, copies, limit));
  return 0;
}

function allCases(files?: readonly string[]): Case[] {
  const paths = (files ?? sources()).map((name) => `src/calc/${name}`);
  return paths.flatMap((file) => mutants(readFileSync(file, "utf8"), file).map((mutant) => ({ file, ...mutant })));
}

function sources(): string[] {
  return readdirSync("src/calc")
    .filter((name) => name.endsWith(".ts"))
    .toSorted();
}

/** So many of the cases, drawn without return, in their own order. */
function sampled(cases: readonly Case[], count: number, seed: number): Case[] {
  const random = xoroshiro128plus(seed);
  const left = cases.map((_, i) => i);
  while (left.length > count) left.splice(uniformInt(random, 0, left.length - 1), 1);
  return left.map((i) => cases[i]!);
}

function copyOf(folder: string): string {
  for (const part of ["src/calc", "tests/calc", "tests/reference"]) {
    cpSync(part, join(folder, part), { recursive: true });
  }
  for (const file of ["package.json", "tsconfig.json"]) cpSync(file, join(folder, file));
  symlinkSync(resolve("node_modules"), join(folder, "node_modules"));
  const config = `export default { cacheDir: ".cache", test: { include: ["tests/calc/**/*.test.ts"] } };\n`;
  writeFileSync(join(folder, "vitest.config.js"), config);
  return folder;
}

/** Each case once, by whichever copy is free. */
async function tried(cases: readonly Case[], copies: readonly string[], limit: number): Promise<Map<Case, Outcome>> {
  const outcomes = new Map<Case, Outcome>();
  const waiting = cases.values();
  await Promise.all(
    copies.map(async (copy) => {
      for (const one of waiting) {
        outcomes.set(one, await outcomeOf(one, copy, limit));
        const { file, line, change } = one;
        console.log(`${outcomes.size}/${cases.length} ${outcomes.get(one)} ${file}:${line} ${change}`);
      }
    }),
  );
  return outcomes;
}

async function outcomeOf(one: Case, copy: string, limit: number): Promise<Outcome> {
  const source = readFileSync(one.file, "utf8");
  const place = join(copy, one.file);
  writeFileSync(place, mutated(source, one));
  try {
    // The file's own tests notice most changes; the others run only where they did not.
    const own = `tests/calc/${basename(one.file, ".ts")}.test.ts`;
    const runs = existsSync(own) ? [[own], []] : [[]];
    for (const files of runs) {
      const passed = await passes(copy, files, limit);
      if (passed !== true) return passed === undefined ? "hung" : "killed";
    }
    return "survived";
  } finally {
    writeFileSync(place, source);
  }
}

/** Whether the tests pass; undefined where they do not end. */
function passes(folder: string, files: readonly string[], limit: number): Promise<boolean | undefined> {
  const vitest = resolve("node_modules/vitest/vitest.mjs");
  const options = ["run", "--bail", "1", "--reporter", "dot", "--pool", "threads", "--maxWorkers", "1"];
  const child = spawn(process.execPath, [vitest, ...options, ...files], { cwd: folder, stdio: "ignore" });
  return new Promise((settle) => {
    let late = false;
    const timer = setTimeout(() => {
      late = true;
      child.kill("SIGKILL");
    }, limit);
    child.once("close", (code) => {
      clearTimeout(timer);
      settle(late ? undefined : code === 0);
    });
  });
}

function report(outcomes: ReadonlyMap<Case, Outcome>): void {
  const survivors = [...outcomes].filter(([, outcome]) => outcome === "survived").map(([one]) => one);
  console.log(`\nSurvived: ${survivors.length}`);
  for (const { file, line, change } of survivors) console.log(`  ${file}:${line}  ${change}`);
  const killed = outcomes.size - survivors.length;
  console.log(`Killed ${killed} of ${outcomes.size}: ${((100 * killed) / Math.max(1, outcomes.size)).toFixed(1)} %`);
}

function say(text: string, code: number): number {
  console.log(text);
  return code;
}
