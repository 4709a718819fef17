import { convertUnit } from "./convert";

/**
 * The units in which a person may read and type what a row holds. The first is the one that files, formulas and
 * functions use, always; the others change the screen only.
 */
export const shownChoices = {
  mm: ["mm", "in"],
  m: ["m", "ft"],
  N: ["N", "kgf", "lbf"],
  kg: ["kg", "lbm"],
  degC: ["degC", "F"],
} as const;

export type HeldUnit = keyof typeof shownChoices;

/** What a person chose, by the unit that the row holds; what is not named stays as it is held. */
export type UnitWish = { readonly [U in HeldUnit]?: (typeof shownChoices)[U][number] };

/** Customary units throughout. */
export const customary: UnitWish = { mm: "in", m: "ft", N: "lbf", kg: "lbm", degC: "F" };

const isHeld = (unit: string): unit is HeldUnit => Object.hasOwn(shownChoices, unit);

/** The unit in which a row is shown. */
export const shownUnit = (held: string, wish: UnitWish): string => (isHeld(held) ? (wish[held] ?? held) : held);

function converted(value: number, from: string, to: string): number {
  const result = convertUnit(value, from, to);
  if (typeof result === "string") throw new Error(result);
  return result;
}

/** A held number as it is shown. */
export function toShown(value: number, held: string, wish: UnitWish): number {
  const shown = shownUnit(held, wish);
  return shown === held ? value : converted(value, held, shown);
}

/** Enough digits for any workshop, few enough that 7.25 in is held as 184.15 mm and not as 184.14999999999998. */
const heldDigits = 12;

/** A typed number as it is held. */
export function toHeld(value: number, held: string, wish: UnitWish): number {
  const shown = shownUnit(held, wish);
  return shown === held ? value : Number(converted(value, shown, held).toPrecision(heldDigits));
}

/** How many more digits after the point the shown unit needs to show the same steps; negative for fewer. */
export function moreDecimals(held: string, wish: UnitWish): number {
  const shown = shownUnit(held, wish);
  if (shown === held) return 0;
  const step = converted(1, held, shown) - converted(0, held, shown);
  return Math.ceil(-Math.log10(step) - 1e-9) + 0;
}
