/** One end of a reference: column and row from 0, `undefined` where a whole row or column is meant. */
export interface Corner {
  readonly column: number | undefined;
  readonly row: number | undefined;
  readonly fixedColumn: boolean;
  readonly fixedRow: boolean;
}

/** A reference in a formula: one cell, a block, whole columns or whole rows. */
export interface Reference {
  /** The page it names, or undefined for the formula's own page. */
  readonly page: string | undefined;
  readonly from: Corner;
  readonly to: Corner | undefined;
}

const lost = "#REF!";

const text = `"(?:[^"]|"")*"`;
const page = `(?:'((?:[^']|'')+)'|([\\p{L}_][\\p{L}\\p{N}_]*))!`;
const cell = "\\$?[A-Za-z]{1,3}\\$?[1-9]\\d*";
const columns = "\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3}";
const rows = "\\$?[1-9]\\d*:\\$?[1-9]\\d*";
// What follows must not make a longer word or a function's name of it; what precedes is tested in the loop.
const end = "(?![\\p{L}\\p{N}_.]|\\s*\\()";
const pattern = new RegExp(
  `${text}|(?:${page})?(?:(${cell})(?::(${cell}))?|(${columns})|(${rows}))${end}|[\\p{L}\\p{N}_.$]+`,
  "gu",
);

export const columnName = (column: number): string => {
  let name = "";
  for (let n = column; n >= 0; n = Math.floor(n / 26) - 1) name = String.fromCharCode(65 + (n % 26)) + name;
  return name;
};

const columnNumber = (name: string): number =>
  [...name.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

function corner(written: string): Corner {
  const parts = /^(\$?)([A-Za-z]*)(\$?)(\d*)$/.exec(written);
  const [, first = "", letters = "", second = "", digits = ""] = parts ?? [];
  return {
    column: letters ? columnNumber(letters) : undefined,
    row: digits ? Number(digits) - 1 : undefined,
    fixedColumn: letters !== "" && first === "$",
    fixedRow: letters === "" ? first === "$" : second === "$",
  };
}

function cornerText(at: Corner): string {
  const column = at.column === undefined ? "" : `${at.fixedColumn ? "$" : ""}${columnName(at.column)}`;
  const row = at.row === undefined ? "" : `${at.fixedRow ? "$" : ""}${at.row + 1}`;
  return column + row;
}

/** A page's name as a formula writes it; the engine reads other letters than Latin ones in quotation marks alone. */
export const pagePrefix = (name: string): string =>
  /^(?!\d)[\w\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u02AF]+$/.test(name) ? `${name}!` : `'${name.replaceAll("'", "''")}'!`;

function referenceText(reference: Reference): string {
  const prefix = reference.page === undefined ? "" : pagePrefix(reference.page);
  const to = reference.to ? `:${cornerText(reference.to)}` : "";
  return `${prefix}${cornerText(reference.from)}${to}`;
}

function reference(found: RegExpExecArray): Reference | undefined {
  const [, quoted, plain, single, last, wholeColumns, wholeRows] = found;
  const name = quoted?.replaceAll("''", "'") ?? plain;
  const block = wholeColumns ?? wholeRows;
  if (block !== undefined) {
    const [from = "", to = ""] = block.split(":");
    return { page: name, from: corner(from), to: corner(to) };
  }
  if (single === undefined) return undefined;
  return { page: name, from: corner(single), to: last === undefined ? undefined : corner(last) };
}

/**
 * Rewrites the references of a formula and leaves every other character as it was typed.
 *
 * @param change gives the new reference, the same one to leave the text alone, or undefined when it is lost.
 */
export function mapReferences(formula: string, change: (reference: Reference) => Reference | undefined): string {
  return formula.replace(pattern, (...parts) => {
    const whole = String(parts[0]);
    const found = parts.slice(0, 7) as unknown as RegExpExecArray;
    const old = whole.startsWith('"') ? undefined : reference(found);
    if (!old) return whole;
    const next = change(old);
    if (next === old) return whole;
    return next ? referenceText(next) : lost;
  });
}

/** The references of a formula in the order in which they stand. */
export function referencesOf(formula: string): Reference[] {
  const found: Reference[] = [];
  mapReferences(formula, (one) => {
    found.push(one);
    return one;
  });
  return found;
}

/** The formula as it would read after being copied by so many rows and columns. */
export function shiftFormula(formula: string, rows: number, columns: number): string {
  const shift = (at: Corner): Corner => ({
    ...at,
    column: at.column === undefined || at.fixedColumn ? at.column : at.column + columns,
    row: at.row === undefined || at.fixedRow ? at.row : at.row + rows,
  });
  const inside = (at: Corner) => (at.column ?? 0) >= 0 && (at.row ?? 0) >= 0;
  return mapReferences(formula, (old) => {
    const from = shift(old.from);
    const to = old.to && shift(old.to);
    return inside(from) && (!to || inside(to)) ? { ...old, from, to } : undefined;
  });
}
