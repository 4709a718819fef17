import { html, nothing, type TemplateResult } from "lit/html.js";
import type { AskedAnswer, AskedTask, taughtParts } from "../../course/asked-task";
import type { Mark } from "../../course/mark";
import { shownUnit } from "../../course/shown";
import { say } from "../../words/say";
import { careMark, cornerMark, openMark, ringMark } from "../marks";

/** What the answers of a task are typed into, and what is said of them. */
export interface Sheet {
  readonly typed: (answer: string) => string;
  readonly type: (answer: string, text: string) => void;
  /** Whether every key is taken, or only what stands when the field is left. */
  readonly takes: "keys" | "whole";
  /** How the answer as it stands was marked; undefined while it was not. */
  readonly mark: (answer: string) => Mark | undefined;
}

const verdict = (mark: Mark): TemplateResult => {
  switch (mark.kind) {
    case "right":
      return html`<p class="holds">${ringMark} <b>${say`Right.`}</b></p>`;
    case "mistake":
      return html`<p class="short">${cornerMark} <b>${say`Not right: ${mark.title}.`}</b> <span class="soft">${mark.advice}</span></p>`;
    case "carried":
      return html`<p class="open">${openMark} <b>${say`Follows from your own ${mark.from.join(say` and `)}, which is not right.`}</b></p>`;
    case "wrong":
      return html`<p class="short">${cornerMark} <b>${say`Not right.`}</b> <span class="soft">${say`It is none of the mistakes that this task knows.`}</span></p>`;
    case "unreadable":
      return html`<p class="open">${openMark} <b>${say`Cannot be read: ${mark.why}.`}</b></p>`;
    case "blank":
      return html`<p class="soft">${openMark} ${say`Blank.`}</p>`;
  }
};

function field(answer: AskedAnswer, sheet: Sheet): TemplateResult {
  const { name, about, unit, how, choices } = answer;
  const mark = sheet.mark(name);
  const said = html`<div id=${`mark-${name}`} class="mark-line">${mark ? verdict(mark) : nothing}</div>`;
  if (choices.length > 0) {
    return html`<fieldset class="answer" data-answer=${name}>
      <legend>${about}</legend>
      <div class="choices">${choices.map(
        (choice) =>
          html`<label><input type="radio" name=${`answer-${name}`} .checked=${sheet.typed(name) === choice} @change=${() => sheet.type(name, choice)} /> ${choice}</label>`,
      )}</div>
      ${said}
    </fieldset>`;
  }
  const type = (event: Event) => sheet.type(name, (event.target as HTMLInputElement).value);
  return html`<div class="answer" data-answer=${name}>
    <label for=${`answer-${name}`}>${about}</label>
    <div class="typed"><input id=${`answer-${name}`} inputmode="decimal" autocomplete="off" maxlength="200" spellcheck="false" aria-describedby=${`how-${name} mark-${name}`} .value=${sheet.typed(name)} @input=${sheet.takes === "keys" ? type : nothing} @change=${sheet.takes === "whole" ? type : nothing} /><span>${shownUnit(unit).trim()}</span></div>
    <p id=${`how-${name}`} class="soft how">${how}</p>
    ${said}
  </div>`;
}

/** Question, given numbers and the fields for the answers; `under` stands below them in the same form. */
export const askedTask = (
  asked: AskedTask,
  sheet: Sheet,
  under: TemplateResult,
  submit: () => void,
): TemplateResult => html`<div class="question">${asked.question.map((text) => html`<p>${text}</p>`)}</div>
  <table class="given">
    <caption>${say`Given`}</caption>
    <tbody>${asked.given.map(({ about, value }) => html`<tr><th scope="row">${about}</th><td>${value}</td></tr>`)}</tbody>
  </table>
  <form class="answers" aria-label=${say`Your answers`} @submit=${(event: Event) => {
    event.preventDefault();
    submit();
  }}>
    <h2>${say`Your answers`}</h2>
    ${asked.answers.map((answer) => field(answer, sheet))}
    ${under}
  </form>`;

const titles: Readonly<Record<(typeof taughtParts)[number], string>> = {
  rule: say`The rule`,
  source: say`Where it comes from`,
  beyond: say`What may not be concluded`,
  caution: say`Careful`,
};

const part = (title: string, texts: readonly string[]): TemplateResult | typeof nothing =>
  texts.length === 0 ? nothing : html`<h2>${title}</h2>${texts.map((text) => html`<p>${text}</p>`)}`;

/** The rule, its source and its limits, with the caution where the work can hurt somebody. */
export const taught = ({
  taught: { rule, source, beyond, caution },
}: AskedTask): TemplateResult => html`${part(titles.rule, rule)}
  ${part(titles.source, source)} ${part(titles.beyond, beyond)}
  ${caution.map((text) => html`<p class="care">${careMark}<span><b>${titles.caution}.</b> ${text}</span></p>`)}`;
