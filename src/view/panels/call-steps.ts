import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { html, nothing, type TemplateResult } from "lit/html.js";
import type { ExplainedArgument, ExplainedStep, Explanation, Mathematics } from "../../formula/explanation";
import { insideSentence } from "../../formula/inside";
import type { Given, Value } from "../../formula/value";
import type { NamedCall } from "../../notebook/named-calls";
import { shownGiven, stopOf } from "../../notebook/shown-given";
import { say } from "../../words/say";
import { careMark, cornerMark, openMark } from "../marks";
import { numberText } from "../shown/number-text";
import { withUnit } from "../shown/unit-text";

/** A value of a function with its unit; a range says how many cells it has. */
export function shownValue(value: Value | Given | undefined, unit: string): string {
  if (value === undefined) return "";
  if (value === null) return say`blank`;
  if (typeof value === "object") return say`${value.length} cells`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? withUnit(numberText(value), unit) : value;
}

/** Set mathematics. The markup is made by the formula writers from names and numbers, with everything else escaped. */
const set = (mathematics: Mathematics): TemplateResult =>
  html`<div class="mathematics">${unsafeHTML(mathematics.mathml)}</div>`;

/** Why nothing comes out here; in a branch that is not taken that is no error, since nothing has to. */
function stopped(refusal: string | undefined, used: boolean): TemplateResult | typeof nothing {
  const stop = stopOf(refusal, used);
  if (!stop) return nothing;
  return stop.isError
    ? html`<p class="short">${cornerMark} ${stop.sentence}</p>`
    : html`<p class="soft">${stop.sentence}</p>`;
}

/** One step of a function: its mathematics, with the numbers where there are any, and why it is taken. */
export function stepLine(one: ExplainedStep, used = true): TemplateResult {
  const { kind, symbols, numbers, value, unit, why, words, source, refusal } = one;
  return html`<li class=${refusal && used ? "stops" : ""}>
    ${kind === "require" ? html`<p class="why">${say`must hold:`}</p>` : nothing}
    ${set(symbols)} ${numbers ? set(numbers) : nothing}
    ${value === undefined ? nothing : html`<p class="result">= ${shownValue(value, unit)}</p>`}
    <p class="why">${why}${words ? html`. ${words}` : nothing}</p>
    ${source ? html`<p class="source">${source.line}</p>` : nothing}
    ${stopped(refusal, used)}
  </li>`;
}

function argument(one: ExplainedArgument, used: boolean): TemplateResult {
  const { value, refusal } = shownGiven(one, used);
  return html`<tr>
    <th scope="row">${one.words}</th>
    <td>${shownValue(value, one.unit)}${stopped(refusal, used)}</td>
    <td class="soft">${one.about}${one.by === "default" ? say`, left out` : ""}${say`; allowed ${one.allowed}`}</td>
  </tr>`;
}

const notTaken = (refusal: string | undefined): string =>
  refusal
    ? say`This branch is not taken now, so the function is not worked out; nothing of it counts here.`
    : say`This branch is not taken now: what stands below does not count in this cell.`;

const rests = (explanation: Explanation): TemplateResult => {
  const { constants, valid, sources, caution } = explanation;
  return html`${constants.map(
    ({ words, about, value, unit, source }) =>
      html`<p class="source"><span class="formula">${words} = ${withUnit(numberText(value), unit)}</span> ${about}; ${source.line}</p>`,
  )}
  <p class="source">${valid}</p>
  <p class="source">${insideSentence(explanation)}</p>
  ${sources.map(({ line }) => html`<p class="source">${line}</p>`)}
  ${caution ? html`<p class="care">${careMark}<span>${caution}</span></p>` : nothing}`;
};

/**
 * One call of a named function: what it was given, its steps with mathematics and numbers, what it rests on.
 *
 * @param about looks the function up.
 * @param unfold puts its steps as rows in the place of the call.
 */
export function callSteps(
  { name, used, explanation, refusal }: Pick<NamedCall, "name" | "used" | "explanation" | "refusal">,
  about?: (name: string) => void,
  unfold?: (name: string) => void,
): TemplateResult {
  const title = explanation?.title ?? name;
  return html`<section class="call">
    <h3>${title}${explanation?.result === undefined ? nothing : html`: ${shownValue(explanation.result, explanation.unit)}`}</h3>
    <p class="formula soft">${about ? html`<button type="button" class="quiet formula" title=${say`Look it up`} aria-haspopup="dialog" @click=${() => about(name)}>${name}</button>` : name}${unfold ? html` <button type="button" class="quiet" title=${say`Its steps as rows of plain formulas (Ctrl+Alt+U)`} @click=${() => unfold(name)}>${say`Unfold into rows`}</button>` : nothing}</p>
    ${explanation?.ownOf === undefined ? nothing : html`<p class="own-mark">${say`The notebook's own function, page ${explanation.ownOf}`}</p>`}
    ${used ? stopped(refusal, used) : html`<p class="open">${openMark} ${notTaken(refusal)}</p>`}
    ${
      explanation
        ? html`<table class="given">
              <caption class="unseen">${say`What the function was given`}</caption>
              <tbody>${explanation.arguments.map((one) => argument(one, used))}</tbody>
            </table>
            <ol class="steps" tabindex="0" aria-label=${say`Steps`}>${explanation.steps.map((one) => stepLine(one, used))}</ol>
            ${rests(explanation)}`
        : nothing
    }
  </section>`;
}
