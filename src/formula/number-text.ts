import { withDecimalSign } from "../words/decimal-sign";

const significant = 6;
/** Below this, zeros behind the point would have to be counted. */
const small = 1e-4;

/** A number with a point: six significant digits, a power of ten only where plain digits would be long. */
export function plainNumberText(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return String(value);
  const rounded = Number(value.toPrecision(significant));
  return Math.abs(rounded) < small ? rounded.toExponential() : String(rounded);
}

/** The same as a reader wants it, with the person's decimal sign. */
export const numberText = (value: number): string => withDecimalSign(plainNumberText(value));

/** The parts of `1.1892e-6`: digits and power of ten, 0 where there is none. */
export function numberParts(value: number): { readonly digits: string; readonly power: number } {
  const [digits = "", power = "0"] = numberText(value).split("e");
  return { digits, power: Number(power) };
}
