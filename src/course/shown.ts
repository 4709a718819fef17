import { numberText } from "../formula/number-text";
import type { Scalar } from "./scalar";

const raised: Readonly<Record<string, string>> = { "2": "²", "3": "³" };
const words: Readonly<Record<string, string>> = {
  "1": "",
  "": "",
  degC: " °C",
  deg: "°",
  "ohm/km": " Ω/km",
  mohm: " mΩ",
  ohm: " Ω",
};

/** A unit behind its number, as people write it: ` m²`, `°`, nothing for a plain number. */
export const shownUnit = (unit: string): string =>
  words[unit] ?? ` ${unit.replace(/(?<=m)[23](?=$|[^\w])/g, (power) => raised[power] as string)}`;

/** A value with its unit. */
export const shown = (value: Scalar, unit: string): string =>
  typeof value === "number" ? `${numberText(value)}${shownUnit(unit)}` : value;
