import { isFormula } from "../engine/content";
import { displayValue } from "../notebook/display";
import { LiveNotebook } from "../notebook/live";
import { firstOption, lead, type Page, pageByName } from "../notebook/model";
import { finderOf } from "../notebook/own/own-functions";
import { Refusal } from "../notebook/refusal";
import { namedIn } from "../notebook/row-calls";
import { readAddress, rowNamed } from "../notebook/rows";
import { type UnfoldedCall, unfoldCall } from "../notebook/unfold";
import { counted, say } from "../words/say";
import { readFolder, writeFolder } from "./folder";
import { columns, Misuse, type Output } from "./output";

export interface UnfoldWishes {
  /** The function to take apart, where the row calls several. */
  readonly named: string | undefined;
  /** Folder for the notebook with the new rows; it is only shown when left out. */
  readonly write: string | undefined;
}

/** The new rows and the row that uses them, calculated. */
function rowsText(page: Page, { notebook, first, count, row }: UnfoldedCall): string {
  const live = new LiveNotebook(notebook);
  const rows = [...Array.from({ length: count }, (_, i) => first + i), row].map((line) => {
    const cells = page.rows[line] ?? [];
    const values = cells
      .slice(firstOption)
      .map((_, i) => displayValue(live.value({ page: page.id, row: line, column: firstOption + i })));
    const formula = cells.slice(firstOption).find(isFormula) ?? "";
    return [cells[lead.key] ?? "", cells[lead.quantity] ?? "", cells[lead.unit] ?? "", ...values, formula];
  });
  live.close();
  const options = (page.rows[0] ?? []).slice(firstOption);
  const header = [say`Key`, say`Quantity`, say`Unit`, ...options, say`Formula for ${options[0] ?? ""}`];
  return columns([header, ...rows], (i) => i > 2 && i < header.length - 1);
}

/** Puts the steps of a named function in a row, `Supply.drop`, as visible rows in its place. */
export function unfoldRow(output: Output, args: readonly string[], wishes: UnfoldWishes): void {
  const [folder, address, ...more] = args;
  if (folder === undefined || address === undefined || more.length > 0) {
    throw new Misuse(say`unfold takes a folder and a row, for example unfold sheets/three-hulls Upkeep.oil_head.`);
  }
  const notebook = readFolder(output.path(folder));
  const { page, row } = rowNamed(notebook, readAddress(address));
  const find = finderOf(notebook);
  const found = [...new Set((page.rows[row] ?? []).flatMap((text) => namedIn(text, find)))];
  const names = found.map(({ name }) => name).join(", ");
  const wanted = wishes.named?.toUpperCase();
  const definition = wanted === undefined ? found[0] : found.find(({ name }) => name === wanted);
  if (!definition) {
    throw new Refusal(
      found.length === 0
        ? say`${address} calls no named function; choose a row that does.`
        : say`${address} does not call ${wanted ?? ""} (it calls ${names}).`,
    );
  }
  const unfolded = unfoldCall(notebook, page.id, row, definition);
  const after = pageByName(unfolded.notebook, page.name) as Page;
  output.write(
    `${say`${definition.name} in ${address}, unfolded into ${counted(unfolded.count, "row")}`}\n${rowsText(after, unfolded)}\n`,
  );
  if (wishes.write === undefined) return;
  writeFolder(output.path(wishes.write), unfolded.notebook);
  output.write(`${say`written to ${wishes.write}`}\n`);
}
