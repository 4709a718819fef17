import { say } from "../words/say";
import { lead, type Notebook, type Page } from "./model";
import { columnName, pagePrefix, referencesOf } from "./references";
import { Refusal } from "./refusal";

/** The line before which the rows go: the row's own, or the page's end where a range would take them in. */
export function placeFor(notebook: Notebook, page: Page, row: number, isFilled: boolean): number {
  let place = row;
  for (const home of notebook.pages) {
    for (const [r, cells] of home.rows.entries()) {
      for (const [column, text] of cells.entries()) {
        if (!text.startsWith("=") || !text.includes(":")) continue;
        // Counting what is blank does not see rows that are filled.
        const read = isFilled ? text.replace(/COUNTBLANK\([^()"]*\)/gi, "") : text;
        for (const { page: name, from, to } of referencesOf(read)) {
          if (!to || (name ?? home.name).toLowerCase() !== page.name.toLowerCase()) continue;
          if (from.row === undefined || to.row === undefined) {
            throw new Refusal(
              say`${pagePrefix(home.name)}${columnName(column)}${r + 1} reads whole columns of ${page.name}, new rows would count in it; name its rows, then unfold.`,
            );
          }
          if (Math.min(from.row, to.row) < row && row <= Math.max(from.row, to.row)) place = page.rows.length;
        }
      }
    }
  }
  return place;
}

/** Keys of their own for new rows: `drop_R`, with a number behind it where that is taken. */
export function keysFor(page: Page, stem: string, names: readonly string[]): string[] {
  const taken = new Set(page.rows.map((cells) => cells[lead.key] ?? ""));
  return names.map((name) => {
    // `limits 1` is `drop_limits`, `limits 2` is `drop_limits_2`.
    const first = `${stem}_${name.replace(/ 1$/, "").replace(/[^\p{L}\p{N}_]+/gu, "_")}`;
    let key = first;
    for (let n = 2; taken.has(key); n++) key = `${first}_${n}`;
    taken.add(key);
    return key;
  });
}
