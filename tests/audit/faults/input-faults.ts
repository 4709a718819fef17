import { isFormula } from "../../../src/engine/content";
import type { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, isOptionPage, lead, type Notebook } from "../../../src/notebook/model";
import { rowEntry } from "../../../src/notebook/row-entry";
import { rowKind } from "../../../src/notebook/rows";
import { pick } from "../../formula/random-expression";
import { unitOf, usersOf } from "./evidence";
import { type Evidence, type Fault, inAllOptions, type Place, placesOf, type Random, written } from "./fault";

export type MakeFault = (random: Random) => Omit<Fault, "kind" | "spread"> | undefined;

const inputsOf = (notebook: Notebook): Place[] =>
  placesOf(notebook, ({ home, row, text }) => !isFormula(text) && rowKind(home, row) === "input");

const isUsed = (notebook: Notebook, place: Place): boolean => usersOf(notebook, place).length > 0;

const notUsed: Evidence = { unseen: "no formula uses the cell but to count it or to ask whether it is filled" };

/** A cell with nothing in it is seen where a formula uses it and does not ask first. */
export function blankInput(notebook: Notebook, everywhere: boolean): MakeFault {
  const inputs = inputsOf(notebook);
  const asked = (text: string): boolean => /=""|<>""|COUNTIF|ISNUMBER|ISBLANK|ISTEXT/.test(text);
  return (random) => {
    const place = pick(random, inputs);
    const users = usersOf(notebook, place);
    const text = ({ page: id, row, column }: (typeof users)[number]) =>
      notebook.pages.find((page) => page.id === id)?.rows[row]?.[column] ?? "";
    const evidence: Evidence =
      users.length === 0
        ? notUsed
        : users.every((user) => asked(text(user)))
          ? { unseen: "every formula that uses the cell asks whether it is filled" }
          : { seenBy: "a formula that uses the cell" };
    return { cells: everywhere ? inAllOptions(notebook, place, "") : [written(place, "")], evidence };
  };
}

/** `12,5` for 12.5. */
export function typedAsText(notebook: Notebook): MakeFault {
  const inputs = inputsOf(notebook).filter(
    ({ home, row, text }) => /^\d+\.\d+$/.test(text) && unitOf(home, row) !== "",
  );
  return (random) => {
    const place = pick(random, inputs);
    return { cells: [written(place, place.text.replace(".", ","))], evidence: { seenBy: "text in a row of numbers" } };
  };
}

const slipsOfUnit: Readonly<Record<string, string>> = {
  mm: "m",
  m: "mm",
  kg: "g",
  g: "kg",
  mm2: "m2",
  m2: "mm2",
  mohm: "ohm",
  mA: "A",
  kN: "N",
};

/** The unit text of a row, slipped by a thousand: seen where a formula uses the row or makes its result. */
export function unitText(notebook: Notebook): MakeFault {
  const rows = notebook.pages.filter(isOptionPage).flatMap((home) =>
    home.rows.flatMap((cells, row) => {
      const slip = row > 0 ? slipsOfUnit[unitOf(home, row)] : undefined;
      const column = cells.findIndex((text, at) => at >= firstOption && text !== "");
      return slip && column > 0 ? [{ page: home.id, home, row, column, text: cells[column] ?? "", slip }] : [];
    }),
  );
  return (random) => {
    const { slip, ...place } = pick(random, rows);
    const evident = isFormula(place.text) || isUsed(notebook, place);
    return {
      cells: [written({ ...place, column: lead.unit }, slip)],
      evidence: evident ? { seenBy: "units" } : notUsed,
    };
  };
}

const factors: Readonly<Record<string, number>> = { mm: 1e-3, g: 1e-3, mohm: 1e-3, mA: 1e-3, m: 1e3, kg: 1e3, kN: 1e3 };
/** Boats of one notebook differ, but hardly by more; a thousand stands out. */
const alike = 30;

function evidenceOfNumber(notebook: Notebook, { home, row, column }: Place, is: number, everywhere: boolean): Evidence {
  const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = rowEntry(notebook, home, row) ?? {};
  if (is < low || is > high) return { seenBy: "the plausible limits of the row" };
  const others = (home.rows[row] ?? []).flatMap((text, at) =>
    at >= firstOption && at !== column && Number(text) ? [Number(text)] : [],
  );
  const [least, most] = [Math.min(...others), Math.max(...others)];
  const apart = others.length > 1 && most / least < alike && (is < least / alike || is > most * alike);
  if (apart && !everywhere) return { seenBy: "the numbers of the other options" };
  return { unseen: "the number stands alone and inside every limit" };
}

/** A number typed in the unit a thousand times larger or smaller than its row says. */
export function numberInOtherUnit(notebook: Notebook, everywhere: boolean): MakeFault {
  const inputs = inputsOf(notebook).filter(
    (place) => unitOf(place.home, place.row) in factors && Number(place.text) && isUsed(notebook, place),
  );
  return (random) => {
    const place = pick(random, inputs);
    const factor = factors[unitOf(place.home, place.row)] ?? 1;
    const slipped = (text: string) => String(Number((Number(text) * factor).toPrecision(12)));
    const cells = everywhere ? inAllOptions(notebook, place, "x") : [written(place, "x")];
    return {
      cells: cells.map((cell) => ({ ...cell, text: slipped(place.home.rows[cell.row]?.[cell.column] ?? "") })),
      evidence: evidenceOfNumber(notebook, place, Number(place.text) * factor, everywhere),
    };
  };
}

/** A result replaced by the number that it shows. */
export function typedOver(live: LiveNotebook, everywhere: boolean): MakeFault {
  const { notebook } = live;
  const formulas = placesOf(notebook, ({ text }) => isFormula(text));
  return (random) => {
    const place = pick(random, formulas);
    const cells = everywhere ? inAllOptions(notebook, place, "0") : [written(place, "0")];
    const typed = cells.map((cell) => {
      const value = live.value(cell);
      return value.kind === "number" ? { ...cell, text: String(Number(value.value.toPrecision(6))) } : undefined;
    });
    if (typed.includes(undefined)) return undefined;
    const filled = (place.home.rows[place.row] ?? []).filter((text, at) => at >= firstOption && isFormula(text));
    return {
      cells: typed.flatMap((cell) => cell ?? []),
      evidence:
        everywhere || filled.length < 2
          ? { unseen: "a row without a formula reads as a row of inputs" }
          : { seenBy: "the formulas of the other options" },
    };
  };
}
