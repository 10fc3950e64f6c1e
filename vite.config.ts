import { defineConfig } from "vite";
import { workbook } from "./src/build/plugin.ts";
import { slim } from "./src/build/slim.ts";

export default defineConfig({
  base: "./",
  appType: "mpa",
  plugins: [workbook(), slim()],
  build: { target: "es2022", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
});
