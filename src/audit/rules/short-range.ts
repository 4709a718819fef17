import { isFormula } from "../../engine/content";
import type { Parsed } from "../../engine/parsed";
import { nameOnPage } from "../../notebook/cell-name";
import { cellsOf } from "../../notebook/feeds";
import { isOptionPage, lead, type Page } from "../../notebook/model";
import { referencesOf } from "../../notebook/references";
import { rowKind } from "../../notebook/rows";
import { found } from "../finding";
import type { Form } from "../form";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { namesOf, type Subject } from "../subject";

const name = "short-range";

type Range = Extract<Parsed, { kind: "range" }>;

/** Ranges in one column of two cells or more, that are added up or counted in a formula. */
function rangesOf(parsed: Parsed): Range[] {
  return everyPart(parsed).flatMap(({ part, inside }) =>
    part.kind === "range" &&
    inside?.kind === "call" &&
    part.from.column === part.to.column &&
    part.to.row > part.from.row
      ? [part]
      : [],
  );
}

/** Whether the row beside a range looks like one more of it. */
function belongs(subject: Subject, form: Form, range: Range, last: number, next: number): boolean {
  const page = subject.notebook.pages[range.from.sheet];
  const column = range.from.column;
  if (!page?.rows[next] || (page === form.page && next === form.row)) return false;
  // What the formula reads beside the range was left out of it on purpose.
  if (
    form.reads.some((read) => read.page === page && read.left === column && read.top <= next && next <= read.bottom)
  ) {
    return false;
  }
  const text = page.rows[next]?.[column] ?? "";
  if (text === "") return false;
  if (isOptionPage(page)) {
    if (["header", "heading", "empty"].includes(rowKind(page, next))) return false;
    const unit = (row: number) => page.rows[row]?.[lead.unit];
    if (unit(last) !== unit(next) || rowKind(page, last) !== rowKind(page, next)) return false;
  }
  if (subject.kind(page, next, column) !== "number") return false;
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

/** A range that stops short of the block it is meant to cover. */
export const shortRange: Rule = {
  name,
  about: "a range that ends before its block does",
  find: (subject) =>
    subject.forms.flatMap((form) => {
      const ranges = form.parsed ? rangesOf(form.parsed) : [];
      const missing = ranges.flatMap((range) =>
        (
          [
            [range.from.row, range.from.row - 1],
            [range.to.row, range.to.row + 1],
          ] as const
        ).flatMap(([last, next]) =>
          belongs(subject, form, range, last, next)
            ? [nameOnPage(subject.notebook.pages[range.from.sheet] as Page, next, range.from.column)]
            : [],
        ),
      );
      if (missing.length === 0) return [];
      const list = missing.map(({ quantity, cell }) => (quantity ? `${quantity} (${cell})` : cell)).join(", ");
      return namesOf(form).map((cell) =>
        found(name, "warning", cell, `the range stops before ${list}, which looks like one more of its block`),
      );
    }),
};
