import { isFormula } from "../../../src/engine/content";
import { formulaForOption } from "../../../src/notebook/edit-options";
import { feedsOf } from "../../../src/notebook/feeds";
import { firstOption, isOptionPage, lead, type Notebook, type Page, type Position } from "../../../src/notebook/model";
import { type Reference, referencesOf } from "../../../src/notebook/references";
import { rowKind } from "../../../src/notebook/rows";
import { isBare, isPlain, type Scale, sameScale, scaleOf } from "../../../src/units/scale";
import { type Evidence, type Place, pageOfReference } from "./fault";
import { callsAround } from "./reference-text";
import type { Trace } from "./slip";

const seenBy = (by: string): Evidence => ({ seenBy: by });
const unseen = (why: string): Evidence => ({ unseen: why });

/** Functions for which it makes no difference in which unit a cell is. */
const mindNoUnit = new Set(["COUNT", "COUNTA", "COUNTBLANK", "ISNUMBER", "ISBLANK", "ISTEXT", "TEXT", "ROWS", "N"]);

export const unitOf = (page: Page, row: number): string => page.rows[row]?.[lead.unit] ?? "";

/** The units of what two references mean; undefined where one of them has none. */
function unitsOf(notebook: Notebook, home: Page, pair: readonly Reference[]): readonly [Scale, Scale] | undefined {
  const [a, b] = pair.map((one) => {
    const page = pageOfReference(notebook, home, one);
    return page && isOptionPage(page) ? scaleOf(unitOf(page, one.from.row ?? 0)) : undefined;
  });
  return a && b && [a, b];
}

/** Small counts, powers of ten, and parts of an hour or a turn: nobody can tell one that was meant from a slip. */
const meansNothing = (value: number): boolean =>
  [...Array(13).keys(), 24, 60, 90, 180, 360, 3600, 0.5].includes(Math.abs(value)) ||
  /^-?10*(\.0*)?$|^-?0\.0*1$/.test(String(value));

/** Whether another option of the row holds the same formula as this one, as it reads for itself. */
export function neighboursAgree(notebook: Notebook, { home, row, column, text }: Place): boolean {
  return (home.rows[row] ?? []).some(
    (other, at) =>
      at >= firstOption &&
      at !== column &&
      (isFormula(text) ? other === formulaForOption(notebook, home, text, at - column) : isFormula(other)),
  );
}

function ofReference(notebook: Notebook, place: Place, trace: Extract<Trace, { what: "reference" }>): Evidence {
  if (trace.around.some((name) => mindNoUnit.has(name))) return unseen("it is only counted or written out");
  if (unitOf(place.home, place.row) === "") return unseen("the row holds text, which has no unit");
  const units = unitsOf(notebook, place.home, [trace.before, trace.after]);
  if (!units) return unseen("one of the rows has no unit");
  return sameScale(...units) ? unseen("the other row has the same unit") : seenBy("units");
}

function ofRange(
  notebook: Notebook,
  place: Place,
  { before, after, around }: Extract<Trace, { what: "range" }>,
): Evidence {
  const fellows = referencesOf(place.text).filter(
    ({ from, to }) => from.row === before.from.row && to?.row === before.to?.row,
  );
  if (fellows.length > 1) return seenBy("another range of the formula");
  const page = pageOfReference(notebook, place.home, before);
  const out = after.from.row === before.from.row ? (before.to?.row ?? 0) : (before.from.row ?? 0);
  const beside = out === before.from.row ? out + 1 : out - 1;
  const counted = around.some((name) => name.startsWith("COUNT"));
  if (page && counted && isOptionPage(page)) {
    return rowKind(page, out) === "input"
      ? seenBy("the block")
      : unseen("the row left out is calculated or a heading, so that counting its blanks gives the same");
  }
  const kind = (row: number) => isFormula(page?.rows[row]?.[before.from.column ?? 0] ?? "");
  return page && kind(out) === kind(beside) && (!isOptionPage(page) || unitOf(page, out) === unitOf(page, beside))
    ? seenBy("the block")
    : unseen("the row left out is of another kind than the block");
}

function ofOperator(notebook: Notebook, { home }: Place, { from, right }: Extract<Trace, { what: "operator" }>) {
  if (from === "+" || from === "-") return unseen("a sum and a difference have one unit");
  const number = /^\d+(?:\.\d+)?/.exec(right)?.[0];
  if (number !== undefined)
    return Number(number) >= 1000 ? seenBy("units") : unseen("a typed number may multiply or divide");
  const written = /^(?:(?:'[^']+'|\w+)!)?\$?[A-Z]{1,2}\$?\d+(?![\w(.:])/.exec(right)?.[0];
  const [reference] = written ? referencesOf(`=${written}`) : [];
  const page = reference && pageOfReference(notebook, home, reference);
  const scale = page && isOptionPage(page) ? scaleOf(unitOf(page, reference.from.row ?? 0)) : undefined;
  if (!scale) return unseen("what follows is not a single row with a unit");
  return isBare(scale) ? unseen("what follows is a plain number") : seenBy("units");
}

/**
 * What gives away a slip that was made in all options alike. Told from the clean notebook and from what was done
 * to it; what the audit says of it is never asked.
 */
export function evidenceOf(notebook: Notebook, place: Place, trace: Trace): Evidence {
  switch (trace.what) {
    case "number":
      if (trace.around.some((name) => mindNoUnit.has(name))) return unseen("it is only counted or written out");
      return meansNothing(trace.value)
        ? unseen("the number might be a count or a factor that was meant")
        : seenBy("the typed number");
    case "reference":
      return ofReference(notebook, place, trace);
    case "range":
      return ofRange(notebook, place, trace);
    case "swap": {
      const units = unitsOf(notebook, place.home, trace.pair);
      if (!units) return unseen("one of the arguments has no unit");
      return sameScale(...units) ? unseen("both arguments have the same unit") : seenBy("units");
    }
    case "operator":
      return ofOperator(notebook, place, trace);
    case "thousand": {
      const scale = scaleOf(unitOf(place.home, place.row));
      if (trace.dropped) return seenBy("units");
      return scale && !isPlain(scale) && !isBare(scale) ? seenBy("units") : unseen("the result is a plain number");
    }
    case "sign":
      return unseen("a quantity and its opposite have one unit");
    case "hidden error":
      return seenBy("the number that stands for an error");
  }
}

/** The formulas that use a cell: those that only count it, ask about it or write it out do not. */
export function usersOf(notebook: Notebook, at: Position): readonly Position[] {
  return feedsOf(notebook)
    .fedBy(at)
    .filter(({ page: id, row, column }) => {
      const page = notebook.pages.find((one) => one.id === id);
      const text = page?.rows[row]?.[column] ?? "";
      const bare = text.replace(/"[^"]*"/g, "");
      return [...bare.matchAll(/\$?[A-Z]{1,2}\$?\d+/g)].some(
        ({ index }) => !callsAround(bare, index).some((name) => mindNoUnit.has(name)),
      );
    });
}
