// The built site, served as a strict host would serve it, and how Chromium is started to see it. The folder is named by SITE, else target/site.

import fs from "node:fs";
import http from "node:http";
import path from "node:path";
import { fileURLToPath } from "node:url";

const HERE = path.dirname(fileURLToPath(import.meta.url));
export const SITE = path.resolve(process.env.SITE ?? path.join(HERE, "../../target/site"));

/** WebGL reckoned in software, and the rest of the page put together without it, which takes a tenth of the time. */
export const SOFTWARE = ["--use-angle=swiftshader", "--disable-gpu-compositing", "--disable-gpu-rasterization"];

const TYPES = {
  ".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8",
  ".wasm": "application/wasm", ".svg": "image/svg+xml", ".json": "application/json", ".webmanifest": "application/manifest+json",
};
const POLICY =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; connect-src 'self'; " +
  "worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** Serves the site, or another folder, on a free port of this machine; `close` ends it. */
export async function serveSite(folder = SITE) {
  if (!fs.existsSync(path.join(folder, "index.html"))) throw new Error(`${folder} holds no page: run \`cargo xtask build\` first`);
  const server = http.createServer((request, response) => {
    const asked = decodeURIComponent(new URL(request.url ?? "/", "http://site").pathname);
    const file = path.join(folder, asked.endsWith("/") ? `${asked}index.html` : asked);
    if (!file.startsWith(folder + path.sep) || !fs.existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      "content-type": TYPES[path.extname(file)] ?? "application/octet-stream",
      "content-security-policy": POLICY,
      "x-content-type-options": "nosniff",
      "cache-control": "no-cache",
    });
    response.end(fs.readFileSync(file));
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    url: `http://127.0.0.1:${server.address().port}/`,
    close: () => new Promise((resolve) => {
      server.closeAllConnections();
      server.close(resolve);
    }),
  };
}
