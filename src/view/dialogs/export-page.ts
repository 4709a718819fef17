import { html, type TemplateResult } from "lit/html.js";
import { separators } from "../../notebook/table-in";
import { exportRows, printTable, type TableForm } from "../../notebook/table-out";
import { counted, say } from "../../words/say";
import type { Desk } from "../desk";
import { fileName, handOut } from "../files/hand-out";
import { type DialogHandle, openDialog } from "./dialog";
import { choice, decimalNames, separatorNames, tick } from "./table-choices";

const shownLines = 8;
const shownLetters = 300;

const contents: Readonly<Record<TableForm["holds"], string>> = {
  values: say`results in the place of formulas`,
  typed: say`what was typed, formulas included`,
};

/** The page as another program gets it, with the first lines of the file as they will be. */
class Export {
  private form: TableForm = { holds: "values", separator: ";", decimal: ",", mark: true };

  constructor(private readonly desk: Desk) {}

  show(handle: DialogHandle): TemplateResult {
    const { desk, form } = this;
    const set = (change: Partial<TableForm>) => {
      this.form = { ...form, ...change };
      handle.update();
    };
    const text = this.text();
    const lines = text.replace(/^\uFEFF/, "").split("\n");
    return html`<p><b>${desk.page.name}</b> ${say`as a table for another program. ${
      form.holds === "values"
        ? say`Text that it could run as a formula gets an apostrophe; numbers never do.`
        : say`Formulas keep the point and the comma of their own language; another program may not know them.`
    }`}</p>
      <div class="fields">
        ${choice(
          say`Holds`,
          ["values", "typed"] as const,
          form.holds,
          (one) => contents[one],
          (holds) => set({ holds }),
        )}
        ${choice(
          say`Between cells`,
          separators,
          form.separator,
          (one) => separatorNames[one],
          (separator) => set({ separator }),
        )}
        ${choice(
          say`Decimal sign`,
          [".", ","] as const,
          form.decimal,
          (one) => decimalNames[one],
          (decimal) => set({ decimal }),
        )}
      </div>
      ${tick(say`Begin with the mark by which some programs tell UTF-8`, form.mark, (mark) => set({ mark }))}
      <div class="preview" tabindex="0" role="region" aria-label=${say`The first lines of the file`}>
        <pre>${lines
          .slice(0, shownLines)
          .map((line) => (line.length > shownLetters ? `${line.slice(0, shownLetters)} …` : line))
          .join("\n")}</pre>
        <p class="soft">${counted(lines.length - 1, "line")}</p>
      </div>
      <div class="choices">
        <button type="button" class="main" @click=${() => this.handOut(handle)}>${say`Save the file`}</button>
        <button type="button" @click=${handle.close}>${say`Go back`}</button>
      </div>`;
  }

  private text(): string {
    const { live, page } = this.desk;
    return live ? printTable(exportRows(live, page, this.form), this.form) : "";
  }

  private handOut(handle: DialogHandle): void {
    const { desk, form } = this;
    const name = `${fileName(desk.page.name)}-for-another-program.${form.separator === "\t" ? "tsv" : "csv"}`;
    handOut(name, this.text(), "text/csv;charset=utf-8");
    handle.close();
    desk.say(say`${desk.page.name} exported as ${name}.`);
  }
}

/** Offers the page as a file for another program: contents, separator, decimal sign. */
export const openExport = (desk: Desk): Promise<void> => {
  const one = new Export(desk);
  return openDialog(say`Export for another program`, (handle) => one.show(handle), true);
};
