import { html, nothing, type TemplateResult } from "lit/html.js";
import { addOption, removeOption, renameOption } from "../../notebook/edit-options";
import { type Notebook, optionsOf } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { openDialog } from "./dialog";

const value = (form: HTMLFormElement, name: string): string => String(new FormData(form).get(name) ?? "").trim();

/** Adds, renames and removes hull options, on every option page at once. */
export function openOptions(desk: Desk): Promise<void> {
  let refusal = "";
  return openDialog(say`Hull options`, ({ update, close }) => {
    const change = (label: string, said: string, edit: (notebook: Notebook) => Notebook) => {
      try {
        desk.live?.apply(label, edit, [{ page: desk.page.id, ...desk.block.from }]);
        desk.say(said);
        close();
      } catch (problem) {
        if (!(problem instanceof Refusal)) throw problem;
        refusal = problem.message;
        update();
      }
    };
    const options = optionsOf(desk.notebook);
    const add = (event: SubmitEvent) => {
      event.preventDefault();
      const form = event.currentTarget as HTMLFormElement;
      const [name, like] = [value(form, "name"), value(form, "like")];
      change(
        say`option ${name} added`,
        say`Option ${name} added to every option page, with the cells of ${like}.`,
        (notebook) => addOption(notebook, name, like),
      );
    };
    const rename = (option: string) => (event: SubmitEvent) => {
      event.preventDefault();
      const name = value(event.currentTarget as HTMLFormElement, "name");
      change(say`option ${option} renamed`, say`Option ${option} is now ${name}.`, (notebook) =>
        renameOption(notebook, option, name),
      );
    };
    const remove = (option: string) => () =>
      change(
        say`option ${option} removed`,
        say`Option ${option} removed from every option page; undo brings it back.`,
        (notebook) => removeOption(notebook, option),
      );
    const line = (option: string): TemplateResult => html`<li>
      <form @submit=${rename(option)}>
        <input name="name" aria-label=${say`Name of ${option}`} autocomplete="off" .value=${option} />
        <button type="submit">${say`Rename`}</button>
        <button type="button" @click=${remove(option)} ?disabled=${options.length === 1}>${say`Remove`}</button>
      </form>
    </li>`;
    return html`<p>${say`An option is one hull or one layout: a column on every option page.`}</p>
      ${refusal ? html`<p class="short" role="alert">${refusal}</p>` : nothing}
      <form class="add" @submit=${add}>
        <label>${say`New option`} <input name="name" autocomplete="off" required autofocus /></label>
        <label>${say`with the cells of`}
          <select name="like">
            ${options.map((option, i) => html`<option ?selected=${i === options.length - 1}>${option}</option>`)}
          </select>
        </label>
        <button type="submit" class="main">${say`Add option`}</button>
      </form>
      <h3>${say`Present options`}</h3>
      <ul class="option-list">${options.map(line)}</ul>
      <div class="choices"><button type="button" @click=${close}>${say`Close`}</button></div>`;
  });
}
