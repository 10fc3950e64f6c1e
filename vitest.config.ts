import { defineConfig } from "vitest/config";

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
          pool: "threads",
          isolate: false,
        },
      },
      { test: { name: "document", include: ["tests/{widgets,records,pages}/**/*.test.ts"] } },
    ],
  },
});
