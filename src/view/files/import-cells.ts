import { isFormula, plainNumberOf } from "../../engine/content";
import type { Row } from "../../notebook/model";
import type { Meaning } from "../edits/reading";

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

/** Whether a cell's number can be read two ways under the chosen decimal sign. */
export const isDoubtful = (text: string, decimal: "." | ","): boolean =>
  doubtfulNumber(decimal === "." ? "," : ".").test(text.trim());

function number(text: string, { decimal, doubtful }: ImportChoice): string | undefined {
  const trimmed = text.trim();
  const group = decimal === "." ? "," : ".";
  if (isDoubtful(trimmed, decimal)) {
    if (doubtful === "point") return trimmed.replace(group, ".");
    return doubtful === "groups" ? trimmed.replace(group, "") : undefined;
  }
  if (withGroups(group, decimal).test(trimmed)) return trimmed.replaceAll(group, "").replace(decimal, ".");
  if (decimal === "," && new RegExp(`^${sign}\\d+,\\d+(e${sign}\\d+)?$`, "i").test(trimmed))
    return trimmed.replace(",", ".");
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
