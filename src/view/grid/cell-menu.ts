import { isOptionPage } from "../../notebook/model";
import { counted, say } from "../../words/say";
import { edges } from "../block";
import type { Desk } from "../desk";
import { calledHere } from "../edits/called-here";
import { clearBlock } from "../edits/clear-block";
import { fillSelection } from "../edits/fill-block";
import { insertColumnsAt, insertRowsAt, removeSelectedColumns, removeSelectedRows } from "../edits/lines";
import type { MenuEntry } from "./menu";

/** What can be done to the selected cells, their rows and columns. */
export function cellMenu(
  desk: Desk,
  widen: (by: number) => void,
  options: () => void,
  tick: (what: "cell" | "row") => void,
  unfold: (name: string) => void,
): MenuEntry[] {
  const { top, left, bottom, right } = edges(desk.block);
  const rows = bottom - top + 1;
  const columns = right - left + 1;
  const isOption = isOptionPage(desk.page);
  const [someRows, someColumns] = [counted(rows, "row"), counted(columns, "column")];
  return [
    { label: say`Insert ${someRows} above`, keys: say`Ctrl Alt I`, act: () => insertRowsAt(desk, "above") },
    { label: say`Insert ${someRows} below`, act: () => insertRowsAt(desk, "below") },
    { label: say`Remove ${someRows}`, keys: say`Ctrl Alt R`, act: () => removeSelectedRows(desk) },
    ...(isOption
      ? []
      : ([
          {
            label: say`Insert ${someColumns} to the left`,
            begins: true,
            act: () => insertColumnsAt(desk, "left"),
          },
          { label: say`Insert ${someColumns} to the right`, act: () => insertColumnsAt(desk, "right") },
          { label: say`Remove ${someColumns}`, act: () => removeSelectedColumns(desk) },
        ] as const)),
    { label: say`Repeat first row downwards`, keys: say`Ctrl D`, begins: true, act: () => fillSelection(desk, "down") },
    { label: say`Repeat first column to the right`, keys: say`Ctrl Shift D`, act: () => fillSelection(desk, "right") },
    { label: say`Empty the cells`, keys: say`Del`, act: () => clearBlock(desk) },
    ...calledHere(desk).map((name, i): MenuEntry => {
      const entry = { label: say`Unfold ${name} into rows`, act: () => unfold(name) };
      return i === 0 ? { ...entry, keys: say`Ctrl Alt U`, begins: true } : entry;
    }),
    { label: say`Tick the cell as reviewed`, keys: say`Ctrl Alt K`, begins: true, act: () => tick("cell") },
    ...(isOption ? [{ label: say`Tick the row as reviewed`, act: () => tick("row") }] : []),
    { label: say`Wider column`, begins: true, act: () => widen(24) },
    { label: say`Narrower column`, act: () => widen(-24) },
    ...(isOption ? [{ label: say`Hull options …`, begins: true, act: options } as const] : []),
  ];
}
