import { plainNumberOf } from "../../engine/content";
import { gaugeOf, sizeOf } from "../../notebook/conductor-size";
import { isOptionPage, lead, type Notebook, type Page, textAt } from "../../notebook/model";
import { rowEntry } from "../../notebook/row-entry";
import { unitChoice } from "../../notebook/unit-choice";
import { moreDecimals, shownUnit, toHeld, toShown } from "../../units/shown";
import { numberText } from "./number-text";

/** How the numbers of a row are read and typed; files, formulas and functions have them in the row's own unit. */
export interface RowUnits {
  /** The unit that stands beside the numbers on the screen. */
  readonly unit: string;
  /** How many digits more after the point it needs than the row's own unit. */
  readonly moreDecimals: number;
  /** A held number in words, without the unit. */
  readonly words: (value: number, decimals?: number) => string;
  /** A cell's text as it is typed; formulas and words stay. */
  readonly toType: (text: string) => string;
  /** What was typed, as the cell holds it; formulas and words stay. */
  readonly toHold: (typed: string) => string;
}

/** Shown as it is held. */
export const asHeld = (unit: string): RowUnits => ({
  unit,
  moreDecimals: 0,
  words: numberText,
  toType: (text) => text,
  toHold: (typed) => typed,
});

/** By gauge, and the size in mm2 beside it, since the two lists of sizes do not meet. */
const byGauge: RowUnits = {
  unit: "AWG",
  moreDecimals: 0,
  words: (value) => {
    const gauge = gaugeOf(value);
    return gauge === undefined ? `${numberText(value)} mm²` : `${gauge} (${numberText(value)} mm²)`;
  },
  toType: (text) => text,
  toHold: (typed) => String(sizeOf(typed.trim()) ?? typed),
};

/** Enough to read a number by, few enough to type. */
const typedDigits = 8;

function converted(held: string, notebook: Notebook, choices: readonly string[]): RowUnits {
  const wish = unitChoice(notebook);
  const toType = (text: string): string => {
    const value = plainNumberOf(text);
    return value === undefined ? text : String(Number(toShown(value, held, wish).toPrecision(typedDigits)));
  };
  return {
    unit: shownUnit(held, wish),
    moreDecimals: moreDecimals(held, wish),
    words: (value, decimals) => numberText(toShown(value, held, wish), decimals),
    toType,
    toHold: (typed) => {
      const value = plainNumberOf(typed);
      if (value === undefined) return typed;
      // A choice of the row's list is meant, not a number that is a hair beside it.
      return choices.find((choice) => toType(choice) === typed) ?? String(toHeld(value, held, wish));
    },
  };
}

/** How the numbers of a page's row are read and typed. */
export function rowUnits(notebook: Notebook, page: Page, row: number): RowUnits {
  const held = isOptionPage(page) ? textAt(page, row, lead.unit) : "";
  const choice = unitChoice(notebook);
  const entry = rowEntry(notebook, page, row);
  if (entry?.measure === "conductor" && choice.conductor === "AWG") return byGauge;
  return shownUnit(held, choice) === held
    ? asHeld(held)
    : converted(held, notebook, (entry?.choices ?? []).map(String));
}
