import { html, nothing, type TemplateResult } from "lit/html.js";
import { contentOf } from "../../engine/content";
import { isOptionPage, type Page, type Row } from "../../notebook/model";
import { type TableChange, tableChange } from "../../notebook/table-change";
import { tableRisk } from "../../notebook/table-risk";
import { counted, say } from "../../words/say";
import { openMark } from "../marks";

const most = { rows: 14, columns: 40, letters: 200 };

/** So much of a long cell as tells what it is. */
const start = (text: string): string => (text.length > most.letters ? `${text.slice(0, most.letters)} …` : text);

const cellClass = (text: string, isOther: boolean): string => {
  const { kind } = contentOf(text);
  return `${kind === "number" ? "right" : kind === "formula" ? "formula" : ""}${isOther ? " other" : ""}`;
};

/** What comes to the table or goes from it. */
const more = (count: number, words: string): string =>
  count === 0 ? "" : count > 0 ? say`, ${words} more` : say`, ${words} fewer`;

/** What taking the table changes, in words. */
function changeSentence({ cells, rows, columns }: TableChange, page: string): string {
  if (cells === 0 && rows === 0 && columns === 0) return say`${page} reads so already.`;
  return say`On ${page} ${counted(cells, "cell")} would read otherwise${more(rows, counted(Math.abs(rows), "row"))}${more(columns, counted(Math.abs(columns), "column"))}.`;
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
  return html`<div class="preview" tabindex="0" role="region" aria-label=${say`The table as it will be taken`}>
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
    ${rows.length > shown.length ? html`<p class="soft">${say`and ${counted(rows.length - shown.length, "more row")}`}</p>` : nothing}
    ${columns > most.columns ? html`<p class="soft">${say`and ${counted(columns - most.columns, "more column")} to the right`}</p>` : nothing}
  </div>`;
}

/** What would break without a word: formulas as texts, and rows that formulas would no longer find. */
function riskSentences(rows: readonly Row[], page: Page): readonly string[] {
  const { texts, moved } = tableRisk(page.rows, rows, isOptionPage(page));
  return [
    ...(texts > 0
      ? [
          say`${counted(texts, "formula")} would come as text and calculate nothing; tick above to take them as formulas.`,
        ]
      : []),
    ...(moved
      ? [
          say`${moved.key} and what follows would move from row ${moved.from} to row ${moved.to}: formulas on other pages, and those of the file unless another program moved them, would read other rows. Put new rows at the end of the file, or add them on the page.`,
        ]
      : []),
  ];
}

/** What would change, beside the preview. */
export const importChange = (rows: readonly Row[], page: Page): TemplateResult =>
  html`<p class="soft">${say`${changeSentence(tableChange(page.rows, rows), page.name)} Cells that would differ are underlined.`}</p>
    ${riskSentences(rows, page).map((sentence) => html`<p class="open">${openMark} ${sentence}</p>`)}`;
