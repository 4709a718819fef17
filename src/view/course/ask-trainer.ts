import { html } from "lit/html.js";
import { say } from "../../words/say";
import { openDialog } from "../dialogs/dialog";

/** Asks whether somebody means to see the solutions. @returns whether to go on. */
export async function askTrainer(): Promise<boolean> {
  let isMeant = false;
  await openDialog(say`Go to the trainer's side?`, ({ close }) => {
    const enter = () => {
      isMeant = true;
      close();
    };
    return html`<p>${say`The trainer's side shows the tasks as cells, with every solution, step and mistake, and takes in the answers of a class.`}</p>
      <p>${say`There is no password. The trainee's side keeps solutions out of sight and not out of reach: whoever has this notebook has its solutions. Give trainees the files that are made for them; those hold none.`}</p>
      <div class="choices">
        <button type="button" class="main" @click=${close}>${say`Stay with the task`}</button>
        <button type="button" @click=${enter}>${say`Show the trainer's side`}</button>
      </div>`;
  });
  return isMeant;
}
