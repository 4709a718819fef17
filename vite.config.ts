import { resolve } from "node:path";
import { type Plugin, runnerImport, type UserConfig } from "vite";
import { defineConfig } from "vitest/config";

const top = import.meta.dirname;
const source = resolve(top, "src");

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

/** The page: everything a browser needs, with addresses relative to wherever it is put. */
const page: UserConfig = {
  root: source,
  base: "./",
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

export default defineConfig(({ mode }) => ({
  ...(mode === "terminal" ? terminal : page),
  plugins: [writtenFunctions()],
  test: {
    root: top,
    projects: [
      {
        extends: true,
        test: { name: "unit", include: ["tests/**/*.test.ts"], exclude: ["tests/browser/**"] },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          maxWorkers: 1,
        },
      },
    ],
  },
}));
