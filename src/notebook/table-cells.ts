import { contentOf, isFormula, plainNumberOf } from "../engine/content";
import type { CellValue } from "../engine/value";
import type { Row } from "./model";

/** How a mark between digits is meant where it can be read two ways. */
export type Meaning = "point" | "groups" | "text";

export interface ImportChoice {
  readonly decimal: "." | ",";
  /** Whether a cell that begins with = becomes a formula; otherwise it stays the text it was. */
  readonly formulas: boolean;
  /** How numbers such as 1,234 are meant; undefined while the person has not said. */
  readonly doubtful: Meaning | undefined;
}

const sign = "[+-]?";
/** One mark with three digits after it: a decimal or a thousand. */
const doubtfulNumber = (mark: string): RegExp => new RegExp(`^${sign}[1-9]\\d{0,2}\\${mark}\\d{3}$`);
const withGroups = (group: string, point: string): RegExp =>
  new RegExp(`^${sign}\\d{1,3}(\\${group}\\d{3})+(\\${point}\\d*)?$`);
const commaNumber = new RegExp(`^${sign}(?:\\d+,\\d*|,\\d+)(?:e${sign}\\d+)?$`, "i");

/** The patterns for one decimal sign; a table has many cells, so they are made once. */
const patterns = {
  ".": { doubtful: doubtfulNumber(","), grouped: withGroups(",", ".") },
  ",": { doubtful: doubtfulNumber("."), grouped: withGroups(".", ",") },
};

/** Whether a cell's number can be read two ways under the chosen decimal sign. */
export const isDoubtful = (text: string, decimal: "." | ","): boolean => patterns[decimal].doubtful.test(text.trim());

function number(text: string, { decimal, doubtful }: ImportChoice): string | undefined {
  const trimmed = text.trim();
  const group = decimal === "." ? "," : ".";
  if (isDoubtful(trimmed, decimal)) {
    if (doubtful === "point") return trimmed.replace(group, ".");
    return doubtful === "groups" ? trimmed.replace(group, "") : undefined;
  }
  if (patterns[decimal].grouped.test(trimmed)) return trimmed.replaceAll(group, "").replace(decimal, ".");
  if (decimal === "," && commaNumber.test(trimmed)) return trimmed.replace(",", ".");
  return plainNumberOf(trimmed) === undefined ? undefined : trimmed;
}

/** A cell of a foreign table as it will stand on the page. */
export function importCell(text: string, choice: ImportChoice): string {
  if (isFormula(text)) return choice.formulas ? text : `'${text}`;
  const found = number(text, choice);
  // 007 and numbers of more digits than a cell can hold are names; they stay as they were.
  return found !== undefined && plainNumberOf(found) !== undefined ? found : text;
}

export const importRows = (rows: readonly Row[], choice: ImportChoice): Row[] =>
  rows.map((row) => row.map((text) => importCell(text, choice)));

/** Whether text of the notebook would come back as a number, a flag or a formula. */
const isMistaken = (text: string, decimal: "." | ","): boolean =>
  text !== "" && contentOf(importCell(text, { decimal, formulas: true, doubtful: "groups" })).kind !== "text";

const withSign = (number: string, decimal: "." | ","): string => (decimal === "," ? number.replace(".", ",") : number);

/**
 * A cell as it was typed, for a program with another decimal sign: numbers follow it, formulas keep their own language,
 * and text that would come back as a number gets an apostrophe.
 */
export function exportTyped(text: string, decimal: "." | ","): string {
  const { kind } = contentOf(text);
  if (kind === "number") return withSign(text, decimal);
  return kind === "text" && isMistaken(text, decimal) ? `'${text}` : text;
}

/** What another program would run as a formula, in either width of letters; and an apostrophe of the text's own. */
const runs = /^[=+\-@\t\r\n'\uFF1D\uFF0B\uFF0D\uFF20]/;

/**
 * A value in the place of what was typed. Text that another program would run as a formula, or that would come back as
 * a number, gets an apostrophe; numbers never do.
 */
export function exportValue(value: CellValue, decimal: "." | ","): string {
  switch (value.kind) {
    case "number":
      return withSign(String(value.value), decimal);
    case "flag":
      return value.value ? "TRUE" : "FALSE";
    case "text":
      return runs.test(value.text) || isMistaken(value.text, decimal) ? `'${value.text}` : value.text;
    case "error":
      return value.code;
    case "blank":
      return "";
  }
}
