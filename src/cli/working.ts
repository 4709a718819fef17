import { displayValue } from "../notebook/display";
import { LiveNotebook } from "../notebook/live";
import { positionOf, readAddress } from "../notebook/rows";
import { type NamedValue, type Working, workingOf } from "../notebook/working";
import { say } from "../words/say";
import { callText, indented, unitWord } from "./call-text";
import { readFolder } from "./folder";
import { columns, Misuse, type Output } from "./output";

const valueText = ({ value, unit }: NamedValue): string => `${displayValue(value)}${unitWord(unit)}`;

function listText(title: string, cells: readonly NamedValue[]): string {
  if (cells.length === 0) return "";
  const rows = cells.map((cell) => [cell.address, cell.quantity, valueText(cell)]);
  const table = columns(rows, () => false);
  return `${title}\n${indented(table, 2)}`;
}

function limitLines({ limits }: Working): string[] {
  if (!limits) return [];
  const { low, high, likely, choices, plausible } = limits;
  return [
    ...(choices ? [say`choices: ${choices.join(", ")}`] : []),
    ...(low !== undefined || high !== undefined
      ? [
          say`plausible: ${low ?? "…"} to ${high ?? "…"}${likely === undefined ? "" : say`, likely ${likely}`}${plausible === false ? say`; this value is outside` : ""}`,
        ]
      : []),
  ];
}

/** Inputs behind a result that lie outside what is plausible for them. */
const implausibleLines = ({ parts }: Working): string[] => {
  const outside = parts.filter(({ plausible }) => plausible === false).map(({ address }) => address);
  return outside.length > 0 ? [say`outside what is plausible: ${outside.join(", ")}`] : [];
};

function workingText(working: Working): string {
  const { value, formula, calls, note } = working;
  return [
    `${working.quantity || working.cell}${working.option ? `, ${working.option}` : ""}: ${valueText(working)}`,
    say`${working.address}, cell ${working.cell}`,
    ...(value.kind === "error" ? [`${value.code} ${value.sentence}`] : []),
    working.kind === "result" ? say`basis: ${working.basis}` : say`input, basis: ${working.basis}`,
    ...limitLines(working),
    ...implausibleLines(working),
    ...(formula ? [`=${formula.cells}`] : []),
    ...(formula?.names ? [formula.names] : []),
    ...(formula?.numbers ? [formula.numbers] : []),
    ...(note ? [note] : []),
    listText(say`fed by`, working.parts),
    ...calls.map((call) => `\n${callText(call)}`),
    listText(`\n${say`feeds`}`, working.usedBy),
  ]
    .filter((line) => line !== "")
    .join("\n");
}

/** Prints the working of one cell, `Supply.drop@Cruiser`. */
export function printWorking(output: Output, args: readonly string[], json: boolean): void {
  const [folder, address, ...more] = args;
  if (folder === undefined || address === undefined || more.length > 0) {
    throw new Misuse(
      say`working takes a folder and a cell, for example working sheets/three-hulls Supply.drop@Cruiser.`,
    );
  }
  const live = new LiveNotebook(readFolder(output.path(folder)));
  const working = workingOf(live, positionOf(live.notebook, readAddress(address)));
  if (!working) throw new Misuse(say`There is no cell ${address}.`);
  output.write(`${json ? JSON.stringify(working, undefined, 2) : workingText(working)}\n`);
}
