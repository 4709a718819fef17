import { checkNote } from "./limits";
import type { Notebook } from "./model";

/** Writes a page's note (Markdown); an empty one is removed. */
export function setNote(notebook: Notebook, page: string, note: string): Notebook {
  const { [page]: old, ...rest } = notebook.about.notes ?? {};
  if ((old ?? "") === note) return notebook;
  checkNote(page, note);
  const notes = note === "" ? rest : { ...notebook.about.notes, [page]: note };
  return { ...notebook, about: { ...notebook.about, notes } };
}
