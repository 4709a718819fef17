import { existsSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { readFolder } from "../../src/cli/folder";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";

const sheets = resolve(import.meta.dirname, "../../sheets");

/** The folders of all worked notebooks. */
export const workedFolders: readonly string[] = readdirSync(sheets).filter((name) =>
  existsSync(join(sheets, name, "notebook.json")),
);

export const folderPath = (name: string): string => join(sheets, name);

export const readWorked = (name: string): Notebook => readFolder(folderPath(name));

export const openWorked = (name: string): LiveNotebook => new LiveNotebook(readWorked(name));
