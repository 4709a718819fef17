import type { About } from "../../src/notebook/about";
import { leadColumns, type Notebook, type Page, type Row } from "../../src/notebook/model";
import { functionColumns } from "../../src/notebook/own/function-page";
import { packNotebook } from "../../src/notebook/zip";
import { hostile } from "../hostile/strings";

/** As much as the name of a page, an option or a notebook may have. */
const asName = (text: string): string => text.slice(0, 200);

/** What can be a name: each once, whatever its case. */
export const names: readonly string[] = [
  ...new Map(hostile.map((text) => [asName(text).toLowerCase(), asName(text)])).values(),
];

const quoted = (text: string): string => `="${text.replaceAll('"', '""')}"`;
const fields = (rows: readonly Row[]): readonly Row[] => {
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ""));
};
const pageOf = (name: string, file: string, rows: readonly Row[]): Page => ({
  id: file,
  name,
  file,
  rows: fields(rows),
});

/** Every text as quantity, key, unit, basis, value and result; checks that fall short and stand open under names of theirs. */
const cells = (): readonly Row[] => [
  [...leadColumns, ...names],
  ...hostile.map((text, i) => [text, text, text, text, text, quoted(text), `=E${i + 2}`, `=F${i + 2}&G${i + 2}`]),
  ...hostile
    .slice(0, 12)
    .map((text) => [text, `check ${text}`, "margin", text, ...names.map((_, i) => (i % 3 ? "=-0.1" : ""))]),
  ...hostile.map((text) => [text]),
];

const free = (): readonly Row[] =>
  hostile.map((text, i) => [text, quoted(text), `=A${i + 1}`, `=A${i + 1}&"x"`, i === 0 ? text : ""]);

/** Functions of the notebook's own with every text as title, argument, reason, limit of use, caution and source. */
function functions(): readonly Row[] {
  const at = (i: number): string => hostile[i % hostile.length] as string;
  const rows = Array.from({ length: 12 }, (_, i) => [
    ["function", `YARD.HURT${i}`, "", "", "", at(7 * i), at(7 * i + 1)],
    ["argument", "length", "", "m", "0 to 100", at(7 * i + 2)],
    ["constant", "share", "1.2", "1", "", at(7 * i + 3), at(7 * i + 4)],
    ["result", "L", "length * share", "m", "", at(7 * i + 5)],
    ["valid", "", "", "", "", at(7 * i + 6)],
    ["caution", "", "", "", "", at(7 * i + 1)],
    ["source", "", "", "", "", "", at(7 * i + 2)],
    ["example", "", "10", "", "12 ± 1e-9", "", at(7 * i + 3)],
    [],
  ]);
  return [[...functionColumns], ...rows.flat()];
}

const record = <T>(entries: readonly (readonly [string, T])[]): Record<string, T> => Object.fromEntries(entries);

/** @param which of the texts stands for title, revision and date. */
export function hostileNotebook(which: number): Notebook {
  const one = hostile[which % hostile.length] as string;
  const pages = [
    pageOf("Cells", "cells.csv", cells()),
    pageOf("Free", "free.csv", free()),
    pageOf("Own", "own.csv", functions()),
    ...names.map((name, i) =>
      pageOf(name, `page-${i}.csv`, [
        [name, ...hostile.slice(i, i + 3)],
        ["=1/0", one],
      ]),
    ),
  ];
  const about: About = {
    version: 1,
    title: asName(one),
    revision: one,
    date: one,
    scenario: one,
    pages: pages.map(({ name, file }) => ({ name, file })),
    notes: record(pages.map(({ name }, i) => [name, hostile.slice(i).concat(hostile.slice(0, i)).join("\n\n")])),
    rows: record(hostile.map((text) => [`Cells.${text}`, { choices: [...hostile], low: 1, high: 2 }])),
    reviews: record(hostile.map((text) => [`Cells.${text}`, { who: text, when: text, hash: text }])),
    accepted: hostile.map((text) => ({ rule: text, at: text, message: text, reason: text, who: text, when: text })),
    settings: record(
      hostile.slice(0, 8).flatMap(
        (text, i) =>
          [
            [`job ${i}`, text],
            [asName(text), one],
          ] as const,
      ),
    ),
  };
  return { about, pages };
}

export const hostileZip = (which: number): Buffer => Buffer.from(packNotebook(hostileNotebook(which)));
