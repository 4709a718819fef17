import { html, nothing, type TemplateResult } from "lit/html.js";
import { contentOf } from "../../engine/content";
import type { Row } from "../../notebook/model";
import { type TableChange, tableChange } from "../../notebook/table-change";
import { counted } from "../shown/count-words";

const most = { rows: 14, columns: 40, letters: 200 };

/** So much of a long cell as tells what it is. */
const start = (text: string): string => (text.length > most.letters ? `${text.slice(0, most.letters)} …` : text);

const cellClass = (text: string, isOther: boolean): string => {
  const { kind } = contentOf(text);
  return `${kind === "number" ? "right" : kind === "formula" ? "formula" : ""}${isOther ? " other" : ""}`;
};

const lines = (count: number, one: string): string =>
  count === 0 ? "" : `, ${counted(Math.abs(count), one)} ${count > 0 ? "more" : "fewer"}`;

/** What taking the table changes, in words. */
function changeSentence({ cells, rows, columns }: TableChange, page: string): string {
  if (cells === 0 && rows === 0 && columns === 0) return `${page} reads so already.`;
  return `On ${page} ${counted(cells, "cell")} would read otherwise${lines(rows, "row")}${lines(columns, "column")}.`;
}

/**
 * The first rows of a table as they will be taken.
 *
 * @param before the rows in whose place they come; cells that differ are marked.
 */
export function importPreview(
  rows: readonly Row[],
  before: readonly Row[] | undefined,
): TemplateResult | typeof nothing {
  if (rows.length === 0) return nothing;
  const shown = rows.slice(0, most.rows);
  const columns = rows[0]?.length ?? 0;
  return html`<div class="preview" tabindex="0" role="region" aria-label="The table as it will be taken">
    <table>
      <tbody>
        ${shown.map(
          (row, i) =>
            html`<tr><th scope="row">${i + 1}</th>${row
              .slice(0, most.columns)
              .map(
                (text, column) =>
                  html`<td class=${cellClass(text, before !== undefined && (before[i]?.[column] ?? "") !== text)}>${start(text)}</td>`,
              )}</tr>`,
        )}
      </tbody>
    </table>
    ${rows.length > shown.length ? html`<p class="soft">and ${counted(rows.length - shown.length, "more row")}</p>` : nothing}
    ${columns > most.columns ? html`<p class="soft">and ${counted(columns - most.columns, "more column")} to the right</p>` : nothing}
  </div>`;
}

/** What would change, beside the preview. */
export const importChange = (rows: readonly Row[], before: readonly Row[], page: string): TemplateResult =>
  html`<p class="soft">${changeSentence(tableChange(before, rows), page)} Cells that would differ are underlined.</p>`;
