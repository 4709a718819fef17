import type { CellValue } from "../engine/value";
import { withDecimalSign } from "../words/decimal-sign";

const significant = 6;

/** With so many digits after the point, or with six significant ones. */
function pointed(value: number, digits?: number): string {
  if (digits !== undefined) return (Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value).toFixed(digits);
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return String(value);
  return String(Number(value.toPrecision(significant)));
}

/** A number for the screen: with so many decimals, or with six significant digits. */
export const displayNumber = (value: number, digits?: number): string => withDecimalSign(pointed(value, digits));

/** Any value for the screen; an error shows its code, its sentence belongs beside it. */
export function displayValue(value: CellValue, digits?: number): string {
  switch (value.kind) {
    case "blank":
      return "";
    case "number":
      return displayNumber(value.value, digits);
    case "flag":
      return value.value ? "TRUE" : "FALSE";
    case "text":
      return value.text;
    case "error":
      return value.code;
  }
}

/** A value as JSON carries it: full precision, blank as null, an error as null. */
export function plainValue(value: CellValue): number | string | boolean | null {
  switch (value.kind) {
    case "number":
    case "flag":
      return value.value;
    case "text":
      return value.text;
    default:
      return null;
  }
}
