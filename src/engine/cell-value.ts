import { DetailedCellError, type CellValue as EngineValue } from "hyperformula";
import { say } from "../words/say";
import { sentenceOf, unreadableFormula } from "./sentences";
import { blank, type CellValue } from "./value";

/** A value of the engine's as the rest of the program sees it. */
export function cellValue(value: EngineValue): CellValue {
  if (value === null) return blank;
  if (typeof value === "number") return { kind: "number", value };
  if (typeof value === "boolean") return { kind: "flag", value };
  if (value instanceof DetailedCellError) {
    return { kind: "error", code: value.value, sentence: sentenceOf(value), from: value.address ?? "" };
  }
  return { kind: "text", text: value };
}

/** The value of a formula that could not be read. */
export const unreadable = (formula: string): CellValue => ({
  kind: "error",
  code: "#ERROR!",
  sentence: formula.startsWith("=") ? unreadableFormula : say`a formula begins with =`,
  from: "",
});

/** The value of a formula whose calculation was stopped. */
export const stopped = (sentence: string): CellValue => ({ kind: "error", code: "#NUM!", sentence, from: "" });
