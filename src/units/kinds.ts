import type { Unit } from "./unit";

/** Names of quantities by their dimensions (kg m s A K cd mol bit money, then angle). */
const kinds: Readonly<Record<string, string>> = {
  "0 0 0 0 0 0 0 0 0 0": "a plain number",
  "0 0 0 0 0 0 0 0 0 1": "an angle",
  "0 0 -1 0 0 0 0 0 0 1": "a turning speed",
  "0 1 0 0 0 0 0 0 0 0": "a length",
  "0 2 0 0 0 0 0 0 0 0": "an area",
  "0 3 0 0 0 0 0 0 0 0": "a volume",
  "1 0 0 0 0 0 0 0 0 0": "a mass",
  "0 0 1 0 0 0 0 0 0 0": "a time",
  "0 0 -1 0 0 0 0 0 0 0": "a rate",
  "0 0 0 0 1 0 0 0 0 0": "a temperature",
  "0 1 -1 0 0 0 0 0 0 0": "a speed",
  "1 1 -2 0 0 0 0 0 0 0": "a force",
  "1 -1 -2 0 0 0 0 0 0 0": "a pressure",
  "1 2 -2 0 0 0 0 0 0 0": "an energy",
  "1 2 -3 0 0 0 0 0 0 0": "a power",
  "1 -3 0 0 0 0 0 0 0 0": "a density",
  "1 -2 0 0 0 0 0 0 0 0": "a mass per area",
  "0 0 0 1 0 0 0 0 0 0": "a current",
  "0 0 1 1 0 0 0 0 0 0": "a charge",
  "1 2 -3 -1 0 0 0 0 0 0": "a voltage",
  "1 2 -3 -2 0 0 0 0 0 0": "a resistance",
  "1 0 -2 -1 0 0 0 0 0 0": "a magnetic flux density",
  "0 0 0 0 0 0 0 1 0 0": "an amount of data",
  "0 0 0 0 0 0 0 0 1 0": "money",
};

const keyOf = (unit: Unit): string => [...unit.dimensions, unit.angle].map((power) => power + 0).join(" ");

/** What a unit measures, in words; undefined for a quantity without a plain name. */
export const kindOf = (unit: Unit): string | undefined => kinds[keyOf(unit)];

/** Whether two units measure the same quantity, so that one converts to the other. */
export const sameKind = (one: Unit, other: Unit): boolean => keyOf(one) === keyOf(other);
