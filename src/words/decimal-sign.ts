/** What stands before the decimals of a number that a person reads or types; files and formulas in them have a point. */
export type DecimalSign = "." | ",";

let sign: DecimalSign = ".";

export function useDecimalSign(wanted: DecimalSign): void {
  sign = wanted;
}

export const decimalSign = (): DecimalSign => sign;

/** What stands between numbers in a list: with a decimal comma a comma would not part them. */
export const betweenNumbers = (): string => (sign === "," ? "; " : ", ");

/** Numbers that are written with a point, as they are read; `IEC 60228` and the end of a sentence stay. */
export const withDecimalSign = (plain: string): string =>
  sign === "." ? plain : plain.replace(/(?<=\d)\.(?=\d)/g, sign);
