import { html } from "lit/html.js";
import type { Meaning } from "../../notebook/table-cells";
import { say } from "../../words/say";
import { openDialog } from "./dialog";

/**
 * Asks how the comma in a number is meant.
 *
 * @returns undefined when the person thinks better of it; nothing is written then.
 */
export async function askMeaning(
  written: string,
  asPoint: string,
  asGroups: string,
  where: string,
): Promise<Meaning | undefined> {
  let answer: Meaning | undefined;
  await openDialog(say`How is the comma meant?`, ({ close }) => {
    const choose = (meaning: Meaning) => () => {
      answer = meaning;
      close();
    };
    return html`<p><b>${written}</b> ${say`in ${where} can be read two ways, so it is not guessed.`}</p>
      <div class="choices">
        <button type="button" @click=${choose("point")}>${say`Decimal sign:`} <b>${asPoint}</b></button>
        <button type="button" @click=${choose("groups")}>${say`Between thousands:`} <b>${asGroups}</b></button>
        <button type="button" @click=${choose("text")}>${say`Neither: keep it as text`}</button>
        <button type="button" @click=${close}>${say`Go back`}</button>
      </div>`;
  });
  return answer;
}
