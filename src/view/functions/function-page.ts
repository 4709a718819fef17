import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Argument, allowed, defaultOf, words } from "../../formula/arguments";
import { inOrder } from "../../formula/call";
import { type AnyDefinition, resultUnit } from "../../formula/definition";
import { explainCall, mathematicsOf } from "../../formula/explain";
import type { ExplainedStep } from "../../formula/explanation";
import { sourceLine } from "../../formula/source";
import { symbolText } from "../../formula/symbol-name";
import type { Value } from "../../formula/value";
import { whyItFails } from "../../notebook/own/example-holds";
import { exampleFormula } from "../../notebook/proof-page";
import { argumentSign, formulaAsTyped } from "../../notebook/typed-formula";
import { betweenNumbers, withDecimalSign } from "../../words/decimal-sign";
import { said, say } from "../../words/say";
import { careMark, cornerMark, ringMark } from "../marks";
import { shownValue, stepLine } from "../panels/call-steps";
import { capital } from "../shown/count-words";
import { numberText } from "../shown/number-text";
import { unitText, withUnit } from "../shown/unit-text";

type Example = AnyDefinition["examples"][number];

const unitWord = (unit: string): string =>
  unit === "1" ? say`plain number` : unit === "any" ? say`any unit` : unit === "text" ? say`text` : unitText(unit);

/** What is allowed, its unit as it is printed. */
const limits = (argument: Argument): string =>
  "unit" in argument
    ? allowed(argument).replace(/ (\S+)$/, (_, unit: string) => `\u00a0${unitText(unit)}`)
    : allowed(argument);

/** `CONDUCTOR.DROP(current, run, area, temperature = 20)`. */
function call({ name, args }: AnyDefinition): string {
  const list = Object.entries(args).map(([argument, definition]) => {
    const otherwise = defaultOf(definition);
    return otherwise === undefined ? words(argument) : `${words(argument)} = ${withDecimalSign(String(otherwise))}`;
  });
  return `${name}(${list.join(`${argumentSign()} `)})`;
}

const argumentRows = ({ args }: AnyDefinition): TemplateResult => html`<table class="facts">
  <thead><tr><th scope="col">${say`Argument`}</th><th scope="col">${say`Unit`}</th><th scope="col">${say`What it is`}</th><th scope="col">${say`Allowed`}</th><th scope="col">${say`Left out`}</th></tr></thead>
  <tbody>${Object.entries(args).map(
    ([name, argument]) => html`<tr>
      <th scope="row">${words(name)}</th>
      <td>${unitWord("unit" in argument ? argument.unit : "text")}</td>
      <td>${said(argument.about)}</td>
      <td>${limits(argument)}</td>
      <td>${defaultOf(argument) === undefined ? say`must be given` : say`taken as ${withDecimalSign(String(defaultOf(argument)))}`}</td>
    </tr>`,
  )}</tbody>
</table>`;

const constantRows = ({ constants = {} }: AnyDefinition): TemplateResult | typeof nothing =>
  Object.keys(constants).length === 0
    ? nothing
    : html`<h4>${say`Constants`}</h4>
      <ul class="plain">${Object.entries(constants).map(
        ([name, { value, unit, about, source }]) =>
          html`<li><span class="formula">${symbolText(name)} = ${withUnit(numberText(value), unit)}</span> ${said(about)}; <span class="soft">${sourceLine(source)}</span></li>`,
      )}</ul>`;

/** Whether an example of the notebook's own function holds; those of shipped functions always do. */
function standing(definition: AnyDefinition, one: Example): TemplateResult | typeof nothing {
  if (definition.ownOf === undefined) return nothing;
  const why = whyItFails(definition, one);
  return why
    ? html`<p class="short">${cornerMark} ${capital(why)}.</p>`
    : html`<p class="holds">${ringMark} ${say`The function gives what the example says.`}</p>`;
}

function example(
  definition: AnyDefinition,
  one: Example,
  insert: ((formula: string) => void) | undefined,
): TemplateResult {
  const formula = exampleFormula(definition, one.given);
  const { result } = explainCall(definition, inOrder(definition, one.given));
  const unit = resultUnit(definition);
  const given = Object.entries(one.given).map(([name, value]) => {
    const argument = definition.args[name];
    return `${words(name)} ${shownValue(value as Value, argument && "unit" in argument ? argument.unit : "text")}`;
  });
  const expected = withDecimalSign(`${String(one.expect)}${one.within > 0 ? ` ± ${one.within}` : ""}`);
  return html`<li>
    <p class="formula">${formulaAsTyped(formula)}</p>
    <p>${given.join(betweenNumbers())}</p>
    <p><b>= ${shownValue(result, unit)}</b> <span class="soft">${say`published: ${expected}; ${sourceLine(one.source)}`}</span></p>
    ${standing(definition, one)}
    ${insert ? html`<button type="button" aria-label=${say`Insert ${formula}`} @click=${() => insert(formula)}>${say`Insert this example`}</button>` : nothing}
  </li>`;
}

/**
 * Everything that is known of one named function, to read before it is used.
 *
 * @param insert puts an example into the selected cell, or says why it cannot; undefined where that is not the place.
 */
export function functionPage(
  definition: AnyDefinition,
  family: string,
  insert: ((formula: string) => void) | string | undefined,
  copy?: () => void,
  id = "function-title",
): TemplateResult {
  const { name, title, valid, caution, sources, examples, ownOf } = definition;
  // A function of the notebook's own may have none.
  const [first, ...more]: readonly Example[] = examples;
  const numbers = first ? explainCall(definition, inOrder(definition, first.given)).steps : [];
  const isHeld = typeof insert === "string";
  // Beside the cells long mathematics scrolls sideways, and keys reach it.
  const isNarrow = insert === undefined;
  const steps = (lines: readonly ExplainedStep[]) =>
    html`<ol class="steps" tabindex=${isNarrow ? "0" : nothing} aria-label=${isNarrow ? say`Steps` : nothing}>${lines.map((line) => stepLine(line))}</ol>`;
  const one = (each: Example) => example(definition, each, typeof insert === "string" ? () => undefined : insert);
  return html`<article class="function" aria-labelledby=${id}>
    <h3 id=${id}>${said(title)}</h3>
    ${ownOf === undefined ? html`<p class="soft">${said(family)}</p>` : html`<p class="own-mark">${say`The notebook's own function, defined on page ${ownOf}`}</p>`}
    ${copy ? html`<p><button type="button" @click=${copy}>${say`Copy under another name …`}</button></p>` : nothing}
    <p class="formula call">=${call(definition)}</p>
    <p>${say`Gives ${unitWord(resultUnit(definition))}.`}</p>
    ${caution ? html`<p class="care">${careMark}<span>${said(caution)}</span></p>` : nothing}
    ${argumentRows(definition)}
    <h4>${say`Mathematics`}</h4>
    ${steps(mathematicsOf(definition))}
    ${constantRows(definition)}
    <h4>${say`Where it holds`}</h4>
    <p>${said(valid)}</p>
    <h4>${say`Sources`}</h4>
    <ul class="plain">${sources.map((source) => html`<li>${sourceLine(source)}</li>`)}</ul>
    <h4>${examples.length === 1 ? say`Worked example` : say`Worked examples`}</h4>
    ${typeof insert === "string" ? html`<p class="soft">${insert}</p>` : nothing}
    ${
      first
        ? html`<ul class="examples" ?inert=${isHeld}>${one(first)}</ul>
            <details><summary>${say`${name}, the first example step by step`}</summary>${steps(numbers)}</details>`
        : html`<p>${say`None; add a row example to its page.`}</p>`
    }
    ${more.length > 0 ? html`<details><summary>${say`${more.length} more`}</summary><ul class="examples" ?inert=${isHeld}>${more.map(one)}</ul></details>` : nothing}
  </article>`;
}
