import type { Parsed, ParsedCell } from "../../engine/parsed";
import { partsOf } from "../../engine/parsed";
import { defaultOf } from "../../formula/arguments";
import { nameOnPage } from "../../notebook/cell-name";
import { countsNow } from "../../notebook/counts-now";
import type { LiveNotebook } from "../../notebook/live";
import type { Page, Position } from "../../notebook/model";
import { say } from "../../words/say";
import { type Finding, found } from "../finding";
import { type Form, onlyCounts } from "../form";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { placesOf, readsAny, type Subject } from "../subject";

const name = "blank-reference";

/** Functions that ask whether a cell is filled; what they have asked, the rest of the formula knows. */
const asks = new Set(["ISBLANK", "ISNUMBER", "ISTEXT", "ISLOGICAL", "COUNT", "COUNTA", "COUNTBLANK", "COUNTIF"]);

const keyOf = ({ sheet, row, column }: ParsedCell): string => `${sheet} ${row} ${column}`;

/** The cells that a formula asks about before it uses them. */
function asked(parsed: Parsed): ReadonlySet<string> {
  const cells = new Set<string>();
  for (const { part, inside } of everyPart(parsed)) {
    const asking =
      (inside?.kind === "call" && asks.has(inside.name)) ||
      (inside?.kind === "operator" && partsOf(inside).some((side) => side.kind === "text" && side.text === ""));
    if (!asking) continue;
    if (part.kind === "reference") cells.add(keyOf(part.at));
    if (part.kind === "range") {
      for (let row = part.from.row; row <= part.to.row; row++) cells.add(keyOf({ ...part.from, row }));
    }
  }
  return cells;
}

/** Functions that pass over blank cells of a range, so that a missing number goes unseen. */
const passOver = new Set(["SUM", "MIN", "MAX", "AVERAGE", "MEDIAN", "SUMPRODUCT", "PRODUCT"]);

/** A blank cell, and what becomes of it. */
interface Blank {
  readonly at: ParsedCell;
  readonly taken: string;
}

/** Blank cells that count now: not those in a branch that is not taken. */
function blanks(subject: Subject, parsed: Parsed): Blank[] {
  const { live, notebook, find } = subject;
  const known = asked(parsed);
  const isBlank = (at: ParsedCell): boolean => {
    const page = notebook.pages[at.sheet];
    return page !== undefined && !known.has(keyOf(at)) && subject.kind(page, at.row, at.column) === "blank";
  };
  const inRange = (range: Extract<Parsed, { kind: "range" }>): Blank[] => {
    const last = Math.min(range.to.row, (notebook.pages[range.from.sheet]?.rows.length ?? 0) - 1);
    const cells = Array.from({ length: Math.max(0, last - range.from.row + 1) }, (_, i) => ({
      ...range.from,
      row: range.from.row + i,
    }));
    return cells.filter(isBlank).map((at) => ({ at, taken: say`left out` }));
  };
  const walk = (one: Parsed, taken: string): Blank[] => {
    if (one.kind === "reference") return isBlank(one.at) ? [{ at: one.at, taken }] : [];
    const counts = one.kind === "call" ? countsNow(live, one) : () => true;
    const args = one.kind === "call" ? Object.values(find(one.name)?.args ?? {}) : [];
    return partsOf(one).flatMap((part, i) => {
      if (!counts(i)) return [];
      if (part.kind === "range") {
        const single = part.from.column === part.to.column && one.kind === "call" && passOver.has(one.name);
        return single ? inRange(part) : [];
      }
      const otherwise = args[i] && defaultOf(args[i]);
      return walk(
        part,
        otherwise === undefined
          ? say`counted as 0 or as nothing`
          : say`taken as ${String(otherwise).toUpperCase()} by default`,
      );
    });
  };
  return walk(parsed, say`shown as 0`);
}

/** Whether a formula reads any blank cell at all, which the texts tell quickly. */
const readsBlank = (subject: Subject, form: Form, column: number): boolean =>
  readsAny(form, column, (page, row, at) => subject.kind(page, row, at) === "blank");

function findingOf(live: LiveNotebook, page: Page, at: Position, cells: readonly Blank[]): Finding {
  const names = cells.map(({ at: { sheet, row, column }, taken }) => {
    const { quantity, cell } = nameOnPage(live.notebook.pages[sheet] as Page, row, column);
    return say`${quantity ? `${quantity} (${cell})` : cell} is blank and ${taken}`;
  });
  const message = say`${[...new Set(names)].join(", ")}; fill it in`;
  return found(name, "warning", nameOnPage(page, at.row, at.column), message);
}

/** A formula that takes a blank cell for a number or a text. */
export const blankReference: Rule = {
  name,
  about: say`a formula that reads a blank cell without asking whether it is filled`,
  readsParts: true,
  find: (subject) =>
    subject.forms
      .filter(({ text }) => !onlyCounts(text))
      .flatMap((form) =>
        placesOf(form).flatMap((at) => {
          if (!readsBlank(subject, form, at.column)) return [];
          const parsed = subject.live.parsed(at);
          const cells = parsed ? blanks(subject, parsed) : [];
          return cells.length > 0 ? [findingOf(subject.live, form.page, at, cells)] : [];
        }),
      ),
};
