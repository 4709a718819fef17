import { html } from "lit/html.js";
import { say } from "../../words/say";
import { openDialog } from "./dialog";

/**
 * Asks before an open notebook with unsaved changes is replaced.
 *
 * @returns undefined when it is to stay.
 */
export async function askReplace(open: string, incoming: string): Promise<"save" | "replace" | undefined> {
  let answer: "save" | "replace" | undefined;
  await openDialog(say`Replace the open notebook?`, ({ close }) => {
    const choose = (choice: "save" | "replace") => () => {
      answer = choice;
      close();
    };
    return html`<p>${say`"${open}" has changes that are not saved. Opening "${incoming}" takes its place, and undo does not bring it back.`}</p>
      <div class="choices">
        <button type="button" class="main" @click=${choose("save")}>${say`Save it, then open the other`}</button>
        <button type="button" @click=${choose("replace")}>${say`Open without saving`}</button>
        <button type="button" @click=${close}>${say`Keep the open one`}</button>
      </div>`;
  });
  return answer;
}
