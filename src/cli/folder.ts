import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { decodeFile } from "../notebook/decode";
import { readNotebook, writeNotebook } from "../notebook/files";
import type { Notebook } from "../notebook/model";
import { say } from "../words/say";
import { Misuse } from "./output";

/** Reads the notebook in a folder. @throws Misuse or Refusal with one sentence. */
export function readFolder(folder: string): Notebook {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) {
    throw new Misuse(say`${folder} is not a folder; name the folder that holds notebook.json.`);
  }
  const names = readdirSync(folder).filter((name) => name === "notebook.json" || name.toLowerCase().endsWith(".csv"));
  const files = names.map((name) => [name, decodeFile(name, readFileSync(join(folder, name)))] as const);
  return readNotebook(new Map(files));
}

/** Writes a notebook into a folder, which is made where it is missing; files that say the same already are left alone. */
export function writeFolder(folder: string, notebook: Notebook): void {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of writeNotebook(notebook)) {
    const file = join(folder, name);
    if (statSync(file, { throwIfNoEntry: false }) && decodeFile(name, readFileSync(file)) === text) continue;
    writeFileSync(file, text);
  }
}
