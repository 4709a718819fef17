import type { KnownArgument, KnownFunction } from "./known-function";

/**
 * The functions of OpenFormula (OASIS OpenDocument 1.3, part 4) that the trade's sums need, in our own words.
 *
 * Arguments in the order of the call; `?` marks one that may be left out, `…` one that may be repeated.
 */
const written: Readonly<Record<string, readonly [title: string, args: string]>> = {
  ABS: ["Size without its sign", "number"],
  ACOS: ["Angle in radians whose cosine it is", "number"],
  AND: ["TRUE where all conditions hold", "condition…"],
  ASIN: ["Angle in radians whose sine it is", "number"],
  ATAN: ["Angle in radians whose tangent it is", "number"],
  ATAN2: ["Angle in radians of a point", "x, y"],
  AVERAGE: ["Mean of the numbers", "numbers…"],
  CEILING: ["Up to a whole multiple", "number, multiple?"],
  CHOOSE: ["The value at a place in a list", "place, value…"],
  CONCATENATE: ["Texts joined", "text…"],
  COS: ["Cosine of an angle in radians", "angle"],
  COUNT: ["How many cells hold numbers", "cells…"],
  COUNTA: ["How many cells hold anything", "cells…"],
  COUNTIF: ["How many cells meet a condition", "cells, condition"],
  DATE: ["A day as a number", "year, month, day"],
  DEGREES: ["Radians in degrees", "angle"],
  EXP: ["e to a power", "power"],
  FLOOR: ["Down to a whole multiple", "number, multiple?"],
  IF: ["One value or another", "condition, when true, when false?"],
  IFERROR: ["Another value where there is an error", "value, when error"],
  IFS: ["The value of the first condition that holds", "condition, value…"],
  INDEX: ["The cell at a place in a block", "cells, row, column?"],
  INT: ["Whole part", "number"],
  ISBLANK: ["TRUE where the cell is empty", "cell"],
  ISNUMBER: ["TRUE where the value is a number", "value"],
  LEFT: ["First letters of a text", "text, letters?"],
  LEN: ["How many letters a text has", "text"],
  LN: ["Natural logarithm", "number"],
  LOG10: ["Logarithm to base 10", "number"],
  MATCH: ["Place of a value in a row or column", "value, cells, how?"],
  MAX: ["Largest number", "numbers…"],
  MEDIAN: ["Middle number", "numbers…"],
  MID: ["Letters out of a text", "text, from, letters"],
  MIN: ["Smallest number", "numbers…"],
  MOD: ["Remainder of a division", "number, divisor"],
  NOT: ["TRUE where the condition does not hold", "condition"],
  OR: ["TRUE where any condition holds", "condition…"],
  PI: ["Circumference over diameter", ""],
  POWER: ["A number raised", "number, power"],
  PRODUCT: ["Numbers multiplied", "numbers…"],
  RADIANS: ["Degrees in radians", "angle"],
  RIGHT: ["Last letters of a text", "text, letters?"],
  ROUND: ["To so many digits after the point", "number, digits?"],
  ROUNDDOWN: ["Towards zero, to so many digits", "number, digits?"],
  ROUNDUP: ["Away from zero, to so many digits", "number, digits?"],
  SIN: ["Sine of an angle in radians", "angle"],
  SQRT: ["Square root", "number"],
  SUBSTITUTE: ["A text with a part replaced", "text, part, by"],
  SUM: ["Numbers added", "numbers…"],
  SUMIF: ["Numbers added where a condition is met", "cells, condition, numbers?"],
  SUMPRODUCT: ["Products of rows, added", "cells…"],
  SWITCH: ["The value that belongs to a case", "value, case, result…"],
  TAN: ["Tangent of an angle in radians", "angle"],
  TEXT: ["A number as text", "number, format"],
  TEXTJOIN: ["Texts joined with something between", "between, skip empty, text…"],
  XLOOKUP: ["What stands beside a value that is looked for", "value, look in, take from, when missing?"],
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
