import { say } from "../../words/say";
import type { KnownArgument, KnownFunction } from "./known-function";

/**
 * The functions of OpenFormula (OASIS OpenDocument 1.3, part 4) that the trade's sums need, in our own words.
 *
 * Arguments in the order of the call; `?` marks one that may be left out, `…` one that may be repeated.
 */
const written: Readonly<Record<string, readonly [title: string, args: string]>> = {
  ABS: [say`Size without its sign`, say`number`],
  ACOS: [say`Angle in radians whose cosine it is`, say`number`],
  AND: [say`TRUE where all conditions hold`, say`condition…`],
  ASIN: [say`Angle in radians whose sine it is`, say`number`],
  ATAN: [say`Angle in radians whose tangent it is`, say`number`],
  ATAN2: [say`Angle in radians of a point`, "x, y"],
  AVERAGE: [say`Mean of the numbers`, say`numbers…`],
  CEILING: [say`Up to a whole multiple`, say`number, multiple?`],
  CHOOSE: [say`The value at a place in a list`, say`place, value…`],
  CONCATENATE: [say`Texts joined`, say`text…`],
  COS: [say`Cosine of an angle in radians`, say`angle`],
  COUNT: [say`How many cells hold numbers`, say`cells…`],
  COUNTA: [say`How many cells hold anything`, say`cells…`],
  COUNTIF: [say`How many cells meet a condition`, say`cells, condition`],
  DATE: [say`A day as a number`, say`year, month, day`],
  DEGREES: [say`Radians in degrees`, say`angle`],
  EXP: [say`e to a power`, say`power`],
  FLOOR: [say`Down to a whole multiple`, say`number, multiple?`],
  IF: [say`One value or another`, say`condition, when true, when false?`],
  IFERROR: [say`Another value where there is an error`, say`value, when error`],
  IFS: [say`The value of the first condition that holds`, say`condition, value…`],
  INDEX: [say`The cell at a place in a block`, say`cells, row, column?`],
  INT: [say`Whole part`, say`number`],
  ISBLANK: [say`TRUE where the cell is empty`, say`cell`],
  ISNUMBER: [say`TRUE where the value is a number`, say`value`],
  LEFT: [say`First letters of a text`, say`text, letters?`],
  LEN: [say`How many letters a text has`, say`text`],
  LN: [say`Natural logarithm`, say`number`],
  LOG10: [say`Logarithm to base 10`, say`number`],
  MATCH: [say`Place of a value in a row or column`, say`value, cells, how?`],
  MAX: [say`Largest number`, say`numbers…`],
  MEDIAN: [say`Middle number`, say`numbers…`],
  MID: [say`Letters out of a text`, say`text, from, letters`],
  MIN: [say`Smallest number`, say`numbers…`],
  MOD: [say`Remainder of a division`, say`number, divisor`],
  NOT: [say`TRUE where the condition does not hold`, say`condition`],
  OR: [say`TRUE where any condition holds`, say`condition…`],
  PI: [say`Circumference over diameter`, ""],
  POWER: [say`A number raised`, say`number, power`],
  PRODUCT: [say`Numbers multiplied`, say`numbers…`],
  RADIANS: [say`Degrees in radians`, say`angle`],
  RIGHT: [say`Last letters of a text`, say`text, letters?`],
  ROUND: [say`To so many digits after the point`, say`number, digits?`],
  ROUNDDOWN: [say`Towards zero, to so many digits`, say`number, digits?`],
  ROUNDUP: [say`Away from zero, to so many digits`, say`number, digits?`],
  SIN: [say`Sine of an angle in radians`, say`angle`],
  SQRT: [say`Square root`, say`number`],
  SUBSTITUTE: [say`A text with a part replaced`, say`text, part, by`],
  SUM: [say`Numbers added`, say`numbers…`],
  SUMIF: [say`Numbers added where a condition is met`, say`cells, condition, numbers?`],
  SUMPRODUCT: [say`Products of rows, added`, say`cells…`],
  SWITCH: [say`The value that belongs to a case`, say`value, case, result…`],
  TAN: [say`Tangent of an angle in radians`, say`angle`],
  TEXT: [say`A number as text`, say`number, format`],
  TEXTJOIN: [say`Texts joined with something between`, say`between, skip empty, text…`],
  XLOOKUP: [say`What stands beside a value that is looked for`, say`value, look in, take from, when missing?`],
};

function argument(text: string): KnownArgument {
  const name = text.replace(/[?…]$/, "");
  return { name, about: "", unit: "", allowed: "", isOptional: text.endsWith("?"), otherwise: "" };
}

export const builtInFunctions: readonly KnownFunction[] = Object.entries(written).map(([name, [title, args]]) => ({
  name,
  title,
  args: args === "" ? [] : args.split(", ").map(argument),
  repeats: args.endsWith("…"),
  isNamed: false,
}));
