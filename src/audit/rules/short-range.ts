import { isFormula } from "../../engine/content";
import type { Parsed } from "../../engine/parsed";
import { nameOnPage } from "../../notebook/cell-name";
import { cellsOf } from "../../notebook/feeds";
import { isOptionPage, lead, type Page } from "../../notebook/model";
import { referencesOf } from "../../notebook/references";
import { rowKind } from "../../notebook/rows";
import { say } from "../../words/say";
import { found } from "../finding";
import type { Form } from "../form";
import { isCount } from "../is-count";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { namesOf, type Subject } from "../subject";

const name = "short-range";

type Range = Extract<Parsed, { kind: "range" }>;

/** Functions that count cells, whatever stands in them. */
const counting = new Set(["COUNT", "COUNTA", "COUNTBLANK", "COUNTIF"]);

/** Ranges in one column of two cells or more, that are added up or counted in a formula. */
function rangesOf(parsed: Parsed): readonly { readonly range: Range; readonly counted: boolean }[] {
  return everyPart(parsed).flatMap(({ part, inside }) =>
    part.kind === "range" &&
    inside?.kind === "call" &&
    part.from.column === part.to.column &&
    part.to.row > part.from.row
      ? [{ range: part, counted: counting.has(inside.name) }]
      : [],
  );
}

/** All ranges of more than one row. */
const blocksOf = (parsed: Parsed): Range[] =>
  everyPart(parsed).flatMap(({ part }) => (part.kind === "range" && part.to.row > part.from.row ? [part] : []));

/** Whether the row beside a range looks like one more of it; where cells are counted, whether it is asked for. */
function belongs(
  subject: Subject,
  form: Form,
  { range, counted }: ReturnType<typeof rangesOf>[number],
  last: number,
  next: number,
): boolean {
  const page = subject.notebook.pages[range.from.sheet];
  const column = range.from.column;
  if (!page?.rows[next] || (page === form.page && next === form.row)) return false;
  // What the formula reads beside the range was left out of it on purpose.
  if (
    form.reads.some((read) => read.page === page && read.left === column && read.top <= next && next <= read.bottom)
  ) {
    return false;
  }
  if (counted && isOptionPage(page)) return rowKind(page, next) === "input";
  const text = page.rows[next]?.[column] ?? "";
  if (text === "") return false;
  if (isOptionPage(page)) {
    if (["header", "heading", "empty"].includes(rowKind(page, next))) return false;
    const unit = (row: number) => page.rows[row]?.[lead.unit];
    if (unit(last) !== unit(next) || rowKind(page, last) !== rowKind(page, next)) return false;
  }
  if (subject.kind(page, next, column) !== "number") return false;
  if (isCount(subject.notebook, page, next, column) !== isCount(subject.notebook, page, last, column)) return false;
  return !isFormula(text) || !readsRange(subject, page, text, range);
}

/** A total below the block is no more of it: it reads the block. */
function readsRange({ notebook }: Subject, page: Page, text: string, range: Range): boolean {
  const home = notebook.pages[range.from.sheet] as Page;
  return referencesOf(text).some((reference) =>
    cellsOf(notebook, page, reference).some(
      (cell) =>
        cell.page === home.id &&
        cell.column === range.from.column &&
        cell.row >= range.from.row &&
        cell.row <= range.to.row,
    ),
  );
}

/** Two ranges of one formula that cover part of the same rows, and should cover all or none of them. */
function unevenRanges(form: Form): readonly [Range, Range] | undefined {
  const ranges = form.parsed ? blocksOf(form.parsed) : [];
  for (const a of ranges) {
    const b = ranges.find(
      ({ from, to }) =>
        from.sheet === a.from.sheet &&
        from.row <= a.to.row &&
        to.row >= a.from.row &&
        (from.row !== a.from.row || to.row !== a.to.row),
    );
    if (b) return [a, b];
  }
  return undefined;
}

const rowsWord = ({ from, to }: Range): string => say`${from.row + 1} to ${to.row + 1}`;

function short(subject: Subject, form: Form): string | undefined {
  const ranges = form.parsed ? rangesOf(form.parsed) : [];
  const missing = ranges.flatMap((one) => {
    const { range } = one;
    return (
      [
        [range.from.row, range.from.row - 1],
        [range.to.row, range.to.row + 1],
      ] as const
    ).flatMap(([last, next]) =>
      belongs(subject, form, one, last, next)
        ? [nameOnPage(subject.notebook.pages[range.from.sheet] as Page, next, range.from.column)]
        : [],
    );
  });
  if (missing.length === 0) return undefined;
  const list = missing.map(({ quantity, cell }) => (quantity ? `${quantity} (${cell})` : cell)).join(", ");
  return say`the range stops before ${list}, which looks like one more of its block`;
}

function uneven(form: Form): string | undefined {
  const pair = unevenRanges(form);
  return pair && say`one range covers rows ${rowsWord(pair[0])}, another ${rowsWord(pair[1])}; they need the same rows`;
}

/** A range that stops short of the block it is meant to cover, or of another range of the same formula. */
export const shortRange: Rule = {
  name,
  about: say`a range that ends before its block does, or covers other rows than its fellow`,
  readsParts: true,
  find: (subject) =>
    subject.forms.flatMap((form) => {
      const message = short(subject, form) ?? uneven(form);
      return message ? namesOf(form).map((cell) => found(name, "warning", cell, message)) : [];
    }),
};
