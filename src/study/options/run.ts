import type { CellValue } from "../../engine/value";
import type { FormulaSource } from "../kernel/chain";
import { isError, kindsIn, type Plain } from "../kernel/plain";
import type { StudyRow } from "../rows";
import { type Runner, runnerOf } from "../runner";
import { type Subject, subjectOf, valuesOf } from "../subject";
import type { OptionTable } from "./read";

/** Results of one option: full values, an error as its code (`#NUM!`). */
export interface OptionResults {
  readonly name: string;
  readonly results: readonly Plain[];
}

export interface OptionRun {
  readonly runner: Runner;
  readonly subject: Subject;
  /** One option after the other; nothing is kept. */
  readonly results: () => Generator<OptionResults, void, void>;
}

const codeOf = (value: CellValue | undefined): string => (value?.kind === "error" ? value.code : "#VALUE!");

/** The inputs of an option: the base's, where the table has nothing else. Rows that no result hangs on are left out. */
function inputsOf(subject: Subject, table: OptionTable): (values: readonly (Plain | undefined)[]) => Plain[] {
  const places = table.rows.map(({ name }) => subject.inputs.findIndex((input) => input.name === name));
  const base = valuesOf(subject);
  return (values) => {
    const inputs = [...base];
    places.forEach((place, i) => {
      const value = values[i];
      if (place >= 0 && value !== undefined) inputs[place] = value;
    });
    return inputs;
  };
}

/**
 * The results of many options that are no columns of the notebook.
 *
 * @param column the base option's column.
 * @param wanted rows to give, in this order.
 */
export function runOptions(
  source: FormulaSource,
  column: number,
  table: OptionTable,
  wanted: readonly StudyRow[],
): OptionRun {
  const subject = subjectOf(source, column, wanted);
  const inputs = inputsOf(subject, table);
  const inputKinds = kindsIn([valuesOf(subject), ...table.options.map(({ values }) => inputs(values))]);
  const runner = runnerOf(subject.chain, source.notebook.pages, inputKinds);
  function* results(): Generator<OptionResults, void, void> {
    for (const { name, values } of table.options) {
      const given = inputs(values);
      const found = runner.run(given);
      // A kernel knows that there is an error, the engine which one.
      const words = found.some(isError) ? runner.explain(given) : undefined;
      yield { name, results: found.map((value, i) => (isError(value) ? codeOf(words?.[i]) : value)) };
    }
  }
  return { runner, subject, results };
}
