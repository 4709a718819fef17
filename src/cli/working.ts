import type { Explanation, NamedSource } from "../formula/explanation";
import { insideSentence } from "../formula/inside";
import { numberText } from "../formula/number-text";
import { displayValue } from "../notebook/display";
import { LiveNotebook } from "../notebook/live";
import type { NamedCall } from "../notebook/named-calls";
import { positionOf, readAddress } from "../notebook/rows";
import { type NamedValue, type Working, workingOf } from "../notebook/working";
import { say } from "../words/say";
import { readFolder } from "./folder";
import { columns, Misuse, type Output } from "./output";

const unitWord = (unit: string): string =>
  unit === "" || unit === "1" || unit === "text" || unit === "any" ? "" : ` ${unit}`;

const shown = (value: unknown): string =>
  typeof value === "number"
    ? numberText(value)
    : Array.isArray(value)
      ? `{${value.map(shown).join(", ")}}`
      : String(value);

const indented = (text: string, by: number): string => text.replace(/^(?=.)/gm, " ".repeat(by));

/** Each source once, however many constants rest on it. */
function sourceLines(explanation: Explanation): string[] {
  const all: (NamedSource | undefined)[] = [...explanation.sources, ...explanation.steps.map(({ source }) => source)];
  return [...new Set(all.flatMap((one) => (one ? [one.line] : [])))].map((line) => say`source: ${line}`);
}

/** Why nothing comes out; in a branch that is not taken nothing has to. */
function refusedLines(refusal: string | undefined, used: boolean): string[] {
  if (!refusal) return [];
  return [used ? say`refused: ${refusal}` : say`not worked out: this branch is not taken`];
}

function explanationText(explanation: Explanation, used: boolean): string {
  const args = explanation.arguments.map(({ words, value, given, unit, about, by, allowed, refusal }) => [
    words,
    refusal === undefined ? `${shown(value)}${unitWord(unit)}` : shown(given),
    (used ? refusal : refusal && refusedLines(refusal, used)[0]) ??
      say`${about}; ${by === "default" ? say`by default` : say`given`}, allowed ${allowed}`,
  ]);
  const constants = explanation.constants.map(({ words, value, unit, about, source }) => [
    words,
    `${numberText(value)}${unitWord(unit)}`,
    `${about}; ${source.line}`,
  ]);
  const steps = explanation.steps
    .filter(({ reached }) => reached)
    .flatMap(({ symbols, numbers, value, unit, why, words, refusal }) => [
      `${symbols.text}   (${why})`,
      ...(numbers
        ? [indented(`${numbers.text}${value === undefined ? "" : ` = ${shown(value)}${unitWord(unit)}`}`, 2)]
        : []),
      ...(words ? [indented(words, 2)] : []),
      ...refusedLines(refusal, used).map((line) => indented(line, 2)),
    ]);
  return [
    explanation.ownOf === undefined
      ? explanation.title
      : say`${explanation.title} (the notebook's own function, page ${explanation.ownOf})`,
    columns([...args, ...constants], () => false),
    ...steps,
    say`valid: ${explanation.valid}`,
    say`inside: ${insideSentence(explanation)}`,
    ...(explanation.caution ? [say`caution: ${explanation.caution}`] : []),
    ...sourceLines(explanation),
  ].join("\n");
}

function callText({ cells, names, numbers, used, explanation, refusal }: NamedCall): string {
  const result =
    explanation?.result === undefined ? "" : ` = ${shown(explanation.result)}${unitWord(explanation.unit)}`;
  return [
    `${cells}${used ? "" : `   (${say`in a branch that is not taken`})`}`,
    indented(
      [
        names,
        numbers + result,
        ...refusedLines(refusal, used),
        ...(explanation ? [explanationText(explanation, used)] : []),
      ].join("\n"),
      2,
    ),
  ].join("\n");
}

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
