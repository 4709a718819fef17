// Past 150 lines: the three kinds of step that read tables, so that they read alike.
import { said, say } from "../../words/say";
import { mathName, mathRow, mathWords } from "../math-element";
import { mathExpression } from "../mathml";
import { numberText } from "../number-text";
import { readExpression } from "../read";
import { readerText } from "../reader-text";
import type { Source } from "../source";
import type { Between } from "../steps/between";
import type { First } from "../steps/first";
import type { Lookup } from "../steps/lookup";
import { choicesOf, columnNames, type Pick } from "../steps/pick";
import { symbolText } from "../symbol-name";
import { columnAt, type Table } from "../table";
import type { Explain } from "./kinds";
import type { Standing } from "./standing";

/** The one of several that the call picks; the only one where there is no choice; undefined before the call. */
function picked<T>(pick: Pick<T>, after: Standing | undefined): T | undefined {
  if (typeof pick !== "object" || pick === null || !("by" in pick)) return pick as T;
  return after && pick.of[String(after.value(pick.by))];
}

const pickedBy = <T>(pick: Pick<T>): string =>
  typeof pick === "object" && pick !== null && "by" in pick ? say`, by ${symbolText(String(pick.by))}` : "";

const unitWord = (unit: string | undefined): string => (unit === undefined || unit === "1" ? "" : ` ${unit}`);

const cellWords = (cell: string | number | null | undefined): string =>
  typeof cell === "number" ? numberText(cell) : String(cell);

/** Where a number of a table comes from: its row's or its column's own source, or that of the table. */
function sourceIn(table: Table, row: string | number | undefined, column: string): Source {
  return (row !== undefined && table.rowSources?.[String(row)]) || table.columns[column]?.source || table.source;
}

export const sayLookup: Explain<Lookup> = (step, after) => {
  const { table } = step;
  const column = picked(step.column, after);
  const where = `${said(table.title)}${pickedBy(step.column)}`;
  const key = after?.value(step.key);
  const about = column === undefined ? "" : said(table.columns[column]?.about ?? column);
  const value = after?.value(step.symbol);
  const keyText = `${String(key)}${unitWord(table.key.unit)}`;
  return {
    symbols: {
      text: `${say`${where}, at`} ${symbolText(step.key)}`,
      markup: mathRow(mathWords(`${say`${where}, at`}\u00A0`), mathName(step.key)),
    },
    numbers: after && {
      text: `${say`${said(table.title)}, at`} ${keyText}`,
      markup: mathWords(`${say`${said(table.title)}, at`} ${keyText}`),
    },
    words:
      typeof value === "number"
        ? say`read at ${said(table.key.about)} ${keyText}, column "${about}": ${numberText(value)}${unitWord(step.unit)}`
        : "",
    source: sourceIn(table, typeof key === "object" || typeof key === "boolean" ? undefined : key, column ?? ""),
  };
};

/** A condition with the numbers of one row of the table put in. */
const atRow = (step: First, table: Table, row: Table["rows"][number], after: Standing): string =>
  readerText(
    after
      .with(Object.fromEntries(columnNames(table).map((name, i) => [name, row[i] as number | string])))
      .put(step.where),
  );

function firstWords(step: First, table: Table, after: Standing): string {
  const rows = step.from === "end" ? [...table.rows].reverse() : table.rows;
  const take = columnAt(table, step.take);
  const value = after.value(step.symbol);
  const hit = rows.findIndex((row) =>
    after
      .with(Object.fromEntries(columnNames(table).map((name, i) => [name, row[i] as number | string])))
      .holds(step.where),
  );
  const end = step.from === "end" ? say`large` : say`small`;
  if (hit < 0) return say`none of ${rows.length} rows, from the ${end} end, satisfies it`;
  const found = rows[hit] as Table["rows"][number];
  const before = hit > 0 ? (rows[hit - 1] as Table["rows"][number]) : undefined;
  const passed = before
    ? say`${hit} of ${rows.length} rows passed over from the ${end} end, the last of them ${cellWords(before[take])} (${atRow(step, table, before, after)} does not hold); `
    : say`the first of ${rows.length} rows from the ${end} end; `;
  return say`${passed}${cellWords(value as string | number)} satisfies it: ${atRow(step, table, found, after)}`;
}

export const sayFirst: Explain<First> = (step, after) => {
  const table = picked(step.table, after);
  const known = table ?? (choicesOf(step.table)[0] as Table);
  const locals = columnNames(known);
  const start = say`first ${symbolText(step.take)} of ${table ? said(table.title) : say`the table`}${pickedBy(step.table)}, from the ${step.from === "end" ? say`large` : say`small`} end, with`;
  const condition = readExpression(step.where);
  const put = after?.put(step.where, locals);
  return {
    symbols: {
      text: `${start} ${readerText(condition)}`,
      markup: mathRow(mathWords(`${start}\u00A0`), mathExpression(condition)),
    },
    numbers: put && {
      text: `${start} ${readerText(put)}`,
      markup: mathRow(mathWords(`${start}\u00A0`), mathExpression(put)),
    },
    words: after && table ? firstWords(step, table, after) : "",
    source: known.source,
  };
};

function betweenWords(xs: readonly number[], ys: readonly number[], x: number): string {
  const last = xs.length - 1;
  if (x > (xs[last] as number)) {
    return say`${numberText(x)} is past the last point (${numberText(xs[last] as number)}), whose value is held`;
  }
  let i = 0;
  while (i < last - 1 && x >= (xs[i + 1] as number)) i++;
  const point = (k: number) => `${numberText(xs[k] as number)} (${numberText(ys[k] as number)})`;
  return say`straight line between the points ${point(i)} and ${point(i + 1)}`;
}

function pointsAt(step: Between, after: Standing): readonly [readonly number[], readonly number[]] {
  const { points } = step;
  if (!("table" in points)) {
    return [after.value(points.xs) as readonly number[], after.value(points.ys) as readonly number[]];
  }
  const column = columnAt(points.table, points.column);
  return [points.table.rows.map((row) => row[0] as number), points.table.rows.map((row) => row[column] as number)];
}

export const sayBetween: Explain<Between> = (step, after) => {
  const { points } = step;
  const where =
    "table" in points
      ? said(points.table.title)
      : say`the points of ${symbolText(points.xs)} and ${symbolText(points.ys)}`;
  const at = readExpression(step.at);
  const put = after?.put(step.at);
  const value = after?.value(step.symbol);
  return {
    symbols: {
      text: `${say`${where}, read at`} ${readerText(at)}`,
      markup: mathRow(mathWords(`${say`${where}, read at`}\u00A0`), mathExpression(at)),
    },
    numbers: put && {
      text: `${say`${where}, read at`} ${readerText(put)}`,
      markup: mathRow(mathWords(`${say`${where}, read at`}\u00A0`), mathExpression(put)),
    },
    words:
      after && typeof value === "number"
        ? `${betweenWords(...pointsAt(step, after), after.number(step.at))}: ${numberText(value)}`
        : "",
    source: "table" in points ? sourceIn(points.table, undefined, points.column) : undefined,
  };
};
