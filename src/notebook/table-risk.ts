import { isFormula } from "../engine/content";
import { lead, type Row } from "./model";

/** What taking a table in place of a page would break without a word. */
export interface TableRisk {
  /** Formulas of the file that would come as texts, where the page calculates. */
  readonly texts: number;
  /** The first row that is known by its key and would stand elsewhere, counted from 1. */
  readonly moved?: { readonly key: string; readonly from: number; readonly to: number };
}

const isFormulaAsText = (text: string): boolean => text.startsWith("'=");

/** @param isKeyed whether rows have keys, as on an option page. */
export function tableRisk(before: readonly Row[], after: readonly Row[], isKeyed: boolean): TableRisk {
  const calculates = before.some((row) => row.some(isFormula));
  const texts = calculates ? after.flat().filter(isFormulaAsText).length : 0;
  if (!isKeyed || !calculates) return { texts };
  const places = new Map(before.map((row, i) => [row[lead.key] ?? "", i]));
  for (const [to, row] of after.entries()) {
    const key = row[lead.key] ?? "";
    const from = key === "" ? undefined : places.get(key);
    if (from !== undefined && from !== to) return { texts, moved: { key, from: from + 1, to: to + 1 } };
  }
  return { texts };
}
