import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { readNotebook } from "../../src/notebook/files";
import { firstOption, lead, type Notebook, optionsOf, pageByName } from "../../src/notebook/model";
import { columnName } from "../../src/notebook/references";

const folder = resolve(import.meta.dirname, "../../sheets/three-hulls");

/** The worked notebook as its files hold it. */
export const worked: Notebook = readNotebook(
  new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), "utf8")])),
);

export const workedFile = (name: string): string => readFileSync(join(folder, name), "utf8");

/** The cell of `Supply.I_run@Cruiser`: page and address, with what is typed there. */
export function cellAt(page: string, key: string, option: string): { cell: string; text: string; row: number } {
  const rows = pageByName(worked, page)?.rows ?? [];
  const row = rows.findIndex((cells) => cells[lead.key] === key);
  const column = firstOption + optionsOf(worked).indexOf(option);
  if (row < 1 || column < firstOption) throw new Error(`There is no ${page}.${key}@${option}.`);
  return { cell: `${columnName(column)}${row + 1}`, text: rows[row]?.[column] ?? "", row: row + 1 };
}
