import { Engine } from "../engine/engine";
import type { CellFailure, CellValue } from "../engine/value";
import { plainValue } from "../notebook/display";
import { say } from "../words/say";
import { Misuse, type Output } from "./output";

type Plain = number | string | boolean | null;

const isFailure = (value: CellValue): value is CellFailure => value.kind === "error";

function answer(cells: readonly (readonly CellValue[])[]): Plain | Plain[][] {
  const [[only] = [], ...more] = cells;
  return more.length === 0 && cells[0]?.length === 1 && only
    ? plainValue(only)
    : cells.map((row) => row.map(plainValue));
}

/** One line of `--lines`: the value, or the code and the sentence of the error. */
function lineAnswer(engine: Engine, formula: string): string {
  const cells = engine.calculate(formula);
  const failure = cells.flat().find(isFailure);
  return JSON.stringify(
    failure ? { formula, error: failure.code, message: failure.sentence } : { formula, value: answer(cells) },
  );
}

/** `eval '=...'` prints one value; `eval --lines` answers each line of standard input with a line of JSON. */
export async function evaluate(output: Output, formulas: readonly string[], lines: boolean): Promise<void> {
  const engine = new Engine([{ name: "Formula", rows: [[""]] }]);
  if (lines) {
    if (formulas.length > 0)
      throw new Misuse(say`eval --lines reads its formulas from standard input; leave the formula out.`);
    const text = (await output.input()).replace(/\r\n/g, "\n").replace(/\n$/, "");
    if (text !== "")
      output.write(
        `${text
          .split("\n")
          .map((line) => lineAnswer(engine, line))
          .join("\n")}\n`,
      );
    return;
  }
  const [formula, ...more] = formulas;
  if (formula === undefined || more.length > 0) {
    throw new Misuse(say`eval takes one formula in quotation marks, for example eval '=CONDUCTOR.DROP(300, 10, 50)'.`);
  }
  const cells = engine.calculate(formula);
  const failure = cells.flat().find(isFailure);
  if (failure) throw new Misuse(`${failure.code} ${failure.sentence}`);
  const value = answer(cells);
  output.write(`${Array.isArray(value) ? value.map((row) => row.join("\t")).join("\n") : (value ?? "")}\n`);
}
