import { say } from "../../words/say";
import type { About } from "../about";
import { type Notebook, newPageId, type Page } from "../model";
import { type RowsPiece, rowsAfter, rowsDelta } from "./rows-delta";
import { type Splice, splicedText, textSplice } from "./splice";

/**
 * One page after a change: the number of an old page that stayed as it was, or what became of one; without `from`
 * the page is new. `source` is given where the bytes of its file are to be kept, or (null) no longer.
 */
export type PageDelta =
  | number
  | {
      readonly from?: number;
      readonly name?: string;
      readonly file?: string;
      readonly rows?: readonly RowsPiece[];
      readonly source?: string | null;
    };

/** How one notebook became another, as plain data: changed rows, and the rest by number. */
export interface Delta {
  /** Of notebook.json as one line. */
  readonly about?: Splice<string>;
  readonly aboutSource?: string | null;
  /** All pages in their new order; left out when every page stayed as and where it was. */
  readonly pages?: readonly PageDelta[];
}

const printed = new WeakMap<About, string>();

/** notebook.json as one line, the form in which its changes are told. */
export function aboutLine(about: About): string {
  const known = printed.get(about);
  if (known !== undefined) return known;
  const line = JSON.stringify(about);
  printed.set(about, line);
  return line;
}

/** The bytes that saving would give back, as long as the page is what they held. */
export const liveSource = (page: Page): string | undefined =>
  page.source?.rows === page.rows ? page.source.text : undefined;

export const liveAboutSource = ({ about, source }: Notebook): string | undefined =>
  source?.about === about ? source.text : undefined;

/** The entry for a source that will not come about by itself. */
const told = (wanted: string | undefined, expected: string | undefined): { readonly source?: string | null } =>
  wanted === expected ? {} : { source: wanted ?? null };

function pageDelta(before: Notebook, page: Page): PageDelta {
  const from = before.pages.findIndex((one) => one.id === page.id);
  const old = before.pages[from];
  if (old === page) return from;
  if (!old) {
    return { name: page.name, file: page.file, rows: rowsDelta([], page.rows), ...told(liveSource(page), undefined) };
  }
  return {
    from,
    ...(old.name === page.name ? {} : { name: page.name }),
    ...(old.file === page.file ? {} : { file: page.file }),
    ...(old.rows === page.rows ? {} : { rows: rowsDelta(old.rows, page.rows) }),
    ...told(liveSource(page), old.rows === page.rows ? liveSource(old) : undefined),
  };
}

/** What has to be kept so that `deltaApplied` makes the second notebook of the first. */
export function deltaOf(before: Notebook, after: Notebook): Delta {
  const samePages =
    before.pages.length === after.pages.length && before.pages.every((page, i) => page === after.pages[i]);
  const sameAbout = before.about === after.about;
  const { source } = told(liveAboutSource(after), sameAbout ? liveAboutSource(before) : undefined);
  return {
    ...(sameAbout ? {} : { about: textSplice(aboutLine(before.about), aboutLine(after.about)) }),
    ...(source === undefined ? {} : { aboutSource: source }),
    ...(samePages ? {} : { pages: after.pages.map((page) => pageDelta(before, page)) }),
  };
}

function pageAfter(before: Notebook, delta: PageDelta): Page {
  const from = typeof delta === "number" ? delta : delta.from;
  const old = from === undefined ? undefined : before.pages[from];
  if (from !== undefined && !old) throw new Error(say`page ${from} is not there`);
  if (typeof delta === "number") return old as Page;
  const rows = delta.rows ? rowsAfter(old?.rows ?? [], delta.rows) : (old?.rows ?? []);
  const { source: oldSource, ...rest } = old ?? { id: newPageId(), name: "", file: "" };
  const source =
    delta.source === undefined ? oldSource : delta.source === null ? undefined : { text: delta.source, rows };
  return { ...rest, name: delta.name ?? rest.name, file: delta.file ?? rest.file, rows, ...(source && { source }) };
}

/** @throws Error when the delta belongs to another notebook. */
export function deltaApplied(before: Notebook, delta: Delta): Notebook {
  const about = delta.about ? (JSON.parse(splicedText(aboutLine(before.about), delta.about)) as About) : before.about;
  const source =
    delta.aboutSource === undefined
      ? before.source
      : delta.aboutSource === null
        ? undefined
        : { text: delta.aboutSource, about };
  const pages = delta.pages ? delta.pages.map((page) => pageAfter(before, page)) : before.pages;
  return { about, pages, ...(source && { source }) };
}
