import type { AnyDefinition } from "../formula/definition";
import { sourceLine } from "../formula/source";
import { choicesOf } from "../formula/steps/pick";
import type { Table } from "../formula/table";
import type { Row } from "./model";

/** The tables that named functions read, each once, in the order in which they are used. */
export function tablesOf(catalogue: readonly AnyDefinition[]): readonly Table[] {
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

function tableRows(table: Table, users: readonly string[]): string[][] {
  const columns = Object.values(table.columns);
  const weaker = columns.flatMap(({ about, source }) => (source ? [[`${about}: ${sourceLine(source)}`]] : []));
  return [
    [table.title],
    [sourceLine(table.source)],
    ...weaker,
    [`used by ${users.join(", ")}`],
    [withUnit(table.key.about, table.key.unit), ...columns.map(({ about, unit }) => withUnit(about, unit))],
    ...table.rows.map((row) =>
      row.map((cell) =>
        cell === null ? "" : typeof cell === "string" && /^\d+$/.test(cell) ? `'${cell}` : String(cell),
      ),
    ),
    [],
  ];
}

/** The page Tables: the published tables in readable form, each with its source and the functions that read it. */
export function tablesRows(catalogue: readonly AnyDefinition[]): Row[] {
  const rows = tablesOf(catalogue).flatMap((table) =>
    tableRows(
      table,
      catalogue.filter((definition) => tablesOf([definition]).includes(table)).map(({ name }) => name),
    ),
  );
  const width = Math.max(...rows.map((row) => row.length));
  return rows.slice(0, -1).map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ""));
}
