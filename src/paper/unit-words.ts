import { shown } from "../figures/draw/number";
import { displayNumber } from "../notebook/display";

const raised: Readonly<Record<string, string>> = { "2": "²", "3": "³" };

/** Units that are words, and so have a plural. */
const counted = ["day", "week", "year"];

/** A unit as it is printed behind a number; a plain number and a sum of money have none. */
export const unitWords = (unit: string, value: number): string =>
  counted.includes(unit) && value !== 1 ? `${unit}s` : unitSign(unit);

const unitSign = (unit: string): string =>
  ["1", "margin", "money", "any", "text"].includes(unit)
    ? ""
    : unit
        .replace(/\bdegC\b/g, "°C")
        .replace(/\bdeg\b/g, "°")
        .replace(/(k|m|M|µ|)ohm\b/g, "$1Ω")
        .replace(/([A-Za-z])([23])(?![\w.])/g, (_, letter: string, power: string) => letter + raised[power])
        .replace(/\bmoney\b/, "each")
        .replaceAll(" ", "\u00a0");

const significant = 4;

/** A number for paper: with the row's digits, money with two, anything else with four significant ones. */
export function numberWords(value: number, unit: string, digits: number | undefined): string {
  if (unit === "money") return shown(value, 2);
  if (digits !== undefined) return shown(value, digits);
  if (Number.isInteger(value)) return shown(value);
  return displayNumber(Number(value.toPrecision(significant))).replace("-", "\u2212");
}
