import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { type Plugin, runnerImport, type UserConfig } from "vite";
import { defineConfig } from "vitest/config";

const top = import.meta.dirname;
const source = resolve(top, "src");
/** Files that are put beside the page as they are. */
const asIs = resolve(source, "view/public");

/** Writes the named functions as plain code where studies look for them; their definitions stay the one source. */
const writtenFunctions = (): Plugin => {
  const place = resolve(source, "study/kernel/written.ts");
  let text: Promise<string> | undefined;
  return {
    name: "written-functions",
    load: (id) => {
      if (id.split("?")[0] !== place) return undefined;
      text ??= runnerImport<{ writtenModule: () => string }>(resolve(source, "study/written-module.ts")).then(
        ({ module }) => module.writtenModule(),
      );
      return text;
    },
  };
};

/**
 * Builds what stores the program in the browser, and writes into it which files there are. Names with a hash in them
 * stand for their content; the others get a revision.
 */
const storedProgram = (): Plugin => ({
  name: "stored-program",
  buildStart() {
    const id = resolve(source, "view/offline/service-worker.ts");
    this.emitFile({ type: "chunk", id, fileName: "service-worker.js" });
  },
  generateBundle: {
    order: "post",
    handler(_options, bundle) {
      const worker = bundle["service-worker.js"];
      if (worker?.type !== "chunk") throw new Error("There is no service worker to write the program's files into.");
      // It runs as one plain script: not every browser takes modules there.
      if (worker.imports.length > 0) throw new Error(`The service worker imports ${worker.imports.join(", ")}.`);
      const own = readdirSync(asIs).map((name) => ({ name, content: readFileSync(resolve(asIs, name)) }));
      const made = Object.values(bundle)
        // Browsers that have service workers take the smaller of the two forms of a font.
        .filter((file) => file !== worker && !file.fileName.endsWith(".woff"))
        .map((file) => {
          return { name: file.fileName, content: file.type === "chunk" ? file.code : file.source };
        });
      const files = [...made, ...own].map(({ name, content }) => {
        const revision = name.startsWith("assets/") ? null : createHash("sha256").update(content).digest("hex");
        return { url: name, revision };
      });
      worker.code = `const programFiles = ${JSON.stringify(files)};\n${worker.code}`;
    },
  },
});

/** The page: everything a browser needs, with addresses relative to wherever it is put. */
const page: UserConfig = {
  root: source,
  base: "./",
  publicDir: asIs,
  build: {
    outDir: resolve(top, "dist/page"),
    emptyOutDir: true,
    // The page's content policy lets fonts come from its own address only, so nothing is folded into the styles.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2500,
  },
  worker: { format: "es" },
  // The worked notebooks lie beside the source.
  server: { host: "127.0.0.1", fs: { allow: [top] } },
  preview: { host: "127.0.0.1", strictPort: false },
};

/** The terminal program: one file with every library inside, so that it starts quickly. */
const terminal: UserConfig = {
  root: source,
  build: {
    ssr: "cli/main.ts",
    target: "node20",
    outDir: resolve(top, "dist/terminal"),
    emptyOutDir: true,
    rolldownOptions: { output: { entryFileNames: "athwart.js", codeSplitting: false } },
  },
  ssr: { noExternal: true },
};

export default defineConfig(({ mode, command }) => ({
  ...(mode === "terminal" ? terminal : page),
  plugins: [writtenFunctions(), ...(mode !== "terminal" && command === "build" ? [storedProgram()] : [])],
  test: {
    root: top,
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          // How long a test takes on a slow machine is no result of it; one that hangs is.
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          // What a screen shows comes a moment after the key that asked for it.
          expect: { poll: { timeout: 20_000 } },
          fileParallelism: false,
          maxWorkers: 1,
        },
      },
    ],
  },
}));
