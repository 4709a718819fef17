import type { Notebook, Page, Row } from "../model";
import { aboutLine, liveAboutSource, liveSource } from "./delta";

const sameText = (a: Row, b: Row): boolean => a.length === b.length && a.every((text, i) => text === b[i]);

function pageBack(old: Page, wanted: Page): Page {
  const known = new Map(old.rows.map((row) => [row.join("\0"), row]));
  const found = wanted.rows.map((row, i) => {
    const here = old.rows[i];
    if (here && sameText(here, row)) return here;
    const moved = known.get(row.join("\0"));
    return moved && sameText(moved, row) ? moved : row;
  });
  const isSame = found.length === old.rows.length && found.every((row, i) => row === old.rows[i]);
  const rows = isSame ? old.rows : found;
  const source = liveSource(wanted);
  if (isSame && old.name === wanted.name && liveSource(old) === source) return old;
  return {
    id: old.id,
    name: wanted.name,
    file: wanted.file,
    rows,
    ...(source === undefined ? {} : { source: { text: source, rows } }),
  };
}

/**
 * The edit that brings an earlier state back, as one step that can be taken back itself: pages are recognised by
 * their files, and whatever is the same is shared.
 */
export function backTo(wanted: Notebook): (current: Notebook) => Notebook {
  return (current) => {
    const pages = wanted.pages.map((page) => {
      const old = current.pages.find(({ file }) => file === page.file);
      return old ? pageBack(old, page) : page;
    });
    const source = liveAboutSource(wanted);
    const sameAbout = aboutLine(current.about) === aboutLine(wanted.about) && liveAboutSource(current) === source;
    if (sameAbout && pages.length === current.pages.length && pages.every((page, i) => page === current.pages[i])) {
      return current;
    }
    if (sameAbout) return { ...current, pages };
    return {
      about: wanted.about,
      pages,
      ...(source === undefined ? {} : { source: { text: source, about: wanted.about } }),
    };
  };
}
