import { percentWords } from "../../study/sentences";
import type { SideBySide, SideCell, SideRow } from "../../study/side-by-side";
import { say } from "../../words/say";
import { rule, soft } from "../draw/ink";
import { lineHeight, text, wrap } from "../draw/letters";
import { line } from "../draw/mark";
import { sheet } from "../draw/sheet";
import { type Figure, figure } from "../figure";
import { need } from "../need";
import { brief } from "./brief";

const quantityWidth = 200;
const optionWidth = 150;

const minus = "\u2212";
const signed = (text: string): string => (/^[-\u2212]/.test(text) ? minus + text.slice(1) : `+${text}`);

/** How far a cell lies from the base: `+0.4 (+12 %)`; of a check, by how many points of its margin. */
function offWords({ difference, share, verdict }: SideCell): string[] {
  if (difference === undefined) return [];
  // Percent of a margin, to the tenth that a verdict may show.
  const points = Math.round(Math.abs(1000 * difference)) / 10;
  if (difference === 0 || (verdict !== "" && points === 0)) return [say`the same`];
  if (verdict !== "") return [difference > 0 ? say`${points} points more` : say`${points} points less`];
  const shareWords = share === undefined ? "" : ` (${signed(percentWords(share))})`;
  return [`${signed(brief(difference))}${shareWords}`];
}

/** What a cell of the comparison says, line by line. */
export function cellLines(cell: SideCell, isBase: boolean): string[] {
  const { value, verdict, isBest } = cell;
  const more = [...(isBase ? [] : offWords(cell)), ...(isBest ? [say`best`] : [])];
  if (verdict !== "") return [verdict, ...more];
  switch (value.kind) {
    case "number":
      return [brief(value.value), ...more];
    case "text":
      return [value.text, ...more];
    case "flag":
      return [value.value ? "yes" : "no", ...more];
    case "error":
      return [value.sentence];
    case "blank":
      return [""];
  }
}

/** The comparison as a drawing: a line for each row, a column for each option. */
export function optionsTable(table: SideBySide): Figure {
  const title = say`Options side by side`;
  return figure(title, () => {
    const { options, groups, base } = table;
    const rows = groups.flatMap((group) => group.rows);
    need({ options: options.length, rows: rows.length }, { options: [1, 40], rows: [1, 400] });
    const width = quantityWidth + options.length * optionWidth + 12;
    const column = (i: number) => quantityWidth + i * optionWidth;
    const content: string[] = [];
    let y = 4;
    const block = (cells: readonly (readonly string[])[], strong: boolean) => {
      const lines = cells.map((cell, i) =>
        cell.flatMap((one) => wrap(one, (i === 0 ? quantityWidth : optionWidth) - 14)),
      );
      lines.forEach((cell, i) => {
        cell.forEach((one, k) => {
          const x = i === 0 ? 4 : column(i - 1) + 4;
          content.push(
            text({ x, y: y + (k + 1) * lineHeight }, one, { strong, ...(k > 0 && !strong && { fill: soft }) }),
          );
        });
      });
      y += Math.max(...lines.map(({ length }) => length)) * lineHeight + 7;
      content.push(
        line(
          { x: 0, y: y - 2 },
          { x: width, y: y - 2 },
          { width: strong ? 1.2 : 0.5, ...(!strong && { stroke: rule }) },
        ),
      );
    };
    block([[say`Quantity`], ...options.map(({ name }) => [name === base ? `${name}, ${say`the base`}` : name])], true);
    block([[say`Verdict`], ...options.map(({ words }) => [words])], false);
    for (const { page, rows: ofPage } of groups) {
      block([[page], ...options.map(() => [])], true);
      for (const row of ofPage)
        block([[rowLabel(row)], ...row.cells.map((cell, i) => cellLines(cell, options[i]?.name === base))], false);
    }
    const says = options.map(({ name, words }) => `${name}: ${words}.`).join(" ");
    return sheet({ title, says, width, height: y + 4, content });
  });
}

const rowLabel = ({ quantity, unit, isCheck }: SideRow): string =>
  isCheck || unit === "" || unit === "1" ? quantity : `${quantity}, ${unit}`;
