import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { preview } from "vite";

const top = resolve(import.meta.dirname, "../..");

/** The built page on a free port of this machine. */
export interface ServedPage {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves what `npm run build` has made, or another folder with the same.
 *
 * @throws Error when the page has not been built.
 */
export async function servePage(folder = resolve(top, "dist/page")): Promise<ServedPage> {
  if (!existsSync(resolve(folder, "index.html")))
    throw new Error("The page is not built: run `npm run build` before the browser tests.");
  const server = await preview({
    configFile: resolve(top, "vite.config.ts"),
    logLevel: "error",
    build: { outDir: folder },
    preview: { port: 0, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error("The page is served, but its address is not known.");
  return { address, close: () => server.close() };
}
