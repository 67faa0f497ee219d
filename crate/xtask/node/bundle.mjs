// Bundles the page and the engine's thread of a site into one script each, for the page that is one single file.
// node bundle.mjs MODULES SITE PARTS OUT: the installed packages, the site's folder, the module that stands for
// engine/home.js, and the folder to write page.js and thread.js to.

import { createRequire } from "node:module";
import path from "node:path";

const [modules, site, parts, out] = process.argv.slice(2).map((folder) => path.resolve(folder));
const { build } = createRequire(path.join(modules, "here.js"))("esbuild");

/** The parts come out of the file itself, and their own imports are the site's. */
const within = {
  name: "within",
  setup(bundle) {
    bundle.onResolve({ filter: /(^|\/)home\.js$/ }, () => ({ path: parts }));
    bundle.onResolve({ filter: /^\.\.\/engine\// }, ({ path: file, importer }) => (importer === parts ? { path: path.join(site, file.slice(3)) } : undefined));
  },
};

for (const [entry, name] of [["main.js", "page.js"], ["engine/worker.js", "thread.js"]]) {
  await build({
    entryPoints: [path.join(site, entry)], outfile: path.join(out, name), bundle: true, minify: true, format: "iife",
    target: "es2022", charset: "utf8", legalComments: "inline", plugins: [within], logLevel: "warning",
  });
}
