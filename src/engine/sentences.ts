import type { DetailedCellError } from "hyperformula";
import { say } from "../words/say";

export const unreadableFormula = say`the formula cannot be read: check brackets, commas and quotation marks`;

/** What the engine's own errors mean and what to do, by code; a named function brings its own sentence. */
const byCode: Readonly<Record<string, string>> = {
  "#DIV/0!": say`division by zero or by a blank cell: check the divisor`,
  "#NAME?": say`a name in the formula is not known: check its spelling`,
  "#VALUE!": say`text stands where a number is due, or the arguments do not fit the function`,
  "#NUM!": say`the result is not a finite number: check the inputs`,
  "#N/A": say`nothing matches: check the value that is looked for`,
  "#REF!": say`a cell that the formula used is gone: point it to another`,
  "#CYCLE!": say`the formula depends on its own cell: break the ring`,
  "#SPILL!": say`the result needs more cells than are free: clear the cells beside or below`,
  "#ERROR!": unreadableFormula,
  "#LIC!": say`the engine's licence key is not accepted: check the build settings`,
};

const unknownFunction = /^Function name (\S+) not recognized/;
const unknownName = /^Named expression (\S+) not recognized/;
/** The engine's own short messages; a sentence of ours says more. */
const terse =
  /^(Parsing error|Value (too |cannot|small|large)|Wrong|Number|Integer|Cell range expected|Range|Value not found|NaN|Invalid|Address|Sheet does not exist|No space|Circular)/i;

/** One sentence for an error value. */
export function sentenceOf(error: DetailedCellError): string {
  const { message, value } = error;
  const fn = unknownFunction.exec(message);
  if (fn) return say`function ${fn[1] ?? ""} is not known: check its spelling, or pick one from the list of functions`;
  const name = unknownName.exec(message);
  if (name)
    return say`${name[1] ?? ""} is not known: a cell is written as letter and number, a text in quotation marks`;
  if (message === "" || terse.test(message) || value === "#ERROR!") {
    return message.includes("failed in itself") ? message : (byCode[value] ?? message);
  }
  return message;
}
