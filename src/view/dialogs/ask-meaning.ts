import { html, nothing } from "lit/html.js";
import type { Meaning } from "../../notebook/table-cells";
import { formulaAsTyped } from "../../notebook/typed-formula";
import { decimalSign, withDecimalSign } from "../../words/decimal-sign";
import { say } from "../../words/say";
import type { DoubtfulTyping } from "../typing/typed-text";
import { openDialog } from "./dialog";

/**
 * Asks how a sign in a number or a formula is meant.
 *
 * @returns undefined when the person thinks better of it; nothing is written then.
 */
export async function askMeaning(
  written: string,
  { asPoint, asGroups, isFormula }: DoubtfulTyping,
  where: string,
): Promise<Meaning | undefined> {
  let answer: Meaning | undefined;
  const isPoint = !isFormula && decimalSign() === ",";
  const shown = isFormula ? formulaAsTyped : withDecimalSign;
  await openDialog(isPoint ? say`How is the point meant?` : say`How is the comma meant?`, ({ close }) => {
    const choose = (meaning: Meaning) => () => {
      answer = meaning;
      close();
    };
    const other = isFormula ? say`Between arguments:` : say`Between thousands:`;
    return html`<p><b>${written}</b> ${say`in ${where} can be read two ways, so it is not guessed.`}</p>
      <div class="choices">
        <button type="button" @click=${choose("point")}>${say`Decimal sign:`} <b>${shown(asPoint)}</b></button>
        <button type="button" @click=${choose("groups")}>${other} <b>${shown(asGroups)}</b></button>
        ${isFormula ? nothing : html`<button type="button" @click=${choose("text")}>${say`Neither: keep it as text`}</button>`}
        <button type="button" @click=${close}>${say`Go back`}</button>
      </div>`;
  });
  return answer;
}
