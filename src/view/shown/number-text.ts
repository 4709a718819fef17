import { decimalSign, withDecimalSign } from "../../words/decimal-sign";

/** Between groups of three digits, so that a long number stays one word. */
const thin = "\u202f";
const minus = "\u2212";
const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** Significant digits where a row does not say how many digits it wants. */
const usualDigits = 4;

const grouped = (whole: string): string => (whole.length < 5 ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, thin));

function withPower(value: number): string {
  const [digits = "", power = "0"] = Math.abs(value)
    .toExponential(usualDigits - 1)
    .split("e");
  const raised = [...String(Math.abs(Number(power)))].map((digit) => superscripts[Number(digit)]).join("");
  return `${withDecimalSign(digits.replace(/\.?0+$/, ""))} × 10${Number(power) < 0 ? "⁻" : ""}${raised}`;
}

/** Digits after the point that show a size with the usual significant digits; whole numbers need none. */
export function usualDecimals(size: number): number {
  if (size === 0 || !Number.isFinite(size)) return 0;
  return Math.min(12, Math.max(0, usualDigits - 1 - Math.floor(Math.log10(size))));
}

/**
 * A number for reading: digits after the point as asked, else four significant ones without trailing zeros.
 *
 * @param decimals digits after the point, 0 to 15.
 */
export function numberText(value: number, decimals?: number): string {
  const size = Math.abs(value);
  if (size >= 1e12 || (decimals === undefined && size !== 0 && size < 1e-4)) {
    return `${value < 0 ? minus : ""}${withPower(value)}`;
  }
  const fixed = size.toFixed(decimals ?? usualDecimals(size));
  const [whole = "0", fraction = ""] = (decimals === undefined ? fixed.replace(/(\.\d*?)0+$/, "$1") : fixed).split(".");
  const sign = value < 0 && /[1-9]/.test(fixed) ? minus : "";
  return `${sign}${grouped(whole)}${fraction ? `${decimalSign()}${fraction}` : ""}`;
}
