import type { CellValue } from "../../engine/value";
import { outcomeOf, outcomeWords } from "../../notebook/verdict";
import { say } from "../../words/say";
import { numberText } from "./number-text";
import type { RowUnits } from "./row-units";
import { startOf } from "./start-of";
import { isMargin, withUnit } from "./unit-text";

/** A cell's value with its unit; a margin in words. */
export function worthText(value: CellValue, { unit, words }: RowUnits, decimals?: number): string {
  if (value.kind !== "number") return valueText(value);
  return isMargin(unit) ? outcomeWords(outcomeOf(value, "typed")) : withUnit(words(value.value, decimals), unit);
}

/** A cell's value in words; an error shows its sentence. */
export function valueText(value: CellValue, decimals?: number): string {
  switch (value.kind) {
    case "blank":
      return "";
    case "number":
      return numberText(value.value, decimals);
    case "flag":
      return value.value ? say`yes` : say`no`;
    case "error":
      return value.sentence;
    default:
      return startOf(value.text);
  }
}
