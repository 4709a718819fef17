import { isFormula } from "../../engine/content";
import { type Notebook, textAt } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { convertUnit } from "../../units/convert";
import { say } from "../../words/say";
import { keyedRows, optionName, type StudyRow, unitOf } from "../rows";
import { namesNear } from "./near";

/** The column that names the options. */
export const optionHeader = "option";

const parts = /^\s*(.+?)\s*(?:\[([^\]]*)\])?\s*$/;

/** What a unit is to another, in words for the person who wrote the column. */
function unitTrouble(written: string, own: string): string {
  const factor = convertUnit(1, written, own);
  if (typeof factor !== "number")
    return say`the file says ${written}, the notebook ${own || say`no unit`}; they do not fit`;
  const offset = convertUnit(0, written, own);
  const advice = offset === 0 ? say`multiply the column by ${factor}` : say`convert the column`;
  return say`the file says ${written}, the notebook ${own}; ${advice} and write [${own}]`;
}

/** Whether two unit texts mean the same unit. */
const sameUnit = (a: string, b: string): boolean =>
  a === b || (a !== "" && b !== "" && convertUnit(1, a, b) === 1 && convertUnit(0, a, b) === 0);

function rowOf(all: readonly StudyRow[], where: string, name: string): StudyRow {
  const found = all.find((row) => row.name.toLowerCase() === name.toLowerCase());
  if (found) return found;
  const near = namesNear(
    name,
    all.map((row) => row.name),
  );
  const advice = near.length > 0 ? say`did you mean ${near.join(" or ")}?` : say`write Page.key, as in the notebook.`;
  throw new Refusal(say`${where}: there is no row "${name}"; ${advice}`);
}

/**
 * The rows that the columns of a table of options stand for; a unit may follow in square brackets.
 *
 * @param column the base option's column, whose cells the table replaces.
 * @throws Refusal with file and column for an unknown or calculated row, another unit, or a row named twice.
 */
export function headerRows(notebook: Notebook, file: string, header: readonly string[], column: number): StudyRow[] {
  if (header[0]?.trim().toLowerCase() !== optionHeader) {
    throw new Refusal(say`${file}, row 1: the first column is "${header[0] ?? ""}"; it must be ${optionHeader}.`);
  }
  const all = keyedRows(notebook);
  const rows = header.slice(1).map((cell, i) => {
    const where = say`${file}, row 1, column ${i + 2}`;
    const [, name = "", unit] = parts.exec(cell) ?? [];
    if (name === "") throw new Refusal(say`${where}: the column has no name; write Page.key.`);
    const row = rowOf(all, where, name);
    const own = unitOf(row);
    if (unit !== undefined && !sameUnit(unit.trim(), own)) {
      throw new Refusal(`${where}, ${row.name}: ${unitTrouble(unit.trim(), own)}.`);
    }
    if (isFormula(textAt(row.page, row.row, column))) {
      const option = optionName(notebook, column);
      throw new Refusal(say`${where}: ${row.name} is calculated for ${option}; give the inputs that it depends on.`);
    }
    return row;
  });
  const twice = rows.find((row, i) => rows.findIndex(({ name }) => name === row.name) !== i);
  if (twice) throw new Refusal(say`${file}, row 1: ${twice.name} stands in two columns; leave one.`);
  return rows;
}
