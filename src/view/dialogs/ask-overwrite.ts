import { html } from "lit/html.js";
import { say } from "../../words/say";
import { openDialog } from "./dialog";

/** Asks before files on the disk are replaced. @param question says which. @returns whether they may be. */
export async function askOverwrite(question: string): Promise<boolean> {
  let isAllowed = false;
  await openDialog(say`Replace these files?`, ({ close }) => {
    const allow = () => {
      isAllowed = true;
      close();
    };
    return html`<p>${question}</p>
      <div class="choices">
        <button type="button" class="main" @click=${close}>${say`Leave them as they are`}</button>
        <button type="button" @click=${allow}>${say`Replace them`}</button>
      </div>`;
  });
  return isAllowed;
}
