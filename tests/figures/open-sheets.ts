import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readNotebook } from "../../src/notebook/files";
import { LiveNotebook } from "../../src/notebook/live";

/** One of the project's own notebooks, calculated. */
export function openSheets(name: string): LiveNotebook {
  const folder = new URL(`../../sheets/${name}`, import.meta.url).pathname;
  const files = readdirSync(folder).map((file) => [file, readFileSync(join(folder, file), "utf8")] as const);
  return new LiveNotebook(readNotebook(new Map(files)));
}
