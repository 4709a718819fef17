import type { AnyDefinition } from "../formula/definition";
import { sourceLine } from "../formula/source";
import { choicesOf } from "../formula/steps/pick";
import type { Table } from "../formula/table";
import { tablesToRead } from "../tables/to-read";
import type { Row } from "./model";

/** The tables that named functions read, each once, in the order in which they are used. */
function tablesOf(catalogue: readonly AnyDefinition[]): readonly Table[] {
  const tables = catalogue.flatMap(({ steps }) =>
    steps.flatMap((step): readonly Table[] => {
      if (step.kind === "lookup") return [step.table];
      if (step.kind === "first") return choicesOf(step.table);
      return step.kind === "between" && "table" in step.points ? [step.points.table] : [];
    }),
  );
  return [...new Set(tables)];
}

const withUnit = (name: string, unit: string | undefined): string =>
  unit === undefined || unit === "1" ? name : `${name} (${unit})`;

/** A key is a name even where it looks like a number. */
const cellText = (cell: string | number | null): string =>
  cell === null ? "" : typeof cell === "string" ? (/^[\d='+-]/.test(cell) ? `'${cell}` : cell) : String(cell);

/** Where single rows rest on another text than the table, they say so at their end. */
function rowSource(table: Table, key: string | number): readonly string[] {
  const source = table.rowSources?.[String(key)];
  return source ? [sourceLine(source)] : [];
}

function tableRows(table: Table, users: readonly string[]): string[][] {
  const columns = Object.values(table.columns);
  const weaker = columns.flatMap(({ about, source }) => (source ? [[`${about}: ${sourceLine(source)}`]] : []));
  return [
    [table.title],
    [sourceLine(table.source)],
    ...weaker,
    [users.length > 0 ? `used by ${users.join(", ")}` : "for reading: inputs are picked from it"],
    [withUnit(table.key.about, table.key.unit), ...columns.map(({ about, unit }) => withUnit(about, unit))],
    ...table.rows.map((row) => [...row.map(cellText), ...rowSource(table, row[0])]),
    [],
  ];
}

/** The page Tables: the published tables in readable form, each with its source and the functions that read it. */
export function tablesRows(catalogue: readonly AnyDefinition[]): Row[] {
  const rows = [...tablesOf(catalogue), ...tablesToRead].flatMap((table) =>
    tableRows(
      table,
      catalogue.filter((definition) => tablesOf([definition]).includes(table)).map(({ name }) => name),
    ),
  );
  const width = Math.max(...rows.map((row) => row.length));
  return rows.slice(0, -1).map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ""));
}
