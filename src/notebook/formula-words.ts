import type { Parsed, ParsedCell } from "../engine/parsed";
import type { CellValue } from "../engine/value";
import { withDecimalSign } from "../words/decimal-sign";
import { nameOnPage } from "./cell-name";
import { displayNumber } from "./display";
import { type FormulaStyle, formulaText, readerOperator } from "./formula-text";
import type { LiveNotebook } from "./live";
import { columnsOf, type Notebook, type Page, type Position } from "./model";
import { columnName, pagePrefix } from "./references";
import { argumentSign } from "./typed-formula";

/** More cells of a range than this are not listed one by one. */
const mostListed = 8;

/** A name that could be read as more than one thing beside commas and operators stands in quotation marks. */
const quoted = (name: string): string => (/[,()+*/^<>=&"-]/.test(name) ? `“${name}”` : name);

/** The cells of a range that exist on its page. */
export function cellsIn(notebook: Notebook, from: ParsedCell, to: ParsedCell): Position[] {
  const page = notebook.pages[from.sheet];
  if (!page) return [];
  const cells: Position[] = [];
  for (let row = Math.min(from.row, to.row); row <= Math.min(Math.max(from.row, to.row), page.rows.length - 1); row++) {
    const last = Math.min(Math.max(from.column, to.column), columnsOf(page) - 1);
    for (let column = Math.min(from.column, to.column); column <= last; column++) {
      cells.push({ page: page.id, row, column });
    }
  }
  return cells;
}

/** The engine's own way of writing, with every reference named in full; reads back as the same tree. */
const cellStyle = (notebook: Notebook): FormulaStyle => {
  const corner = ({ row, column }: ParsedCell) => `${columnName(column)}${row + 1}`;
  const prefix = ({ sheet }: ParsedCell) => pagePrefix(notebook.pages[sheet]?.name ?? "");
  return {
    reference: (at) => prefix(at) + corner(at),
    range: (from, to) => `${prefix(from)}${corner(from)}:${corner(to)}`,
    number: String,
    operator: (op) => op,
    minus: "-",
    comma: ",",
  };
};

/** A part of a formula as a formula of its own, without `=`. */
export const cellFormula = (notebook: Notebook, parsed: Parsed): string => formulaText(parsed, cellStyle(notebook));

/**
 * A formula in the names of quantities, as seen from its own cell: another page is named before the quantity,
 * another option behind it.
 */
export function namedFormula(notebook: Notebook, home: Position, parsed: Parsed): string {
  const name = (at: ParsedCell): string => {
    const page = notebook.pages[at.sheet] as Page;
    const { quantity, option, cell } = nameOnPage(page, at.row, at.column);
    if (!quantity || !option) return cell;
    const other = at.column === home.column ? "" : ` @${option}`;
    return `${page.id === home.page ? "" : `${page.name}: `}${quoted(quantity)}${other}`;
  };
  return formulaText(parsed, {
    reference: name,
    range: (from, to) => `${name(from)} … ${name(to)}`,
    number: (value) => withDecimalSign(String(value)),
    operator: readerOperator,
    minus: "−",
    comma: `${argumentSign()} `,
  });
}

/** A value as it stands in a formula with the numbers put in. */
function valueWord(value: CellValue): string {
  switch (value.kind) {
    case "blank":
      return "blank";
    case "number":
      return value.value < 0 ? `(−${displayNumber(-value.value)})` : displayNumber(value.value);
    case "text":
      return `"${value.text}"`;
    case "flag":
      return value.value ? "TRUE" : "FALSE";
    case "error":
      return value.code;
  }
}

/** A formula with the values of its cells put in. */
export function valuedFormula(live: LiveNotebook, parsed: Parsed): string {
  const { notebook } = live;
  const word = (at: Position) => valueWord(live.value(at));
  return formulaText(parsed, {
    reference: (at) => word({ page: notebook.pages[at.sheet]?.id ?? "", row: at.row, column: at.column }),
    range: (from, to) => {
      const cells = cellsIn(notebook, from, to);
      const listed = cells.slice(0, cells.length > mostListed ? mostListed - 1 : mostListed).map(word);
      const last = cells.length > mostListed ? [`… ${word(cells.at(-1) as Position)}`] : [];
      return `{${[...listed, ...last].join(`${argumentSign()} `)}}`;
    },
    number: (value) => withDecimalSign(String(value)),
    operator: readerOperator,
    minus: "−",
    comma: `${argumentSign()} `,
  });
}
