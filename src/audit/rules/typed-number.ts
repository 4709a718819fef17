import type { Parsed } from "../../engine/parsed";
import { isOptionPage } from "../../notebook/model";
import { say } from "../../words/say";
import { found } from "../finding";
import type { Form } from "../form";
import { everyPart, type Placed } from "../parts";
import type { Rule } from "../rule";
import { namesOf } from "../subject";

const name = "typed-number";

/**
 * Numbers that need no row of their own: counting and halving, powers of ten, hours and minutes, degrees of a
 * turn, and the trade's exact constants (inch, pound, foot, standard gravity, ice point).
 */
const exact = new Set([
  0, 0.5, 1, 2, 3, 4, 8, 12, 24, 60, 3600, 90, 180, 270, 360, 25.4, 0.3048, 0.45359237, 9.80665, 273.15,
]);

const isTen = (value: number): boolean => {
  const power = Math.log10(Math.abs(value));
  return Math.abs(power - Math.round(power)) < 1e-12;
};

const isPi = (value: number): boolean => Math.abs(value - Math.PI) < 1e-9;

/** Arguments of built-in functions that say how, not how much: digits, columns, ways of matching. */
const settings: Readonly<Record<string, number>> = {
  ROUND: 1,
  ROUNDUP: 1,
  ROUNDDOWN: 1,
  TRUNC: 1,
  INDEX: 1,
  MATCH: 2,
  XLOOKUP: 4,
  XMATCH: 2,
  VLOOKUP: 2,
  HLOOKUP: 2,
  CHOOSE: 0,
  LARGE: 1,
  SMALL: 1,
  LEFT: 1,
  RIGHT: 1,
  MID: 1,
  SEQUENCE: 0,
  DATE: 0,
};

function isSetting({ inside, place }: Placed): boolean {
  const from = inside?.kind === "call" && Object.hasOwn(settings, inside.name) ? settings[inside.name] : undefined;
  return from !== undefined && place >= from;
}

/** Numbers in an array or an equation with text take part in no arithmetic. */
function isArithmetic({ inside }: Placed): boolean {
  return inside === undefined || inside.kind === "operator" || inside.kind === "call" || inside.kind === "sign";
}

/** The limits of an unfolded function, which its basis says in words: nothing but conditions on the kind and size. */
function isGuard({ parsed }: Form): boolean {
  return (
    parsed?.kind === "call" &&
    parsed.name === "AND" &&
    parsed.args.some((part) => part.kind === "call" && part.name === "ISNUMBER")
  );
}

const typedValue = ({ part }: { readonly part: Parsed }): number => (part.kind === "number" ? part.value : 0);

const withoutWhole = (formula: string): string => formula.replace(/(?<![A-Za-z\d.$])\d+(?![\d.])/g, "#");

/** A series of rows with the same formula but for a whole number that counts them. */
function countsRows({ page, row, columns, text }: Form): boolean {
  return [row - 1, row + 1].some((other) => {
    const beside = page.rows[other]?.[columns[0] ?? 0] ?? "";
    return beside !== text && withoutWhole(beside) === withoutWhole(text);
  });
}

/** Numbers typed inside a formula, where nobody sees their unit and source. */
export const typedNumber: Rule = {
  name,
  about: say`a number typed inside a formula instead of standing in a row with unit and source`,
  readsParts: true,
  find: ({ forms }) =>
    forms.flatMap((form) => {
      // On a free sheet a formula of numbers alone is an example or a check value.
      const isExample = form.reads.length === 0 && !isOptionPage(form.page);
      if (!form.parsed || isExample || countsRows(form) || isGuard(form)) return [];
      const parts = everyPart(form.parsed);
      const typed = parts
        .filter((placed) => placed.part.kind === "number" && isArithmetic(placed) && !isSetting(placed))
        .map(typedValue)
        .filter((value) => !exact.has(Math.abs(value)) && !isTen(value) && !isPi(value));
      if (typed.length === 0) return [];
      const list = [...new Set(typed)].join(", ");
      const message = say`${list} ${typed.length === 1 ? say`is` : say`are`} typed inside the formula; give it a row with unit and source`;
      return namesOf(form).map((cell) => found(name, "warning", cell, message));
    }),
};
