// Past 150 lines: one dialog whose parts share what was detected and chosen.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { isFormula } from "../../engine/content";
import { addPage, replacePage } from "../../notebook/edit-pages";
import type { Notebook, Row } from "../../notebook/model";
import { isFunctionPage } from "../../notebook/own/function-page";
import { Refusal } from "../../notebook/refusal";
import { importRows, isDoubtful, type Meaning } from "../../notebook/table-cells";
import { type Header, headers, likelyHeader, withHeader } from "../../notebook/table-change";
import { detectShape, encodings, readTable, separators, type TableShape } from "../../notebook/table-in";
import { counted, say } from "../../words/say";
import type { Desk } from "../desk";
import { type DialogHandle, openDialog } from "./dialog";
import { importChange, importPreview } from "./import-preview";
import { choice, decimalNames, separatorNames, tick } from "./table-choices";

const headerNames: Readonly<Record<Header, string>> = {
  kept: say`taken as it stands`,
  dropped: say`left out`,
  replaced: say`the page's own instead`,
};

/** The table of a file before it is taken: as it was understood, everything changeable. */
class Import {
  private shape: TableShape;
  private formulas = false;
  private doubtful: Meaning | undefined;
  private asNew = false;
  private header: Header = "kept";
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
    const { desk } = this;
    const taken = this.taken();
    const doubtful = this.rows.flat().filter((text) => isDoubtful(text, this.shape.decimal));
    const formulas = this.rows.flat().filter(isFormula);
    const isNothing = this.rows.length > 0 && taken.length === 0;
    const waits = taken.length === 0 || (doubtful.length > 0 && this.doubtful === undefined);
    const set = (change: () => void) => {
      change();
      this.refusal = "";
      handle.update();
    };
    return html`<p><b>${this.file}</b>${say`, ${counted(this.rows.length, "row")}, ${counted(this.rows[0]?.length ?? 0, "column")}. Nothing is taken until you say so.`}</p>
      ${this.refusal ? html`<p class="short" role="alert">${this.refusal}</p>` : nothing}
      <div class="fields">
        ${choice(
          say`Between cells`,
          separators,
          this.shape.separator,
          (one) => separatorNames[one],
          (separator) => set(() => this.reshape({ ...this.shape, separator })),
        )}
        ${choice(
          say`Decimal sign`,
          [".", ","] as const,
          this.shape.decimal,
          (one) => decimalNames[one],
          (decimal) => set(() => this.reshape({ ...this.shape, decimal })),
        )}
        ${choice(
          say`Encoding`,
          encodings,
          this.shape.encoding,
          (one) => one,
          (encoding) => set(() => this.reshape({ ...this.shape, encoding })),
        )}
        ${choice(
          say`Goes`,
          [false, true] as const,
          this.asNew,
          (one) => (one ? say`onto a new page` : say`in place of ${this.desk.page.name}`),
          (asNew) =>
            set(() => {
              this.asNew = asNew;
              this.header = this.likelyHeader();
            }),
        )}
        ${choice(
          say`First row`,
          this.asNew ? (["kept", "dropped"] as const) : headers,
          this.header,
          (one) => headerNames[one],
          (header) =>
            set(() => {
              this.header = header;
            }),
        )}
        ${
          this.asNew
            ? html`<label>${say`Name of the page`} <input .value=${this.name} @input=${(event: Event) => {
                this.name = (event.target as HTMLInputElement).value;
              }} /></label>`
            : nothing
        }
      </div>
      ${
        doubtful.length > 0
          ? html`<fieldset>
              <legend>${say`${doubtful[0] ?? ""}${doubtful.length > 1 ? say` and ${doubtful.length - 1} more like it` : ""} can be read two ways`}</legend>
              ${(["point", "groups", "text"] as const).map(
                (
                  meaning,
                ) => html`<label><input type="radio" name="doubtful" .checked=${this.doubtful === meaning} @change=${() =>
                  set(() => {
                    this.doubtful = meaning;
                  })} />
                  ${{ point: say`the mark is the decimal sign`, groups: say`the mark stands between thousands`, text: say`keep them as text` }[meaning]}</label>`,
              )}
            </fieldset>`
          : nothing
      }
      ${
        formulas.length > 0
          ? tick(
              say`${counted(formulas.length, "cell begins", "cells begin")} with =: take ${formulas.length === 1 ? say`it as a formula` : say`them as formulas`}`,
              this.formulas,
              (checked) =>
                set(() => {
                  this.formulas = checked;
                }),
            )
          : nothing
      }
      ${taken.length > 0 && !this.asNew ? importChange(taken, desk.page) : nothing}
      ${importPreview(taken, this.asNew ? undefined : desk.page.rows)}
      <div class="choices">
        <button type="button" class="main" ?disabled=${waits} @click=${() => this.take(handle)}>${say`Take the table`}</button>
        <button type="button" @click=${handle.close}>${say`Leave it`}</button>
        ${isNothing ? html`<span class="soft">${say`Nothing is left of the table without its first row.`}</span>` : nothing}
        ${waits && taken.length > 0 ? html`<span class="soft">${say`Say first how the doubtful numbers are meant.`}</span>` : nothing}
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
      this.header = this.likelyHeader();
      this.refusal = "";
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.rows = [];
      this.refusal = problem.message;
    }
  }

  private likelyHeader(): Header {
    return this.asNew ? "kept" : likelyHeader(this.rows, this.desk.page);
  }

  private taken(): Row[] {
    return importRows(withHeader(this.rows, this.header, this.desk.page), {
      decimal: this.shape.decimal,
      formulas: this.formulas,
      doubtful: this.doubtful,
    });
  }

  private put(notebook: Notebook): Notebook {
    const rows = this.taken();
    if (!this.asNew) return replacePage(notebook, this.desk.page.id, rows);
    const added = addPage(notebook, this.name.trim(), "free");
    return replacePage(added, added.pages.at(-1)?.id ?? "", rows);
  }

  /** `row 6: step L: los is not defined before its use`, of the page that is shown now. */
  private mistake(): string | undefined {
    const { live, page } = this.desk;
    if (!live || !isFunctionPage(page)) return undefined;
    const row = page.rows.findIndex((_, line) => live.ownRemark(page, line)?.kind === "mistake");
    const remark = row < 0 ? undefined : live.ownRemark(page, row);
    return remark && say`row ${row + 1}: ${remark.sentence}`;
  }

  private take(handle: DialogHandle): void {
    const { desk } = this;
    const before = desk.page.name;
    try {
      const isChanged = desk.live?.apply(say`import of ${this.file}`, (notebook) => this.put(notebook), [
        { page: desk.page.id, ...desk.block.from },
      ]);
      const added = this.asNew ? desk.notebook.pages.at(-1) : undefined;
      if (added) desk.go(added.id);
      const where = added ? say`the new page ${added.name}` : before;
      const mistake = this.mistake();
      desk.say(
        isChanged && mistake
          ? say`${this.file} taken onto ${where}, with a mistake in a function, ${mistake}; mend it there, or undo.`
          : isChanged
            ? say`${this.file} taken onto ${where}; undo brings back what was there.`
            : say`${this.file} holds what ${where} holds already.`,
      );
      handle.close();
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.refusal = say`${problem.message} Nothing was changed.`;
      handle.update();
    }
  }
}

/** Shows the table of a file and takes it when the person says so. A file that cannot be read leaves everything as it is. */
export async function openImport(desk: Desk, file: File): Promise<void> {
  const one = new Import(desk, file.name, new Uint8Array(await file.arrayBuffer()));
  await openDialog(say`Import a table`, (handle) => one.show(handle), true);
}
