import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/browser/**", "tests/bench/**"],
    reporters: process.env.CI ? ["default", ["json", { outputFile: "test-results/unit.json" }]] : ["default"],
  },
});
