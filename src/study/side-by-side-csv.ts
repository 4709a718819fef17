import { plainValue } from "../notebook/display";
import { printPage } from "../notebook/page-csv";
import { say } from "../words/say";
import { valueText } from "./options/print";
import type { SideBySide, SideCell, SideRow } from "./side-by-side";

const valueOfCell = ({ value }: SideCell): string =>
  value.kind === "error" ? value.code : valueText(plainValue(value));
const number = (value: number | undefined): string => (value === undefined ? "" : String(value));

/** A comparison as CSV: values of all options, then differences and shares against the base, then verdicts of checks. */
export function sideBySideCsv({ base, options, groups }: SideBySide): string {
  const names = options.map(({ name }) => name);
  const others = names.flatMap((name, i) => (name === base ? [] : [i]));
  const head = [
    ...[say`Page`, say`Quantity`, say`Key`, say`Unit`],
    ...names,
    ...others.flatMap((i) => [say`${names[i] ?? ""} less ${base}`, say`${names[i] ?? ""} less ${base}, share`]),
    ...names.map((name) => say`${name}, in words`),
  ];
  const words = (cell: SideCell): string => [cell.verdict, cell.isBest ? say`best` : ""].filter(Boolean).join("; ");
  const line = ({ page, name, quantity, unit, cells }: SideRow): string[] => [
    ...[page.name, quantity, name, unit],
    ...cells.map(valueOfCell),
    ...others.flatMap((i) => [number(cells[i]?.difference), number(cells[i]?.share)]),
    ...cells.map(words),
  ];
  const gap = others.flatMap(() => ["", ""]);
  const verdicts = ["", say`Verdict`, "", "", ...names.map(() => ""), ...gap, ...options.map((one) => one.words)];
  return printPage([head, verdicts, ...groups.flatMap(({ rows }) => rows.map(line))]);
}
