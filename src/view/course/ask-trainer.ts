import { html } from "lit/html.js";
import { openDialog } from "../dialogs/dialog";

/** Asks whether somebody means to see the solutions. @returns whether to go on. */
export async function askTrainer(): Promise<boolean> {
  let isMeant = false;
  await openDialog("Go to the trainer's side?", ({ close }) => {
    const enter = () => {
      isMeant = true;
      close();
    };
    return html`<p>The trainer's side shows the tasks as cells, with every solution, step and mistake, and takes in the answers of a class.</p>
      <p>There is no password. The trainee's side keeps solutions out of sight and not out of reach: whoever has this notebook has its solutions. Give trainees the files that are made for them; those hold none.</p>
      <div class="choices">
        <button type="button" class="main" @click=${close}>Stay with the task</button>
        <button type="button" @click=${enter}>Show the trainer's side</button>
      </div>`;
  });
  return isMeant;
}
