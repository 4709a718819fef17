import Papa from "papaparse";
import { say } from "../words/say";
import { checkSize, checkText } from "./limits";
import type { Row } from "./model";
import { Refusal } from "./refusal";

/** The line end of the first row; line ends inside quoted cells do not count. */
function lineEnd(text: string): "\n" | "\r\n" {
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    if (text[i] === '"') quoted = !quoted;
    else if (text[i] === "\n" && !quoted) return text[i - 1] === "\r" ? "\r\n" : "\n";
  }
  return "\n";
}

/**
 * Reads a page's file: comma, double quotes, UTF-8; every cell as it stands, nothing guessed.
 *
 * @throws Refusal that names file, row and column for rows of different length, or a quote
 * that is not closed, or for too much.
 */
export function parsePage(file: string, text: string): readonly Row[] {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const { data, errors } = Papa.parse<string[]>(body, { delimiter: ",", newline: lineEnd(body) });
  const fault = errors.find((error) => error.type === "Quotes");
  if (fault) {
    const row = (fault.row ?? 0) + 1;
    throw new Refusal(
      say`${file}, row ${row}: a quotation mark is not closed or stands inside a cell; double it or remove it.`,
    );
  }
  const ended = data.length > 1 && data.at(-1)?.length === 1 && data.at(-1)?.[0] === "" ? data.slice(0, -1) : data;
  const columns = ended[0]?.length ?? 0;
  checkSize(file, ended.length, columns);
  return ended.map((row, i) => {
    row.forEach((cell, column) => {
      checkText(() => say`${file}, row ${i + 1}, column ${column + 1}`, cell);
    });
    if (row.length === columns) return row;
    // A line without anything in it is an empty row, however many commas it lacks.
    if (row.length === 1 && row[0] === "") return Array.from({ length: columns }, () => "");
    const where = say`${file}, row ${i + 1}, column ${Math.min(row.length, columns) + 1}`;
    throw new Refusal(say`${where}: the row has ${row.length} cells, the first row has ${columns}; make them equal.`);
  });
}

/** A page as its file: comma, LF, quotes only where needed, a line end at the end. */
export function printPage(rows: readonly Row[]): string {
  const text = Papa.unparse(rows as string[][], { delimiter: ",", newline: "\n" });
  return rows.length === 0 ? "" : `${text}\n`;
}
