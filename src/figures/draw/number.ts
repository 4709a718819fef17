import { decimalSign } from "../../words/decimal-sign";

const minus = "\u2212";
/** Between groups of three digits, so that a long number stays one word. */
const thin = "\u202f";

/**
 * A number for a drawing.
 *
 * @param decimals digits after the point; the sign of a value that rounds to nothing is left out.
 */
export function shown(value: number, decimals = 0): string {
  const [whole = "0", fraction = ""] = Math.abs(value).toFixed(decimals).split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thin) : whole;
  const sign = value < 0 && /[1-9]/.test(whole + fraction) ? minus : "";
  return `${sign}${grouped}${fraction && `${decimalSign()}${fraction}`}`;
}

/** Holds a number and its unit on one line. */
const bound = "\u00a0";

/** A number with its unit. */
export const withUnit = (value: number, unit: string, decimals = 0): string =>
  `${shown(value, decimals)}${bound}${unit}`;

/** Millimetres: whole ones from 20 on, tenths below, as a rule can be read. */
export const mm = (value: number): string => withUnit(value, "mm", Math.abs(value) < 20 && value % 1 !== 0 ? 1 : 0);

/** A share in whole percent. */
export const percent = (share: number): string => withUnit(share * 100, "%");
