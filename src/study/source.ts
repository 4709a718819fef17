import { Engine } from "../engine/engine";
import { LiveNotebook } from "../notebook/live";
import type { Notebook } from "../notebook/model";
import { textAt } from "../notebook/model";
import { ownCalls } from "../notebook/own/own-functions";
import type { FormulaSource } from "./kernel/chain";
import { onlyNeeded } from "./needed";
import { cellOf, type StudyRow } from "./rows";

/** Reads formulas one by one and calculates none of them; right as long as nothing spills. */
function readOnly(notebook: Notebook): FormulaSource {
  const engine = new Engine(
    notebook.pages.map(({ name }) => ({ name, rows: [] })),
    ownCalls(notebook),
  );
  const sheets = new Map(notebook.pages.map(({ id }, sheet) => [id, sheet]));
  return {
    notebook,
    parsed: ({ page, row, column }) => {
      const sheet = sheets.get(page) ?? 0;
      const from = notebook.pages[sheet];
      return from && engine.parse(textAt(from, row, column), sheet);
    },
    isSpilled: () => false,
  };
}

/**
 * What a study of some rows of one option reads its formulas from, when there is no open notebook: as little as will
 * do. An engine calculates the cells only where a result might spill into one that is looked at.
 */
export function sourceFor(notebook: Notebook, column: number, rows: readonly StudyRow[]): FormulaSource {
  const needed = onlyNeeded(
    notebook,
    rows.map((row) => cellOf(row, column)),
  );
  return needed.couldSpill ? new LiveNotebook(needed.notebook) : readOnly(needed.notebook);
}
