import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import { readNotebook } from "../notebook/files";
import type { Notebook } from "../notebook/model";
import { mostBytes } from "../notebook/page-csv";
import { Misuse } from "./output";

const decoder = new TextDecoder("utf-8", { ignoreBOM: true });

/** Reads the notebook in a folder. @throws Misuse or Refusal with one sentence. */
export function readFolder(folder: string): Notebook {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) {
    throw new Misuse(`${folder} is not a folder; name the folder that holds notebook.json.`);
  }
  const names = readdirSync(folder).filter((name) => name === "notebook.json" || name.toLowerCase().endsWith(".csv"));
  const files = names.map((name) => {
    const path = join(folder, name);
    const size = statSync(path).size;
    if (size > mostBytes)
      throw new Misuse(`${basename(path)} has ${size} bytes (allowed ${mostBytes}); it cannot be a page.`);
    return [name, decoder.decode(readFileSync(path))] as const;
  });
  return readNotebook(new Map(files));
}
