import { html, nothing, type TemplateResult } from "lit/html.js";
import { resultSpread } from "../../figures/studies/result-spread";
import { spreadSettling } from "../../figures/studies/spread-settling";
import { percentWords } from "../../study/sentences";
import type { SpreadAnswer } from "../../study/spread/spread";
import { percentiles, type ResultSpread } from "../../study/spread/summary";
import { say } from "../../words/say";
import { numberText } from "../shown/number-text";
import { unitText } from "../shown/unit-text";
import { figureBox } from "./figure-box";

interface Showing {
  /** Place of the result that is drawn. */
  readonly shown: number;
  readonly draw: (place: number) => void;
  /** Checks that were left out because they are open. */
  readonly open: number;
}

/** What came out of the trials: the chosen result drawn, all results that move as a table. */
export function spreadTable(answer: SpreadAnswer, { shown: drawn, draw, open }: Showing): TemplateResult {
  const { results, trials, seed, common } = answer;
  const moving = results.filter(({ least, most, lost }, i) => i === 0 || most > least || lost > 0);
  const steady = results.length - moving.length;
  const shown = moving[drawn] ?? results[0];
  const value = (one: number) => (Number.isNaN(one) ? "" : numberText(one));
  const line = (one: ResultSpread, i: number) => html`<tr>
    <th scope="row">${one.quantity} <span class="soft">${one.name}${one.isCheck || one.unit === "1" ? nothing : `, ${unitText(one.unit)}`}</span></th>
    ${one.percentiles.map((figure) => html`<td class="right">${value(figure)}</td>`)}
    <td class="right">${one.chance === undefined ? "" : percentWords(one.chance)}</td>
    <td class="right">±${value(Number(one.error80.toPrecision(2)))}</td>
    <td>${one.lost > 0 ? say`${one.lost} trials without a result` : nothing}<button type="button" aria-pressed=${i === drawn} aria-label=${say`Draw ${one.name}`} @click=${() => draw(i)}>${say`Draw`}</button></td>
  </tr>`;
  return html`${
    shown
      ? html`<div class="figures">${figureBox(resultSpread(shown))}${figureBox(spreadSettling(shown))}</div>`
      : nothing
  }
    <div class="study-table" tabindex="0" role="region" aria-label=${say`How the results spread`}><table>
      <thead><tr><th scope="col">${say`Result`}</th>${percentiles.map((share) => html`<th scope="col" class="right">P${100 * share}</th>`)}<th scope="col" class="right">${say`Chance that it holds`}</th><th scope="col" class="right">${say`P80 is good to`}</th><th scope="col">${say`Note`}</th></tr></thead>
      <tbody>${moving.map(line)}</tbody>
    </table></div>
    <p class="soft">${say`${trials} trials, seed ${seed}, common cause ${common}.${steady > 0 ? say` ${steady} checks are the same in every trial.` : ""}${open > 0 ? say` Left out: ${open} checks that are open as the notebook stands.` : ""}`}</p>`;
}
