import { html, nothing, type TemplateResult } from "lit/html.js";
import type { ClassEntry } from "../../course/class-list";
import { missingFrom, talliesOf, traineeResults } from "../../course/results";
import type { MarkedFile } from "../../course/trainee-file";
import { listed } from "../../words/isolated";
import { say } from "../../words/say";

/** What a class's answers come to: right answers of each trainee, mistakes by name, who is missing. */
export function classResults(files: readonly MarkedFile[], entries: readonly ClassEntry[]): TemplateResult {
  const missing = missingFrom(files, entries);
  // What nobody answered is no result.
  const tallies = talliesOf(files).filter(({ kind }) => kind !== "blank");
  return html`<div class="preview results"><table>
      <caption>${say`Right answers`}</caption>
      <thead><tr><th scope="col">${say`Trainee`}</th><th scope="col">${say`Right`}</th><th scope="col">${say`Not marked`}</th></tr></thead>
      <tbody>${traineeResults(files).map(
        ({ trainee, right, asked, refused }) =>
          html`<tr><th scope="row">${trainee}</th><td>${say`${right} of ${asked}`}</td><td>${refused.join("; ")}</td></tr>`,
      )}</tbody>
    </table></div>
    <div class="preview results" tabindex="0" role="region" aria-label=${say`Results by mistake`}><table>
      <caption>${say`Results by mistake`}</caption>
      <thead><tr><th scope="col">${say`Task`}</th><th scope="col">${say`Answer`}</th><th scope="col">${say`Outcome`}</th><th scope="col">${say`How many`}</th><th scope="col">${say`Who`}</th></tr></thead>
      <tbody>${tallies.map(
        ({ task, title, answer, outcome, trainees }) =>
          html`<tr><td>${task} ${title}</td><td>${answer}</td><td>${outcome}</td><td class="right">${trainees.length}</td><td>${listed(trainees)}</td></tr>`,
      )}</tbody>
    </table></div>
    ${missing.length > 0 ? html`<p>${say`No file came from ${listed(missing)}.`}</p>` : nothing}`;
}
