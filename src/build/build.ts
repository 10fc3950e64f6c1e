import { existsSync, renameSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { readFolder, reportOf } from "./chapters-folder.ts";

/**
 * Builds the workbook into dist. Chapters are checked first, and the new build replaces the old only
 * when it is whole: whatever goes wrong, the last good build stays in place. Exit code 1 then.
 */
export async function main(): Promise<number> {
  const root = resolve(import.meta.dirname, "../..");
  const { problems } = readFolder(join(root, "chapters"));
  if (problems.length > 0) {
    console.error(`${reportOf(problems)}\n\n${problems.length} problems: not built; the last good build stays.`);
    return 1;
  }
  const [fresh, dist] = [join(root, "dist.new"), join(root, "dist")];
  try {
    await build({
      root,
      configFile: join(root, "vite.config.ts"),
      logLevel: "warn",
      build: { outDir: fresh, emptyOutDir: true },
    });
  } catch (error) {
    rmSync(fresh, { recursive: true, force: true });
    console.error(`Not built; the last good build stays. ${error instanceof Error ? error.message : error}`);
    return 1;
  }
  if (existsSync(dist)) rmSync(dist, { recursive: true });
  renameSync(fresh, dist);
  console.log("Built into dist.");
  return 0;
}
