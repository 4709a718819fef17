import type { CellValue } from "../../engine/value";
import { numberText } from "./number-text";

/** A cell's value in words; an error shows its sentence. */
export function valueText(value: CellValue, decimals?: number): string {
  switch (value.kind) {
    case "blank":
      return "";
    case "number":
      return numberText(value.value, decimals);
    case "flag":
      return value.value ? "yes" : "no";
    case "error":
      return value.sentence;
    default:
      return value.text;
  }
}
