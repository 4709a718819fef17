// Past 150 lines: one dialog whose parts share what was detected and chosen.
import { html, nothing, type TemplateResult } from "lit/html.js";
import { contentOf, isFormula } from "../../engine/content";
import { addPage, replacePage } from "../../notebook/edit-pages";
import type { Notebook, Row } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { detectShape, encodings, readTable, separators, type TableShape } from "../../notebook/table-in";
import type { Desk } from "../desk";
import type { Meaning } from "../edits/reading";
import { importRows, isDoubtful } from "../files/import-cells";
import { counted } from "../shown/count-words";
import { type DialogHandle, openDialog } from "./dialog";

const separatorNames: Readonly<Record<TableShape["separator"], string>> = {
  ",": "comma",
  ";": "semicolon",
  "\t": "tab",
  "|": "upright line",
};
const previewRows = 14;

/** The table of a file before it is taken: as it was understood, everything changeable. */
class Import {
  private shape: TableShape;
  private formulas = false;
  private doubtful: Meaning | undefined;
  private asNew = false;
  private name: string;
  private rows: readonly Row[] = [];
  private refusal = "";

  constructor(
    private readonly desk: Desk,
    private readonly file: string,
    private readonly bytes: Uint8Array,
  ) {
    this.shape = detectShape(bytes);
    this.name = file.replace(/\.[^.]*$/, "");
    this.read();
  }

  show(handle: DialogHandle): TemplateResult {
    const doubtful = this.rows.flat().filter((text) => isDoubtful(text, this.shape.decimal));
    const formulas = this.rows.flat().filter(isFormula);
    const waits = this.rows.length === 0 || (doubtful.length > 0 && this.doubtful === undefined);
    const set = (change: () => void) => {
      change();
      this.refusal = "";
      handle.update();
    };
    return html`<p><b>${this.file}</b>, ${counted(this.rows.length, "row")}, ${counted(this.rows[0]?.length ?? 0, "column")}. Nothing is taken until you say so.</p>
      ${this.refusal ? html`<p class="short" role="alert">${this.refusal}</p>` : nothing}
      <div class="fields">
        ${this.choice(
          "Between cells",
          separators,
          this.shape.separator,
          (one) => separatorNames[one],
          (separator) => set(() => this.reshape({ ...this.shape, separator })),
        )}
        ${this.choice(
          "Decimal sign",
          [".", ","] as const,
          this.shape.decimal,
          (one) => (one === "." ? "point" : "comma"),
          (decimal) => set(() => this.reshape({ ...this.shape, decimal })),
        )}
        ${this.choice(
          "Encoding",
          encodings,
          this.shape.encoding,
          (one) => one,
          (encoding) => set(() => this.reshape({ ...this.shape, encoding })),
        )}
        ${this.choice(
          "Goes",
          [false, true] as const,
          this.asNew,
          (one) => (one ? "onto a new page" : `in place of ${this.desk.page.name}`),
          (asNew) =>
            set(() => {
              this.asNew = asNew;
            }),
        )}
        ${
          this.asNew
            ? html`<label>Name of the page <input .value=${this.name} @input=${(event: Event) => {
                this.name = (event.target as HTMLInputElement).value;
              }} /></label>`
            : nothing
        }
      </div>
      ${
        doubtful.length > 0
          ? html`<fieldset>
              <legend>${doubtful[0]}${doubtful.length > 1 ? ` and ${doubtful.length - 1} more like it` : ""} can be read two ways</legend>
              ${(["point", "groups", "text"] as const).map(
                (
                  meaning,
                ) => html`<label><input type="radio" name="doubtful" .checked=${this.doubtful === meaning} @change=${() =>
                  set(() => {
                    this.doubtful = meaning;
                  })} />
                  ${{ point: "the mark is the decimal sign", groups: "the mark stands between thousands", text: "keep them as text" }[meaning]}</label>`,
              )}
            </fieldset>`
          : nothing
      }
      ${
        formulas.length > 0
          ? html`<label class="check"><input type="checkbox" .checked=${this.formulas} @change=${(event: Event) =>
              set(() => {
                this.formulas = (event.target as HTMLInputElement).checked;
              })} /> ${counted(formulas.length, "cell begins", "cells begin")} with =: take ${formulas.length === 1 ? "it as a formula" : "them as formulas"}</label>`
          : nothing
      }
      ${this.preview()}
      <div class="choices">
        <button type="button" class="main" ?disabled=${waits} @click=${() => this.take(handle)}>Take the table</button>
        <button type="button" @click=${handle.close}>Leave it</button>
        ${waits && this.rows.length > 0 ? html`<span class="soft">Say first how the doubtful numbers are meant.</span>` : nothing}
      </div>`;
  }

  private choice<T>(
    label: string,
    all: readonly T[],
    chosen: T,
    word: (one: T) => string,
    pick: (one: T) => void,
  ): TemplateResult {
    return html`<label>${label}
      <select @change=${(event: Event) => pick(all[(event.target as HTMLSelectElement).selectedIndex] as T)}>
        ${all.map((one) => html`<option ?selected=${one === chosen}>${word(one)}</option>`)}
      </select>
    </label>`;
  }

  private preview(): TemplateResult | typeof nothing {
    const rows = this.taken().slice(0, previewRows);
    if (rows.length === 0) return nothing;
    const kind = (text: string) => contentOf(text).kind;
    return html`<div class="preview" tabindex="0" role="region" aria-label="The table as it will be taken">
      <table>
        <tbody>
          ${rows.map(
            (row, i) =>
              html`<tr><th scope="row">${i + 1}</th>${row.map(
                (text) =>
                  html`<td class=${kind(text) === "number" ? "right" : kind(text) === "formula" ? "formula" : ""}>${text}</td>`,
              )}</tr>`,
          )}
        </tbody>
      </table>
      ${this.rows.length > rows.length ? html`<p class="soft">and ${counted(this.rows.length - rows.length, "more row")}</p>` : nothing}
    </div>`;
  }

  private reshape(shape: TableShape): void {
    this.shape = shape;
    this.doubtful = undefined;
    this.read();
  }

  private read(): void {
    try {
      this.rows = readTable(this.file, this.bytes, this.shape);
      this.refusal = "";
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.rows = [];
      this.refusal = problem.message;
    }
  }

  private taken(): Row[] {
    return importRows(this.rows, { decimal: this.shape.decimal, formulas: this.formulas, doubtful: this.doubtful });
  }

  private put(notebook: Notebook): Notebook {
    const rows = this.taken();
    if (!this.asNew) return replacePage(notebook, this.desk.page.id, rows);
    const added = addPage(notebook, this.name.trim(), "free");
    return replacePage(added, added.pages.at(-1)?.id ?? "", rows);
  }

  private take(handle: DialogHandle): void {
    const { desk } = this;
    const before = desk.page.name;
    try {
      const isChanged = desk.live?.apply(`import of ${this.file}`, (notebook) => this.put(notebook), [
        { page: desk.page.id, ...desk.block.from },
      ]);
      const added = this.asNew ? desk.notebook.pages.at(-1) : undefined;
      if (added) desk.go(added.id);
      const where = added ? `the new page ${added.name}` : before;
      desk.say(
        isChanged
          ? `${this.file} taken onto ${where}; undo brings back what was there.`
          : `${this.file} holds what ${where} holds already.`,
      );
      handle.close();
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.refusal = `${problem.message} Nothing was changed.`;
      handle.update();
    }
  }
}

/** Shows the table of a file and takes it when the person says so. A file that cannot be read leaves everything as it is. */
export async function openImport(desk: Desk, file: File): Promise<void> {
  const one = new Import(desk, file.name, new Uint8Array(await file.arrayBuffer()));
  await openDialog("Import a table", (handle) => one.show(handle), true);
}
