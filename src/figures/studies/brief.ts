import { displayNumber } from "../../notebook/display";
import { say } from "../../words/say";

/** A number as a drawing of a study says it: four digits are enough to read. */
export const brief = (value: number): string =>
  Number.isNaN(value) ? say`no result` : displayNumber(Number(value.toPrecision(4))).replace("-", "\u2212");

/** The same with its unit; shares and plain numbers stand alone. */
export const withUnitOf = (value: number, unit: string): string =>
  unit === "" || unit === "1" || unit === "margin" ? brief(value) : `${brief(value)}\u00a0${unit}`;
