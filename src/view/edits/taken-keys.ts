import type { CellText } from "../../notebook/edit-cells";
import { isOptionPage, lead, type Page } from "../../notebook/model";
import { say } from "../../words/say";

/**
 * A key names one row of its page: copies of it are written without.
 *
 * @returns the texts, and the keys that were left out.
 */
export function withoutTakenKeys(page: Page, texts: readonly CellText[]): { texts: CellText[]; taken: string[] } {
  if (!isOptionPage(page)) return { texts: [...texts], taken: [] };
  const overwritten = new Set(texts.filter(({ column }) => column === lead.key).map(({ row }) => row));
  const keys = new Set(page.rows.flatMap((cells, row) => (row > 0 && !overwritten.has(row) && cells[lead.key]) || []));
  const taken: string[] = [];
  const kept = texts.map((cell) => {
    if (cell.column !== lead.key || cell.text === "") return cell;
    if (!keys.has(cell.text)) {
      keys.add(cell.text);
      return cell;
    }
    taken.push(cell.text);
    return { ...cell, text: "" };
  });
  return { texts: kept, taken };
}

/** What to say when keys were left out. */
export const takenSentence = (taken: readonly string[]): string =>
  taken.length === 0
    ? ""
    : say`Left without a key, because a key names one row of its page: ${[...new Set(taken)].join(", ")}. Give the new rows keys of their own.`;
