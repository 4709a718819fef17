import { html, nothing, type TemplateResult } from "lit/html.js";
import { traineeId } from "../../course/seed";
import { say } from "../../words/say";
import { focusWhenDrawn } from "./focus-when-drawn";
import type { TraineeMemory } from "./trainee-memory";

/** Asks once who works here; the numbers of every task follow from it. */
export function traineeForm(memory: TraineeMemory, done: () => void): TemplateResult {
  const take = (event: SubmitEvent) => {
    event.preventDefault();
    const trainee = traineeId(String(new FormData(event.currentTarget as HTMLFormElement).get("trainee") ?? ""));
    if (trainee === "") return;
    memory.setTrainee(trainee);
    done();
    focusWhenDrawn(".answers input");
  };
  const forget = () => {
    memory.forget();
    done();
  };
  return html`<form class="who" id="task" @submit=${take}>
    <label for="trainee">${say`Your trainee number`}</label>
    <div class="typed"><input id="trainee" name="trainee" autocomplete="off" maxlength="80" spellcheck="false" required placeholder="T07" .value=${memory.trainee} />
      <button type="submit" class="main">${say`Show my numbers`}</button></div>
    <p class="soft">${say`Your numbers in every task follow from it, so that your trainer can work them out again. It is kept in this browser with what you type, and sent nowhere.`}</p>
    ${
      memory.trainee === ""
        ? nothing
        : html`<div class="choices"><button type="button" @click=${done}>${say`Stay ${memory.trainee}`}</button>
          <button type="button" @click=${forget}>${say`Forget the number and all answers in this browser`}</button></div>`
    }
  </form>`;
}
