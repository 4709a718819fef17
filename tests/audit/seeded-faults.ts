import { isFormula } from "../../src/engine/content";
import { type CellText, setCells } from "../../src/notebook/edit-cells";
import { formulaForOption } from "../../src/notebook/edit-options";
import { feedsOf } from "../../src/notebook/feeds";
import type { LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, lead, type Notebook, type Page, pageByName } from "../../src/notebook/model";
import { mapReferences, type Reference, referencesOf } from "../../src/notebook/references";
import { rowKind } from "../../src/notebook/rows";
import { pick } from "../formula/random-expression";

/** One mistake: the cells that it writes, and how it came about. */
export interface Fault {
  readonly kind: string;
  readonly cells: readonly CellText[];
}

interface Place {
  readonly page: Page;
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

type Random = () => number;

function places(notebook: Notebook, wanted: (page: Page, row: number, text: string) => boolean): Place[] {
  return notebook.pages
    .filter(isOptionPage)
    .flatMap((page) =>
      page.rows.flatMap((cells, row) =>
        cells.flatMap((text, column) =>
          row > 0 && column >= firstOption && wanted(page, row, text) ? [{ page, row, column, text }] : [],
        ),
      ),
    );
}

const written = ({ page, row, column }: Place, text: string): CellText => ({ page: page.id, row, column, text });

/** The same mistake in the formulas of all options. */
function inAllOptions(notebook: Notebook, place: Place, text: string): CellText[] {
  const { page, row, column } = place;
  return (page.rows[row] ?? []).flatMap((old, c) =>
    c >= firstOption && isFormula(old)
      ? [written({ ...place, column: c }, formulaForOption(notebook, page, text, c - column))]
      : [],
  );
}

/** Changes one of the references of a formula; undefined when there is none that can be changed so. */
function withReference(
  random: Random,
  text: string,
  can: (reference: Reference) => boolean,
  change: (reference: Reference) => string | Reference,
): string | undefined {
  const fitting = referencesOf(text).filter(can);
  if (fitting.length === 0) return undefined;
  const chosen = Math.floor(random() * fitting.length);
  let seen = -1;
  let instead: string | undefined;
  const marked = mapReferences(text, (reference) => {
    if (!can(reference) || ++seen !== chosen) return reference;
    const next = change(reference);
    if (typeof next !== "string") return next;
    instead = next;
    return undefined;
  });
  const result = instead === undefined ? marked : marked.replace("#REF!", instead);
  return result === text ? undefined : result;
}

const single = (reference: Reference): boolean => reference.to === undefined;
const block = ({ from, to }: Reference): boolean =>
  to !== undefined && to.column === from.column && (to.row ?? 0) > (from.row ?? 0) + 1;

const homeOf = (notebook: Notebook, page: Page, reference: Reference): Page =>
  (reference.page === undefined ? page : pageByName(notebook, reference.page)) ?? page;

/** The value of a reference as one would type it. */
function typed(live: LiveNotebook, page: Page, { page: name, from }: Reference): string | undefined {
  const home = homeOf(live.notebook, page, { page: name, from, to: undefined });
  const value = live.value({ page: home.id, row: from.row ?? 0, column: from.column ?? 0 });
  return value.kind === "number" ? String(value.value) : undefined;
}

/** Another row of the same page that holds a number, close by. */
function otherRow(random: Random, live: LiveNotebook, page: Page, reference: Reference): Reference | undefined {
  const home = homeOf(live.notebook, page, reference);
  const row = reference.from.row ?? 0;
  const near = [row - 3, row - 2, row - 1, row + 1, row + 2, row + 3].filter(
    (one) =>
      one > 0 &&
      home.rows[one] !== undefined &&
      ["input", "result"].includes(rowKind(home, one)) &&
      live.value({ page: home.id, row: one, column: reference.from.column ?? 0 }).kind === "number",
  );
  return near.length > 0 ? { ...reference, from: { ...reference.from, row: pick(random, near) } } : undefined;
}

const unitSlips: Readonly<Record<string, string>> = {
  mm: "m",
  m: "mm",
  kg: "g",
  g: "kg",
  mm2: "m2",
  m2: "mm2",
  mohm: "ohm",
  mA: "A",
};

const swapped: Readonly<Record<string, string>> = { "+": "-", "-": "+", "*": "/", "/": "*" };

function otherOperator(random: Random, text: string): string | undefined {
  const at = [...text.matchAll(/(?<=[\w)])[-+*/](?=[\w('$])/g)].map(({ index }) => index ?? 0);
  if (at.length === 0 || text.includes('"')) return undefined;
  const place = pick(random, at);
  return text.slice(0, place) + swapped[text.charAt(place)] + text.slice(place + 1);
}

/** Two neighbouring arguments of a named function, changed about. */
function otherArguments(text: string): string | undefined {
  const changed = text.replace(
    /([A-Z]+\.[A-Z]+\()((?:'[^']+'!|\w+!)?\$?[A-Z]+\d+),((?:'[^']+'!|\w+!)?\$?[A-Z]+\d+)(?=[,)])/,
    "$1$3,$2",
  );
  return changed === text ? undefined : changed;
}

type Make = (random: Random, live: LiveNotebook, place: Place) => string | undefined;

const inFormula: Readonly<Record<string, Make>> = {
  "reference replaced by its number": (random, live, { page, text }) =>
    withReference(
      random,
      text,
      (one) => single(one) && typed(live, page, one) !== undefined,
      (one) => typed(live, page, one) ?? "0",
    ),
  "range shifted": (random, _, { text }) =>
    withReference(random, text, block, ({ from, to, ...rest }) => ({
      ...rest,
      from: { ...from, row: (from.row ?? 0) + 1 },
      to: to && { ...to, row: (to.row ?? 0) + 1 },
    })),
  "range shortened": (random, _, { text }) =>
    withReference(random, text, block, ({ to, ...rest }) => ({ ...rest, to: to && { ...to, row: (to.row ?? 0) - 1 } })),
  "operator changed": (random, _, { text }) => otherOperator(random, text),
  "arguments swapped": (_, __, { text }) => otherArguments(text),
  "wrong row": (random, live, { page, text }) =>
    withReference(
      random,
      text,
      (one) => single(one) && otherRow(() => 0, live, page, one) !== undefined,
      (one) => otherRow(random, live, page, one) ?? one,
    ),
  sign: (_, __, { text }) => (text.includes('"') ? undefined : `=-(${text.slice(1)})`),
  "error hidden": (_, __, { text }) => (text.includes('"') ? undefined : `=IFERROR(${text.slice(1)},0)`),
};

/** So many mistakes of every kind in a notebook, the same ones for the same random numbers. */
export function seededFaults(random: Random, live: LiveNotebook, each: number): Fault[] {
  const { notebook } = live;
  const formulas = places(notebook, (_, __, text) => isFormula(text) && !/^=0?-?COUNTBLANK/.test(text));
  const faults: Fault[] = [];
  const collect = (kind: string, count: number, make: () => readonly CellText[] | undefined): void => {
    const seen = new Set<string>();
    for (let tries = 0; seen.size < count && tries < count * 40; tries++) {
      const cells = make();
      const key = JSON.stringify(cells);
      if (!cells || cells.length === 0 || seen.has(key)) continue;
      seen.add(key);
      faults.push({ kind, cells });
    }
  };
  for (const [kind, make] of Object.entries(inFormula)) {
    collect(kind, each, () => {
      const place = pick(random, formulas);
      const text = make(random, live, place);
      return text === undefined ? undefined : [written(place, text)];
    });
    collect(`${kind}, in all options`, Math.floor(each / 2), () => {
      const place = pick(random, formulas);
      const text = make(random, live, place);
      return text === undefined ? undefined : inAllOptions(notebook, place, text);
    });
  }
  collect("result typed over", each, () => {
    const place = pick(random, formulas);
    const value = live.value({ page: place.page.id, row: place.row, column: place.column });
    return value.kind === "number" ? [written(place, String(Number(value.value.toPrecision(6))))] : undefined;
  });
  const feeds = feedsOf(notebook);
  const inputs = places(
    notebook,
    (page, row, text) => text !== "" && !isFormula(text) && rowKind(page, row) === "input",
  ).filter(({ page, row, column }) =>
    feeds.fedBy({ page: page.id, row, column }).some((reader) => {
      const home = notebook.pages.find(({ id }) => id === reader.page) as Page;
      return !/COUNT|ISNUMBER/.test(home.rows[reader.row]?.[reader.column] ?? "");
    }),
  );
  collect("input left blank", each, () => [written(pick(random, inputs), "")]);
  collect("number typed as text", Math.floor(each / 2), () => {
    const place = pick(random, inputs);
    return /^\d+\.\d+$/.test(place.text) ? [written(place, place.text.replace(".", ","))] : undefined;
  });
  const rows = notebook.pages.filter(isOptionPage).flatMap((page) =>
    page.rows.flatMap((cells, row) => {
      const slip = unitSlips[cells[lead.unit] ?? ""];
      if (row === 0 || !slip) return [];
      const read = feeds.fedBy({ page: page.id, row, column: firstOption }).some((reader) => {
        const home = notebook.pages.find(({ id }) => id === reader.page) as Page;
        return !/COUNT|ISNUMBER|TEXT\(/.test(home.rows[reader.row]?.[reader.column] ?? "");
      });
      return read || isFormula(cells[firstOption] ?? "")
        ? [written({ page, row, column: lead.unit, text: "" }, slip)]
        : [];
    }),
  );
  collect("unit of a row", Math.min(each, rows.length), () => [pick(random, rows)]);
  return faults;
}

export const withFault = (notebook: Notebook, { cells }: Fault): Notebook => setCells(notebook, cells);
