import { readFolder } from "../../src/cli/folder";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption } from "../../src/notebook/model";
import { finish } from "../../src/study/carry-out";
import { keyedRows } from "../../src/study/rows";
import { runnerOf } from "../../src/study/runner";
import { spread, type VariedInput } from "../../src/study/spread/spread";
import { subjectOf } from "../../src/study/subject";
import { resultsOf } from "../study/random-inputs";
import { alternate, short } from "./measure";

/** Ten thousand trials over all results of an option, all its measured numbers varied. */
export function spreadBench(folder: string, rounds: number): string {
  const live = new LiveNotebook(readFolder(folder));
  const { notebook } = live;
  const wanted = new Set(resultsOf(notebook, firstOption + 1).map(({ page, row }) => `${page} ${row}`));
  const rows = keyedRows(notebook).filter(({ page, row }) => wanted.has(`${page.id} ${row}`));
  const subject = subjectOf(live, firstOption + 1, rows);
  const runner = runnerOf(subject.chain, notebook.pages);
  const varied = subject.inputs.flatMap(({ value, choices, name }, input): VariedInput[] =>
    typeof value === "number" && value !== 0 && !choices && !Number.isInteger(value) && !name.includes("lead")
      ? [{ input, shape: { kind: "three points", low: value * 0.98, likely: value, high: value * 1.02 } }]
      : [],
  );
  const question = { varied, trials: 10_000, common: 0.2, seed: 1 };
  const [time] = alternate(
    [{ name: "spread", runs: 1, once: () => finish(spread(subject, runner, question)) }],
    rounds,
  );
  live.close();
  return `10 000 trials, ${varied.length} inputs varied, common cause 0.2, ${rows.length} results, by ${runner.by}: ${short((time?.micros ?? 0) / 1e6)} s`;
}
