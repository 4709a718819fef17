import type { Parsed, ParsedCell } from "../../engine/parsed";
import { partsOf } from "../../engine/parsed";
import { nameOnPage } from "../../notebook/cell-name";
import type { LiveNotebook } from "../../notebook/live";
import { type Page, type Position, textAt } from "../../notebook/model";
import { countsNow } from "../../notebook/named-calls";
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

/** References to blank cells that count now: not those in a branch that is not taken, nor optional arguments. */
function blanks(subject: Subject, parsed: Parsed): ParsedCell[] {
  const { live, notebook, find } = subject;
  const known = asked(parsed);
  const isBlank = (at: ParsedCell): boolean => {
    const page = notebook.pages[at.sheet];
    if (!page || textAt(page, at.row, at.column) !== "") return false;
    return subject.kind(page, at.row, at.column) === "blank";
  };
  const walk = (one: Parsed): ParsedCell[] => {
    if (one.kind === "reference") return !known.has(keyOf(one.at)) && isBlank(one.at) ? [one.at] : [];
    const counts = one.kind === "call" ? countsNow(live, one) : () => true;
    const args = one.kind === "call" ? Object.values(find(one.name)?.args ?? {}) : [];
    return partsOf(one).flatMap((part, i) => {
      const argument = args[i];
      const optional = argument !== undefined && "otherwise" in argument && argument.otherwise !== undefined;
      return optional && part.kind === "reference" ? [] : counts(i) ? walk(part) : [];
    });
  };
  return walk(parsed);
}

/** Whether a formula reads any blank cell at all, which the texts tell quickly. */
const readsBlank = (subject: Subject, form: Form, column: number): boolean =>
  readsAny(form, column, (page, row, at) => subject.kind(page, row, at) === "blank");

function findingOf(live: LiveNotebook, page: Page, at: Position, cells: readonly ParsedCell[]): Finding {
  const names = [
    ...new Set(
      cells.map(({ sheet, row, column }) => {
        const { quantity, cell } = nameOnPage(live.notebook.pages[sheet] as Page, row, column);
        return quantity ? `${quantity} (${cell})` : cell;
      }),
    ),
  ];
  const message = `${names.join(", ")} ${names.length === 1 ? "is" : "are"} blank and counted as 0 or as nothing; fill it in`;
  return found(name, "warning", nameOnPage(page, at.row, at.column), message);
}

/** A formula that takes a blank cell for a number or a text. */
export const blankReference: Rule = {
  name,
  about: "a formula that reads a blank cell without asking whether it is filled",
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
