import type { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, type Notebook, type Row } from "../../../src/notebook/model";
import type { Plain } from "../../../src/study/kernel/plain";
import { pick } from "../../formula/random-expression";

/** Typed cells that upset a calculation: the ends of the number line, blanks, words, flags and texts like dates. */
const hostileTexts = [
  ...["0", "-1", "1", "0.1", "0.2", "0.3", "1e300", "-1e300", "1e-300", "5e-324", "9007199254740993", "1e21", "1e-7"],
  ...["", "", "abc", "ABC", "Abé", "not measured yet", "yes", "TRUE", "FALSE", "true"],
  ...["'12", "007", "2027-01-11", "10%", "4/0", "1:30", "'"],
];

export const randomText = (random: () => number, wild: number): string => {
  if (random() < wild) return pick(random, hostileTexts);
  const value = (random() - 0.3) * 10 ** (4 * random() - 1);
  // A cell takes fifteen digits; more would be text.
  return String(random() < 0.3 ? Math.round(value) : Number(value.toPrecision(12)));
};

const numberCalls = ["ABS", "SQRT", "EXP", "LN", "LOG10", "SIN", "COS", "TAN", "ATAN", "ASIN", "ACOS", "INT", "SIGN"];
const pairCalls = ["POWER", "MOD", "ATAN2", "ROUND", "ROUNDUP", "ROUNDDOWN", "CEILING", "FLOOR", "LOG"];
const foldCalls = ["SUM", "MIN", "MAX", "AVERAGE", "COUNT", "PRODUCT", "COUNTA", "COUNTBLANK"];
const asks = ["ISNUMBER", "ISTEXT", "ISBLANK", "ISERROR", "ISLOGICAL", "ISNONTEXT"];
const words = ['"abc"', '"yes"', '"ABC"', '""', '"not measured yet"'];
const criteria = ['"<0"', '">=1"', '"abc"', '"<>yes"', '"=2"', '"<>0"', "3", '"<=0.5"'];

/** A random cell formula over the rows above, without `=`; every part that kernels take in occurs. */
function randomFormula(random: () => number, rows: number, depth: number): string {
  const cell = () => `E${2 + Math.floor(random() * rows)}`;
  const block = () => {
    const from = 2 + Math.floor(random() * (rows - 1));
    return `E${from}:E${Math.min(rows + 1, from + 1 + Math.floor(random() * 5))}`;
  };
  const below = (): string => randomFormula(random, rows, depth - 1);
  const leaf = () =>
    pick(random, [cell, cell, cell, cell, () => pick(random, ["0", "1", "2", "0.5", "100", "1e-3", "TRUE", "PI()"])])();
  if (depth <= 0) return leaf();
  const relation = () => pick(random, ["<", "<=", ">", ">=", "=", "<>"]);
  const test = (): string =>
    pick(random, [
      () => `${below()}${relation()}${below()}`,
      () => `${cell()}=${pick(random, words)}`,
      () => `${cell()}<>${pick(random, words)}`,
      () => `${pick(random, asks)}(${below()})`,
      () => `${pick(random, ["AND", "OR"])}(${test()},${below()})`,
      () => `${pick(random, ["AND", "OR"])}(${block()})`,
      () => `NOT(${test()})`,
      below,
    ])();
  const shapes: readonly (() => string)[] = [
    () => `(${below()}${pick(random, ["+", "-", "*", "/", "^"])}${below()})`,
    () => `${below()}${pick(random, ["+", "-", "*", "/"])}${below()}`,
    () => `-${below()}`,
    () => `${cell()}%`,
    () => `${pick(random, numberCalls)}(${below()})`,
    () => `${pick(random, pairCalls)}(${below()},${below()})`,
    () => `${pick(random, foldCalls)}(${block()})`,
    () => `${pick(random, foldCalls)}(${block()},${below()},${cell()})`,
    () => `${pick(random, ["SUM", "MIN", "MAX"])}((${block()})*2)`,
    () => `IF(${test()},${below()},${below()})`,
    () => `IF(${test()},${below()})`,
    () => `(${test()})`,
    () => `IFERROR(${below()},${below()})`,
    () => `COUNTIF(${block()},${pick(random, criteria)})`,
    () => `DATEVALUE("2024-02-29")+${below()}`,
    () => `ROWS(${block()})`,
    () => `CONDUCTOR.DROP(${below()},${cell()},70,${cell()})`,
    () => `TUNNEL.RECESS(${below()},${cell()},12)`,
    () => `AWG.AREA(${cell()})`,
    () => `HOURS.JOIN(${block()},0.2)`,
    () => `SHELL.SLOPE(${cell()},${below()},${cell()})`,
    () => `CONVERT(${below()},"kn","m/s")`,
  ];
  const texts: readonly (() => string)[] = [
    () => `IF(${test()},"not measured yet",${below()})`,
    () => `IF(${test()},${below()},"")`,
    () => `TEXTJOIN("; ",TRUE(),IF(${block()}<1,"low",""))`,
    () => `${below()}&${pick(random, words)}`,
    () => `TEXT(${below()},${pick(random, ['"0"', '"0.0"', '"0.000"'])})`,
    () => `TEXT(DATEVALUE("2027-01-11")+INT(${cell()}),"YYYY-MM-DD")`,
    () => `TEXT(DATEVALUE("2027-01-11")+${cell()},"YYYY-MM-DD")`,
  ];
  return pick(random, depth === 3 && random() < 0.06 ? texts : shapes)();
}

/** A notebook of one option page: typed rows, then formulas, each over all rows above it. */
export function randomNotebook(random: () => number, inputs: number, formulas: number, wild: number): Notebook {
  const line = (i: number, text: string): Row => [`Row ${i}`, `k${i}`, "1", "", text];
  const rows: Row[] = [["Quantity", "Key", "Unit", "Basis", "Only"]];
  for (let i = 0; i < inputs; i++) rows.push(line(i, randomText(random, wild)));
  for (let i = inputs; i < inputs + formulas; i++) rows.push(line(i, `=${randomFormula(random, i, 3)}`));
  const page = { id: "page", name: "Page", file: "page.csv", rows };
  return { about: { version: 1, title: "Random", pages: [{ name: "Page", file: "page.csv" }] }, pages: [page] };
}

export const at = (row: number) => ({ page: "page", row, column: firstOption });

/** A value as a kernel gives it: an error as NaN. */
export function shown(live: LiveNotebook, position: { page: string; row: number; column: number }): Plain {
  const value = live.value(position);
  switch (value.kind) {
    case "number":
    case "flag":
      return value.value;
    case "text":
      return value.text;
    case "blank":
      return null;
    case "error":
      return Number.NaN;
  }
}
