import { LiveNotebook } from "../../../src/notebook/live";
import { firstOption } from "../../../src/notebook/model";
import { type Ready, StudyClient } from "../../../src/study/client";
import { keyedRows } from "../../../src/study/rows";
import type { VariedInput } from "../../../src/study/spread/spread";
import { subjectOf } from "../../../src/study/subject";
import { isMeasured } from "../../../src/view/studies/spread-settings";
import { workedNotebook } from "../../../src/view/worked-notebook";
import { resultsOf } from "../../study/random-inputs";
import { near } from "../near";

/** What the bench reads when the study is over. */
export interface StudyFigures {
  readonly ready: Ready;
  /** Milliseconds from the question to the answer. */
  readonly spread: number;
  /** Milliseconds from a key's press to the page having taken it, while the study ran. */
  readonly keys: readonly number[];
}

declare global {
  interface Window {
    studyFigures?: () => Promise<StudyFigures>;
  }
}

/** A spread of 10 000 trials over a whole option in the worker, while keys are pressed in the page. */
window.studyFigures = async () => {
  const live = new LiveNotebook(workedNotebook());
  const { notebook } = live;
  const wanted = new Set(resultsOf(notebook, firstOption + 1).map(({ page, row }) => `${page} ${row}`));
  const rows = keyedRows(notebook).filter(({ page, row }) => wanted.has(`${page.id} ${row}`));
  const subject = subjectOf(live, firstOption + 1, rows);
  const varied = subject.inputs.flatMap((one, input): VariedInput[] =>
    isMeasured(one) && typeof one.value === "number" ? [{ input, shape: near(one.value) }] : [],
  );
  const worker = new Worker(new URL("../../../src/study/worker.ts", import.meta.url), { type: "module" });
  const client = new StudyClient(worker);
  const ready = await client.open(subject, notebook.pages);
  const keys: number[] = [];
  document
    .querySelector("#typed")
    ?.addEventListener("keydown", ({ timeStamp }) => keys.push(performance.now() - timeStamp));
  const began = performance.now();
  await client.ask("spread", { varied, trials: 10_000, common: 0.2, seed: 1 });
  return { ready, spread: performance.now() - began, keys };
};
document.documentElement.dataset.ready = "";
