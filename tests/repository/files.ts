import { readdirSync } from "node:fs";
import { join } from "node:path";
import { top } from "./lint";

/** Made on each machine and never kept. */
export const madeHere: readonly string[] = [".git", ".tmp", "coverage", "dist", "node_modules"];

/** Paths of all files of the project, from its top folder on, in order. */
export function projectFiles(folder = ""): readonly string[] {
  return readdirSync(join(top, folder), { withFileTypes: true })
    .filter(({ name }) => !madeHere.includes(name))
    .flatMap((entry) => {
      const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
      return entry.isDirectory() ? projectFiles(path) : [path];
    })
    .sort();
}
