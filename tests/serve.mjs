// Serves a folder as a plain web server would, under a prefix, with Brotli where the browser takes it.
//   node tests/serve.mjs FOLDER [PORT] [PREFIX]
import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync } from "node:zlib";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".json": "application/json",
  ".woff2": "font/woff2",
};

/** Each file is packed once, as a server with a cache of packed files would. */
const packedFiles = new Map();
function packedFile(file) {
  const key = `${file} ${statSync(file).mtimeMs}`;
  if (!packedFiles.has(key)) packedFiles.set(key, brotliCompressSync(readFileSync(file)));
  return packedFiles.get(key);
}

/** @returns {Promise<import("node:http").Server>} listening on the port (0 for any free one) */
export function serve(folder, port = 0, prefix = "/") {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
    let file = path.startsWith(prefix) ? join(folder, normalize(`/${path.slice(prefix.length)}`)) : "";
    if (file && existsSync(file) && statSync(file).isDirectory()) file = join(file, "index.html");
    if (!file || !existsSync(file)) return response.writeHead(404).end("Not found");
    const type = types[extname(file)] ?? "application/octet-stream";
    const packed = /text|json|svg/.test(type) && /\bbr\b/.test(request.headers["accept-encoding"] ?? "");
    response.writeHead(200, {
      "content-type": type,
      "cache-control": "max-age=600",
      ...(packed && { "content-encoding": "br" }),
    });
    response.end(packed ? packedFile(file) : readFileSync(file));
  });
  return new Promise((ready) => server.listen(port, "127.0.0.1", () => ready(server)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder = "dist", port = "4173", prefix = "/"] = process.argv.slice(2);
  await serve(folder, Number(port), prefix);
  console.log(`Serving ${folder} at http://127.0.0.1:${port}${prefix}`);
}
