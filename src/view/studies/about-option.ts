import { html, type TemplateResult } from "lit/html.js";
import { optionsOf } from "../../notebook/model";
import { say } from "../../words/say";
import type { Bench } from "./bench";
import { byPage, choose, chooseFrom } from "./choose";

/** Chooses the option that is studied. */
export const chooseOption = (bench: Bench, changed: () => void): TemplateResult =>
  choose(
    say`Option`,
    optionsOf(bench.desk.notebook).map((name) => ({ value: name, label: name })),
    bench.option,
    (option) => {
      bench.option = option;
      changed();
    },
  );

/** Chooses the result that is looked at. */
export function chooseResult(bench: Bench, changed: () => void): TemplateResult {
  const results = bench.results();
  if (results.length === 0)
    return html`<p class="short">${say`${bench.option} has no row that is calculated to a number.`}</p>`;
  return chooseFrom(say`Result`, byPage(results), bench.resultRow().name, (name) => {
    bench.result = name;
    changed();
  });
}
