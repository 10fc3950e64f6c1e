import { defineConfig } from "vitest/config";

/** Measures its processor time, so it has a process of its own. */
const alone = "tests/cells/reading-hostile.test.ts";

/** Pure tests share their workers; those with a document of their own do not. */
export default defineConfig({
  test: {
    maxWorkers: 2,
    reporters: process.env.CI ? ["default", ["json", { outputFile: "test-results/unit.json" }]] : ["default"],
    projects: [
      {
        test: {
          name: "pure",
          include: ["tests/{calc,cells,build}/**/*.test.ts"],
          exclude: [alone],
          pool: "threads",
          isolate: false,
        },
      },
      { test: { name: "document", include: ["tests/{widgets,records,pages}/**/*.test.ts", alone] } },
    ],
  },
});
