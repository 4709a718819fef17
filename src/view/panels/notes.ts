import { html, nothing, type TemplateResult } from "lit/html.js";
import { setNote } from "../../notebook/edit-note";
import type { Page } from "../../notebook/model";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";

/** Turns Markdown into elements; loaded apart, because a page is read before its notes are. */
type Print = (markdown: string) => DocumentFragment;

/** The notes of the shown page, to read and to edit. */
export class Notes {
  private print: Print | undefined;
  private editing: string | undefined;
  private printed: { readonly text: string; readonly nodes: readonly Node[] } | undefined;

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
  ) {
    inBackground(
      import("./markdown").then(({ printMarkdown }) => {
        this.print = printMarkdown;
        this.update();
      }),
    );
  }

  show(): TemplateResult {
    const { page, notebook } = this.desk;
    const { notes = {} } = notebook.about;
    const text = Object.hasOwn(notes, page.name) ? (notes[page.name] ?? "") : "";
    return this.editing === page.id ? this.editor(page, text) : this.reader(page, text);
  }

  private nodes(text: string): readonly Node[] {
    if (this.printed?.text !== text && this.print) this.printed = { text, nodes: [...this.print(text).childNodes] };
    return this.printed?.text === text ? this.printed.nodes : [];
  }

  private reader(page: Page, text: string): TemplateResult {
    const edit = () => {
      this.editing = page.id;
      this.update();
      document.querySelector<HTMLElement>("#note-text")?.focus();
    };
    return html`<h2>${say`Notes`} <button type="button" class="quiet" ?disabled=${!this.desk.live} @click=${edit}>${text ? say`Edit notes` : say`Write notes`}</button></h2>
      ${text ? html`<div class="notes">${this.nodes(text)}</div>` : nothing}`;
  }

  private editor(page: Page, text: string): TemplateResult {
    const done = () => {
      this.editing = undefined;
      this.update();
    };
    const save = (event: SubmitEvent) => {
      event.preventDefault();
      const note = String(new FormData(event.currentTarget as HTMLFormElement).get("note") ?? "");
      const isMade = this.desk.apply(say`notes of ${page.name}`, (notebook) => setNote(notebook, page.name, note));
      // A note that is refused stays in its field: nothing that was written is lost.
      if (isMade || this.desk.notice.kind !== "refused") this.editing = undefined;
      this.update();
    };
    const key = (event: KeyboardEvent) => {
      if (event.key === "Escape") done();
    };
    return html`<h2>${say`Notes`}</h2>
      <form class="note-form" @submit=${save} @keydown=${key}>
        <label for="note-text">${say`Notes of ${page.name}, in Markdown`}</label>
        <textarea id="note-text" name="note" rows="14" .value=${text}></textarea>
        <div class="choices">
          <button type="submit" class="main">${say`Keep`}</button>
          <button type="button" @click=${done}>${say`Leave as it was`}</button>
        </div>
      </form>`;
  }
}
