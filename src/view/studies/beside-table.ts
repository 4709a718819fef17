import { html, nothing, type TemplateResult } from "lit/html.js";
import { cellLines } from "../../figures/studies/options-table";
import type { SideBySide, SideRow } from "../../study/side-by-side";
import { say } from "../../words/say";
import { unitText } from "../shown/unit-text";

/** Options side by side as a table: values, differences from the base, who is best and who is ruled out. */
export function besideTable({ options, groups, base }: SideBySide): TemplateResult {
  const line = (row: SideRow): TemplateResult => html`<tr>
    <th scope="row">${row.quantity} <span class="soft">${row.isCheck || row.unit === "1" ? nothing : unitText(row.unit)}</span></th>
    ${row.cells.map((cell, i) => {
      const [first = "", ...more] = cellLines(cell, options[i]?.name === base);
      const isShort = cell.isShort;
      return html`<td class=${isShort ? "short" : ""}>${first}${more.map((words) => html`<br /><span class=${words === say`best` ? "best" : "soft"}>${words}</span>`)}</td>`;
    })}
  </tr>`;
  return html`<div class="study-table" tabindex="0" role="region" aria-label=${say`Options side by side`}>
  <table class="beside">
    <thead>
      <tr><th scope="col">${say`Quantity`}</th>${options.map(({ name }) => html`<th scope="col">${name}${name === base ? html`, <span class="soft">${say`the base`}</span>` : nothing}</th>`)}</tr>
    </thead>
    <tbody>
      <tr class="verdicts"><th scope="row">${say`Verdict`}</th>${options.map(({ words, ruledOutBy }) => html`<td class=${ruledOutBy.length > 0 ? "short" : ""}>${words}</td>`)}</tr>
    </tbody>
    ${groups.map(
      ({ page, rows }) => html`<tbody>
        <tr class="group"><th scope="rowgroup" colspan=${options.length + 1}>${page}</th></tr>
        ${rows.map(line)}
      </tbody>`,
    )}
  </table>
</div>`;
}
