import type { SheetTexts } from "../../engine/engine";
import type { CellValue } from "../../engine/value";
import type { Study } from "../carry-out";
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

/** Options that are no columns of the notebook. Plain data. */
export interface OptionsQuestion {
  /** For each value of an option its place among the subject's inputs; −1 where no result hangs on it. */
  readonly places: readonly number[];
  readonly options: OptionTable["options"];
}

export interface OptionRun {
  readonly runner: Runner;
  readonly subject: Subject;
  /** One option after the other; nothing is kept. */
  readonly results: () => Generator<OptionResults, void, void>;
}

const codeOf = (value: CellValue | undefined): string => (value?.kind === "error" ? value.code : "#VALUE!");

/** The inputs of an option: the base's, where the table has nothing else. Rows that no result hangs on are left out. */
function inputsOf(subject: Subject, places: readonly number[]): (values: readonly (Plain | undefined)[]) => Plain[] {
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

/** Where the rows of a table stand among the inputs of a subject. */
export const placesIn = (subject: Subject, rows: readonly StudyRow[]): number[] =>
  rows.map(({ name }) => subject.inputs.findIndex((input) => input.name === name));

function runOf(subject: Subject, sheets: readonly SheetTexts[], { places, options }: OptionsQuestion): OptionRun {
  const inputs = inputsOf(subject, places);
  const inputKinds = kindsIn([valuesOf(subject), ...options.map(({ values }) => inputs(values))]);
  const runner = runnerOf(subject.chain, sheets, inputKinds);
  function* results(): Generator<OptionResults, void, void> {
    for (const { name, values } of options) {
      const given = inputs(values);
      const found = runner.run(given);
      // A kernel knows that there is an error, the engine which one.
      const words = found.some(isError) ? runner.explain(given) : undefined;
      yield { name, results: found.map((value, i) => (isError(value) ? codeOf(words?.[i]) : value)) };
    }
  }
  return { runner, subject, results };
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
  return runOf(subject, source.notebook.pages, { places: placesIn(subject, table.rows), options: table.options });
}

/** The same as a study, for a worker. */
export function* optionsOneByOne(
  subject: Subject,
  sheets: readonly SheetTexts[],
  question: OptionsQuestion,
): Study<readonly OptionResults[]> {
  const run = runOf(subject, sheets, question);
  try {
    const found: OptionResults[] = [];
    for (const one of run.results()) {
      found.push(one);
      yield { done: found.length, of: question.options.length };
    }
    return found;
  } finally {
    run.runner.close();
  }
}
