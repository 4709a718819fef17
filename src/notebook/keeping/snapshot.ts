import type { About } from "../about";
import { type Notebook, newPageId, type Row } from "../model";
import { aboutLine, liveAboutSource, liveSource } from "./delta";

/** A whole notebook as plain data. The sources are the bytes of files that have not been changed since they were read. */
export interface Snapshot {
  readonly about: string;
  readonly aboutSource?: string;
  readonly pages: readonly {
    readonly name: string;
    readonly file: string;
    readonly rows: readonly Row[];
    readonly source?: string;
  }[];
}

export function snapshotOf(notebook: Notebook): Snapshot {
  const aboutSource = liveAboutSource(notebook);
  return {
    about: aboutLine(notebook.about),
    ...(aboutSource === undefined ? {} : { aboutSource }),
    pages: notebook.pages.map((page) => {
      const source = liveSource(page);
      return { name: page.name, file: page.file, rows: page.rows, ...(source === undefined ? {} : { source }) };
    }),
  };
}

/** The notebook of a snapshot; its pages get ids of their own. */
export function notebookOf(snapshot: Snapshot): Notebook {
  const about = JSON.parse(snapshot.about) as About;
  return {
    about,
    pages: snapshot.pages.map(({ name, file, rows, source }) => ({
      id: newPageId(),
      name,
      file,
      rows,
      ...(source === undefined ? {} : { source: { text: source, rows } }),
    })),
    ...(snapshot.aboutSource === undefined ? {} : { source: { text: snapshot.aboutSource, about } }),
  };
}
