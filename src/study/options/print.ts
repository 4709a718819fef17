import { printPage } from "../../notebook/page-csv";
import type { Plain } from "../kernel/plain";
import { optionHeader } from "./header";
import type { OptionResults } from "./run";

/** A value with every digit; text that another program might take for a formula gets an apostrophe. */
export function valueText(value: Plain): string {
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return String(value);
  return /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
}

const linesAtOnce = 200;

/** The rows that were asked for, and the options with their results. */
export interface PrintedOptions {
  readonly subject: { readonly results: readonly { readonly name: string }[] };
  readonly results: () => Iterable<OptionResults>;
}

/** The results as CSV, piece by piece: `option`, then a column for each row, full precision. */
export function* printOptions(run: PrintedOptions): Generator<string, void, void> {
  yield printPage([[optionHeader, ...run.subject.results.map(({ name }) => name)]]);
  let lines: string[][] = [];
  for (const { name, results } of run.results()) {
    lines.push([valueText(name), ...results.map(valueText)]);
    if (lines.length < linesAtOnce) continue;
    yield printPage(lines);
    lines = [];
  }
  if (lines.length > 0) yield printPage(lines);
}
