// Runs one of the project's own commands, written in TypeScript: node src/build/run.mjs NAME [OPTIONS]
import { runnerImport } from "vite";

const commands = {
  build: "src/build/build.ts",
  chapters: "src/build/chapters.ts",
  mutate: "src/build/mutate.ts",
  bench: "tests/bench/bench.ts",
};

const [name, ...options] = process.argv.slice(2);
const file = commands[name];
if (!file) {
  console.error(`No command '${name}': one of ${Object.keys(commands).join(", ")}.`);
  process.exit(2);
}
const { module } = await runnerImport(new URL(`../../${file}`, import.meta.url).pathname);
process.exitCode = (await module.main(options)) ?? 0;
