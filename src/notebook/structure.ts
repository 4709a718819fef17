import { type Corner, mapReferences, type Reference } from "./references";

/** Rows or columns that come or go on one page. */
export interface Cut {
  readonly axis: "row" | "column";
  readonly at: number;
  /** How many come (positive) or go (negative). */
  readonly count: number;
}

/** Where a line ends up, or undefined when it goes. */
function moved(line: number, cut: Cut): number | undefined {
  if (cut.count > 0) return line >= cut.at ? line + cut.count : line;
  if (line < cut.at) return line;
  return line < cut.at - cut.count ? undefined : line + cut.count;
}

/** The span left of from..to, or undefined when all of it goes. */
function movedSpan(from: number, to: number, cut: Cut): readonly [number, number] | undefined {
  if (cut.count > 0) return [from >= cut.at ? from + cut.count : from, to >= cut.at ? to + cut.count : to];
  const end = cut.at - cut.count;
  const start = from < cut.at ? from : from < end ? cut.at : from + cut.count;
  const last = to < cut.at ? to : to < end ? cut.at - 1 : to + cut.count;
  return start > last ? undefined : [start, last];
}

function movedReference(old: Reference, cut: Cut): Reference | undefined {
  const line = (at: Corner) => (cut.axis === "row" ? at.row : at.column);
  const put = (at: Corner, to: number): Corner => ({ ...at, [cut.axis]: to });
  const from = line(old.from);
  const to = old.to && line(old.to);
  if (from === undefined) return old;
  if (!old.to || to === undefined) {
    const next = moved(from, cut);
    if (next === undefined) return undefined;
    return next === from ? old : { ...old, from: put(old.from, next) };
  }
  const span = movedSpan(Math.min(from, to), Math.max(from, to), cut);
  if (!span) return undefined;
  const [low, high] = from <= to ? span : [span[1], span[0]];
  return low === from && high === to ? old : { ...old, from: put(old.from, low), to: put(old.to, high) };
}

const sameName = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();

/**
 * The formula after rows or columns came or went on a page.
 *
 * @param home the page on which the formula stands.
 * @param page the page that is cut.
 */
export function cutFormula(formula: string, home: string, page: string, cut: Cut): string {
  return mapReferences(formula, (old) => (sameName(old.page ?? home, page) ? movedReference(old, cut) : old));
}

/** The formula after a page was given another name. */
export function renamePageIn(formula: string, from: string, to: string): string {
  return mapReferences(formula, (old) =>
    old.page !== undefined && sameName(old.page, from) ? { ...old, page: to } : old,
  );
}

/** The formula after a page is gone. */
export function dropPageIn(formula: string, page: string): string {
  return mapReferences(formula, (old) => (old.page !== undefined && sameName(old.page, page) ? undefined : old));
}
