import { setCells } from "../../notebook/edit-cells";
import { addOption, optionColumn } from "../../notebook/edit-options";
import type { Notebook } from "../../notebook/model";
import { cellOf } from "../rows";
import { valueText } from "./print";
import type { OptionTable } from "./read";

/**
 * Brings the options of a table into the notebook, each as a copy of the base option with its own inputs.
 *
 * @throws Refusal for an option name that is taken or not allowed; then nothing has changed.
 */
export const addOptions = (notebook: Notebook, table: OptionTable, base: string): Notebook =>
  table.options.reduce((before, { name, values }) => {
    const after = addOption(before, name, base);
    const column = optionColumn(after, name);
    const cells = table.rows.flatMap((row, i) => {
      const value = values[i];
      return value === undefined ? [] : [{ ...cellOf(row, column), text: valueText(value) }];
    });
    return cells.length === 0 ? after : setCells(after, cells);
  }, notebook);
