import { readdirSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { type Plugin, runnerImport, type ViteDevServer } from "vite";
import type { Page } from "./page.ts";

/** Turns chapters into pages: virtual HTML files that Vite builds and serves like any other. */
export function workbook(): Plugin {
  const root = resolve(import.meta.dirname, "../..");
  let pages = new Map<string, Page>();
  const at = (path: string) => join(root, path);
  const load = async () => {
    const { module } = await runnerImport<typeof import("./site.ts")>(join(root, "src/build/site.ts"));
    const site = await module.readSite(root);
    pages = new Map(site.pages.map((page) => [at(page.path), page]));
    return site;
  };

  return {
    name: "workbook",
    async config(_, { command }) {
      const site = await load();
      if (command === "build" && site.problems.length > 0) throw new Error(site.report);
      return { build: { rolldownOptions: { input: [...pages.keys()] } } };
    },
    resolveId: (id) => (pages.has(id) ? id : undefined),
    load: (id) => pages.get(id)?.html,
    generateBundle(_, bundle) {
      // Every browser that runs the workbook reads woff2; the older formats would only be copied along.
      for (const [name, asset] of Object.entries(bundle)) {
        if (/\.(woff|ttf)$/.test(name)) delete bundle[name];
        if (asset.type !== "asset" || !name.endsWith(".css")) continue;
        asset.source = String(asset.source).replaceAll(/,\s*url\([^)]*\.(woff|ttf)\)\s*format\([^)]*\)/g, "");
      }
    },
    configureServer(server) {
      watchChapters(server, join(root, "chapters"), load);
      server.middlewares.use(async (request, response, next) => {
        const path = (request.url ?? "/").replace(/[?#].*$/, "");
        const page = pages.get(at(path.endsWith("/") ? `${path}index.html`.slice(1) : path.slice(1)));
        if (!page) return next();
        response.setHeader("content-type", "text/html; charset=utf-8");
        response.end(await server.transformIndexHtml(path, withoutPolicy(page.html)));
      });
    },
  };
}

/** The development server injects scripts of its own, which the built page's policy would refuse. */
const withoutPolicy = (html: string): string => html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, "");

function watchChapters(server: ViteDevServer, folder: string, load: () => Promise<{ report: string }>): void {
  server.watcher.add(readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => join(folder, name)));
  server.watcher.on("all", async (_, file) => {
    if (relative(folder, file).startsWith("..")) return;
    const { report } = await load();
    if (report) server.config.logger.warn(report);
    server.ws.send({ type: "full-reload" });
  });
}
