import { defineConfig } from "vite";
import { workbook } from "./src/build/plugin.ts";

export default defineConfig({
  base: "./",
  appType: "mpa",
  plugins: [workbook()],
  build: { target: "es2022", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
});
