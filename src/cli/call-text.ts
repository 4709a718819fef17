import type { ExplainedArgument, Explanation, NamedSource } from "../formula/explanation";
import { insideSentence } from "../formula/inside";
import { numberText } from "../formula/number-text";
import type { NamedCall } from "../notebook/named-calls";
import { shownGiven, stopOf } from "../notebook/shown-given";
import { say } from "../words/say";
import { columns } from "./output";

export const unitWord = (unit: string): string =>
  unit === "" || unit === "1" || unit === "text" || unit === "any" ? "" : ` ${unit}`;

const shown = (value: unknown): string =>
  typeof value === "number"
    ? numberText(value)
    : Array.isArray(value)
      ? `{${value.map(shown).join(", ")}}`
      : value === null
        ? say`blank`
        : String(value);

export const indented = (text: string, by: number): string => text.replace(/^(?=.)/gm, " ".repeat(by));

/** Each source once, however many constants rest on it. */
function sourceLines(explanation: Explanation): string[] {
  const all: (NamedSource | undefined)[] = [...explanation.sources, ...explanation.steps.map(({ source }) => source)];
  return [...new Set(all.flatMap((one) => (one ? [one.line] : [])))].map((line) => say`source: ${line}`);
}

/** Why nothing comes out; in a branch that is not taken nothing has to. */
function refusedLines(refusal: string | undefined, used: boolean): string[] {
  const stop = stopOf(refusal, used);
  if (!stop) return [];
  return [stop.isError ? say`refused: ${stop.sentence}` : stop.sentence];
}

function givenCells(one: ExplainedArgument, used: boolean): string[] {
  const { value, refusal } = shownGiven(one, used);
  const { words, unit, about, by, allowed } = one;
  const isMeasured = typeof value === "number" || Array.isArray(value);
  return [
    words,
    `${shown(value)}${isMeasured ? unitWord(unit) : ""}`,
    refusal ?? say`${about}; ${by === "default" ? say`by default` : say`given`}, allowed ${allowed}`,
  ];
}

function explanationText(explanation: Explanation, used: boolean): string {
  const args = explanation.arguments.map((one) => givenCells(one, used));
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

/** One call of a named function as lines: what it was given, its steps with numbers, what it rests on. */
export function callText({ cells, names, numbers, used, explanation, refusal }: NamedCall): string {
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
