import { say } from "../words/say";
import type { Unit } from "./unit";

/** Names of quantities by their dimensions (kg m s A K cd mol bit money, then angle). */
const kinds: Readonly<Record<string, string>> = {
  "0 0 0 0 0 0 0 0 0 0": say`a plain number`,
  "0 0 0 0 0 0 0 0 0 1": say`an angle`,
  "0 0 -1 0 0 0 0 0 0 1": say`a turning speed`,
  "0 1 0 0 0 0 0 0 0 0": say`a length`,
  "0 2 0 0 0 0 0 0 0 0": say`an area`,
  "0 3 0 0 0 0 0 0 0 0": say`a volume`,
  "1 0 0 0 0 0 0 0 0 0": say`a mass`,
  "0 0 1 0 0 0 0 0 0 0": say`a time`,
  "0 0 -1 0 0 0 0 0 0 0": say`a rate`,
  "0 0 0 0 1 0 0 0 0 0": say`a temperature`,
  "0 1 -1 0 0 0 0 0 0 0": say`a speed`,
  "1 1 -2 0 0 0 0 0 0 0": say`a force`,
  "1 -1 -2 0 0 0 0 0 0 0": say`a pressure`,
  "1 2 -2 0 0 0 0 0 0 0": say`an energy`,
  "1 2 -3 0 0 0 0 0 0 0": say`a power`,
  "1 -3 0 0 0 0 0 0 0 0": say`a density`,
  "1 -2 0 0 0 0 0 0 0 0": say`a mass per area`,
  "0 0 0 1 0 0 0 0 0 0": say`a current`,
  "0 0 1 1 0 0 0 0 0 0": say`a charge`,
  "1 2 -3 -1 0 0 0 0 0 0": say`a voltage`,
  "1 2 -3 -2 0 0 0 0 0 0": say`a resistance`,
  "1 0 -2 -1 0 0 0 0 0 0": say`a magnetic flux density`,
  "0 0 0 0 0 0 0 1 0 0": say`an amount of data`,
  "0 0 0 0 0 0 0 0 1 0": "money",
};

const keyOf = (unit: Unit): string => [...unit.dimensions, unit.angle].map((power) => power + 0).join(" ");

/** What a unit measures, in words; undefined for a quantity without a plain name. */
export const kindOf = (unit: Unit): string | undefined => kinds[keyOf(unit)];

/** Whether two units measure the same quantity, so that one converts to the other. */
export const sameKind = (one: Unit, other: Unit): boolean => keyOf(one) === keyOf(other);
