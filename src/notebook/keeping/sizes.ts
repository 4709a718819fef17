import type { NotebookRecord } from "./database";
import type { Entry } from "./journal";
import type { Snapshot } from "./snapshot";

/** Characters of a snapshot, close to the room that it takes. */
export const snapshotSize = ({ about, aboutSource = "", pages }: Snapshot): number =>
  pages.reduce(
    (sum, { rows, source = "" }) =>
      sum + source.length + rows.reduce((of, row) => of + row.reduce((n, text) => n + text.length + 4, 0), 0),
    about.length + aboutSource.length,
  );

export const entriesSize = (entries: readonly Entry[]): number =>
  entries.reduce((sum, entry) => sum + JSON.stringify(entry).length, 0);

export const recordSize = ({ sizes, versions }: NotebookRecord): number =>
  sizes.base + sizes.check + sizes.journal + versions.reduce((sum, { size }) => sum + size, 0);
