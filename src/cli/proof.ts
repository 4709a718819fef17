import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../functions";
import { readAbout } from "../notebook/migrate";
import { printPage } from "../notebook/page-csv";
import { proofRows } from "../notebook/proof-page";
import { tablesRows } from "../notebook/tables-page";
import { usualPage } from "../notebook/usual-page";
import { say } from "../words/say";
import { Misuse, type Output } from "./output";

const makers = { Proof: proofRows, Tables: tablesRows } as const;

/** Writes the pages that follow from the functions alone: Proof and Tables, where notebook.json lists them. */
export function writeProof(output: Output, folder: string): void {
  const path = output.path(folder);
  const about = readAbout(readFileSync(join(path, "notebook.json"), "utf8"));
  const entries = Object.entries(makers).flatMap(([name, rows]) => {
    const entry = usualPage(about.pages, name);
    return entry ? [{ file: entry.file, rows }] : [];
  });
  if (entries.length === 0) throw new Misuse(say`${folder}: notebook.json lists neither Proof nor Tables.`);
  for (const { file, rows } of entries) {
    writeFileSync(join(path, file), printPage(rows(catalogue)));
    output.write(`${file}\n`);
  }
}
