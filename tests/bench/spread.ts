import { readFolder } from "../../src/cli/folder";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption } from "../../src/notebook/model";
import { finish } from "../../src/study/carry-out";
import { keyedRows } from "../../src/study/rows";
import { runnerOf } from "../../src/study/runner";
import { spread, type VariedInput } from "../../src/study/spread/spread";
import { subjectOf } from "../../src/study/subject";
import { isMeasured } from "../../src/view/studies/spread-settings";
import { resultsOf } from "../study/random-inputs";
import { alternate, short } from "./measure";
import { near } from "./near";

/** Ten thousand trials over all results of an option, all its measured numbers varied. */
export function spreadBench(folder: string, rounds: number): string {
  const live = new LiveNotebook(readFolder(folder));
  const { notebook } = live;
  const wanted = new Set(resultsOf(notebook, firstOption + 1).map(({ page, row }) => `${page} ${row}`));
  const rows = keyedRows(notebook).filter(({ page, row }) => wanted.has(`${page.id} ${row}`));
  const subject = subjectOf(live, firstOption + 1, rows);
  const runner = runnerOf(subject.chain, notebook.pages);
  const varied = subject.inputs.flatMap((one, input): VariedInput[] =>
    isMeasured(one) && typeof one.value === "number" ? [{ input, shape: near(one.value) }] : [],
  );
  const question = { varied, trials: 10_000, common: 0.2, seed: 1 };
  const [time] = alternate(
    [{ name: "spread", runs: 1, once: () => finish(spread(subject, runner, question)) }],
    rounds,
  );
  live.close();
  return `10 000 trials, ${varied.length} inputs varied, common cause 0.2, ${rows.length} results, by ${runner.by}: ${short((time?.micros ?? 0) / 1e6)} s`;
}
