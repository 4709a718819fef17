import { readFolder } from "../../src/cli/folder";
import { isFormula } from "../../src/engine/content";
import type { Notebook, Position } from "../../src/notebook/model";

/** The folders of the worked notebooks. */
export const workedFolders = ["sheets/three-hulls", "sheets/one-hull-three-layouts"] as const;

export const worked = (folder: string): Notebook => readFolder(folder);

/** Every cell of a notebook that holds a formula. */
export const formulaCells = (notebook: Notebook): Position[] =>
  notebook.pages.flatMap((page) =>
    page.rows.flatMap((cells, row) =>
      cells.flatMap((text, column) => (isFormula(text) ? [{ page: page.id, row, column }] : [])),
    ),
  );
