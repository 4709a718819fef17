import { Refusal } from "../notebook/refusal";
import { detectShape, readTable } from "../notebook/table-in";
import { say } from "../words/say";
import { traineeId } from "./seed";

/** One line of a class list: the trainee and whatever the trainer keeps beside it. */
export interface ClassEntry {
  readonly trainee: string;
  /** Further columns by their heading; nothing is asked for and nothing is added. */
  readonly beside: Readonly<Record<string, string>>;
}

const key = say`Trainee`;

/**
 * Reads a class list: a table with a column *Trainee*, in any order and with any further columns.
 *
 * @throws Refusal with file and row for a missing column, a blank or a doubled trainee.
 */
export function readClassList(file: string, bytes: Uint8Array): readonly ClassEntry[] {
  const [first = [], ...rows] = readTable(file, bytes, detectShape(bytes));
  const header = first.map((name) => name.replace(/^\uFEFF/, "").trim());
  const at = header.findIndex((name) => name.toLowerCase() === key.toLowerCase());
  if (at < 0)
    throw new Refusal(say`${file}, row 1: a class list needs a column "${key}" (there are ${header.join(", ")}).`);
  const seen = new Map<string, number>();
  return rows.flatMap((cells, i) => {
    if (cells.every((cell) => cell.trim() === "")) return [];
    const row = i + 2;
    const trainee = traineeId(cells[at] ?? "");
    if (trainee === "")
      throw new Refusal(say`${file}, row ${row}, column ${at + 1}: the trainee is blank; give a number or a name.`);
    const before = seen.get(trainee);
    if (before)
      throw new Refusal(say`${file}, row ${row}, column ${at + 1}: ${trainee} already stands in row ${before}.`);
    seen.set(trainee, row);
    const beside = Object.fromEntries(header.flatMap((name, c) => (c === at ? [] : [[name, (cells[c] ?? "").trim()]])));
    return [{ trainee, beside }];
  });
}
