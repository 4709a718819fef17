// Past 150 lines: choosing, comparing and wording a table of options share its shape.

import type { CellValue } from "../engine/value";
import { sameValue } from "../engine/value";
import type { LiveNotebook } from "../notebook/live";
import { firstOption, optionsOf } from "../notebook/model";
import { rowKind } from "../notebook/rows";
import { type Outcome, outcomeAt, outcomeWords } from "../notebook/verdict";
import { say } from "../words/say";
import { type AgainstBase, againstBase } from "./against-base";
import { cellOf, checkRows, quantityOf, type StudyRow, unitOf } from "./rows";
import { listWords } from "./words";

export interface SideBySideWishes {
  /** Options to show, in this order; all when left out. */
  readonly options?: readonly string[];
  readonly rows: readonly StudyRow[];
  /** The option that the others are compared with; the first shown when left out. */
  readonly base?: string;
  /** Leaves out rows in which all options show the same. */
  readonly hideEqual?: boolean;
  /** A row in which little or much is good, to name the best option that is not ruled out: `Estimate.price_80`. */
  readonly best?: { readonly name: string; readonly is: "least" | "most" };
}

export interface SideCell extends AgainstBase {
  readonly value: CellValue;
  /** Of a check: `holds, 12 % to spare`. */
  readonly verdict: string;
  /** Of a check: it falls short. */
  readonly isShort: boolean;
  /** Of a check: the most to spare among the options; of the row that decides, the best of those not ruled out. */
  readonly isBest: boolean;
}

export interface SideRow extends StudyRow {
  readonly quantity: string;
  readonly unit: string;
  readonly isCheck: boolean;
  readonly cells: readonly SideCell[];
}

export interface SideOption {
  readonly name: string;
  /** Quantities of the checks that fall short. */
  readonly ruledOutBy: readonly string[];
  readonly open: number;
  /** `ruled out by Drop in the conductors`, `all 43 checks hold`, and whether it is the best, in words. */
  readonly words: string;
  readonly isBest: boolean;
}

export interface SideBySide {
  readonly base: string;
  readonly options: readonly SideOption[];
  /** Page by page in the order of the notebook. */
  readonly groups: readonly { readonly page: string; readonly rows: readonly SideRow[] }[];
  /** Rows that are left out because all options show the same. */
  readonly hidden: number;
}

const numberOf = (value: CellValue | undefined): number | undefined =>
  value?.kind === "number" ? value.value : undefined;

/** The places with the greatest number; none when all are the same or there is only one option. */
function greatest(numbers: readonly (number | undefined)[]): ReadonlySet<number> {
  const known = numbers.filter((one) => one !== undefined);
  const most = Math.max(...known);
  if (known.length < 2 || Math.min(...known) === most) return new Set();
  return new Set(numbers.flatMap((one, i) => (one === most ? [i] : [])));
}

function outcomes(live: LiveNotebook, column: number): { quantity: string; outcome: Outcome }[] {
  return checkRows(live.notebook).map((row) => ({
    quantity: quantityOf(row),
    outcome: outcomeAt(live, cellOf(row, column)),
  }));
}

function optionWords(ruledOutBy: readonly string[], open: number, held: number, isBest: boolean): string {
  const count = open === 1 ? say`one check is` : say`${open} checks are`;
  const stillOpen = open === 0 ? "" : say`; ${count} open`;
  if (ruledOutBy.length > 0) return say`ruled out by ${listWords(ruledOutBy)}${stillOpen}`;
  const all = held === 1 ? say`the one check holds` : say`all ${held} checks hold`;
  const holds = open === 0 ? all : `${held === 1 ? say`one check holds` : say`${held} checks hold`}${stillOpen}`;
  return isBest ? say`best: ${holds}` : holds;
}

/** Rows page by page. */
function grouped(rows: readonly SideRow[]): { page: string; rows: SideRow[] }[] {
  const groups = new Map<string, SideRow[]>();
  for (const row of rows) groups.set(row.page.name, [...(groups.get(row.page.name) ?? []), row]);
  return [...groups].map(([page, ofPage]) => ({ page, rows: ofPage }));
}

/**
 * Options beside each other: differences against a base option as value and share, what rules an option out, and
 * the best in words, page by page.
 */
export function sideBySide(live: LiveNotebook, wishes: SideBySideWishes): SideBySide {
  const { notebook } = live;
  const names = wishes.options ?? optionsOf(notebook);
  const columns = names.map((name) => firstOption + optionsOf(notebook).indexOf(name));
  const baseAt = Math.max(0, names.indexOf(wishes.base ?? ""));
  const judged = columns.map((column) => outcomes(live, column));
  const short = judged.map((all) => all.filter(({ outcome }) => outcome.kind === "short").map((one) => one.quantity));
  const bestAt = bestOptions(live, wishes, columns, short);

  const rows = wishes.rows.map((row): SideRow => {
    const isCheck = rowKind(row.page, row.row) === "check";
    const values = columns.map((column) => live.value(cellOf(row, column)));
    const numbers = values.map(numberOf);
    const most = isCheck ? greatest(numbers) : row.name === wishes.best?.name ? bestAt : new Set<number>();
    const cells = values.map(
      (value, i): SideCell => ({
        value,
        ...againstBase(numbers[i], numbers[baseAt], numbers, isCheck),
        isShort: isCheck && numbers[i] !== undefined && (numbers[i] as number) < 0,
        verdict: isCheck ? outcomeWords(outcomeAt(live, cellOf(row, columns[i] ?? 0))) : "",
        isBest: most.has(i),
      }),
    );
    return { ...row, quantity: quantityOf(row), unit: unitOf(row), isCheck, cells };
  });
  const isEqual = ({ cells: [first, ...others] }: SideRow) =>
    first !== undefined && others.every(({ value }) => sameValue(value, first.value));
  const shown = wishes.hideEqual && names.length > 1 ? rows.filter((row) => !isEqual(row)) : rows;
  return {
    base: names[baseAt] ?? "",
    options: names.map((name, i): SideOption => {
      const kinds = (judged[i] ?? []).map(({ outcome }) => outcome.kind);
      const open = kinds.filter((kind) => kind === "open").length;
      const held = kinds.filter((kind) => kind === "holds").length;
      const ruledOutBy = short[i] ?? [];
      const isBest = bestAt.has(i) && ruledOutBy.length === 0;
      return { name, ruledOutBy, open, isBest, words: optionWords(ruledOutBy, open, held, bestAt.has(i)) };
    }),
    groups: grouped(shown),
    hidden: rows.length - shown.length,
  };
}

/** The best of the options that no check rules out, by the row that decides; nobody without such a row. */
function bestOptions(
  live: LiveNotebook,
  { best, rows }: SideBySideWishes,
  columns: readonly number[],
  short: readonly (readonly string[])[],
): ReadonlySet<number> {
  const row = rows.find(({ name }) => name === best?.name);
  if (!best || !row) return new Set();
  const sign = best.is === "least" ? -1 : 1;
  return greatest(
    columns.map((column, i) => {
      const number = numberOf(live.value(cellOf(row, column)));
      return number === undefined || (short[i]?.length ?? 0) > 0 ? undefined : sign * number;
    }),
  );
}
