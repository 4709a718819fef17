/**
 * `npm run bench [part...] [-- --quick]`: builds the bench into one plain program, as the terminal program is built,
 * and runs it. Never part of `npm test`: it takes minutes and holds only on a machine that does nothing else.
 */
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";

const top = resolve(import.meta.dirname, "../..");
process.chdir(top);
const folder = join(top, "dist/bench");
await build({
  mode: "terminal",
  logLevel: "warn",
  build: {
    ssr: join(top, "tests/bench/main.ts"),
    outDir: folder,
    // The browser's driver, the builder and the other engine stay outside: the bench only starts them.
    rolldownOptions: {
      external: ["playwright-core", "vite", "@ironcalc/wasm"],
      output: { entryFileNames: "bench.js" },
    },
  },
});
const program = join(folder, "bench.js");
process.argv[1] = program;
await import(pathToFileURL(program).href);
