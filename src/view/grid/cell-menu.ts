import { isOptionPage } from "../../notebook/model";
import { edges } from "../block";
import type { Desk } from "../desk";
import { calledHere } from "../edits/called-here";
import { clearBlock } from "../edits/clear-block";
import { fillSelection } from "../edits/fill-block";
import { insertColumnsAt, insertRowsAt, removeSelectedColumns, removeSelectedRows } from "../edits/lines";
import { counted } from "../shown/count-words";
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
  const insert = (count: number, thing: string, where: string) => `Insert ${counted(count, thing)} ${where}`;
  return [
    { label: insert(rows, "row", "above"), keys: "Ctrl Alt I", act: () => insertRowsAt(desk, "above") },
    { label: insert(rows, "row", "below"), act: () => insertRowsAt(desk, "below") },
    { label: `Remove ${counted(rows, "row")}`, keys: "Ctrl Alt R", act: () => removeSelectedRows(desk) },
    ...(isOption
      ? []
      : ([
          { label: insert(columns, "column", "to the left"), begins: true, act: () => insertColumnsAt(desk, "left") },
          { label: insert(columns, "column", "to the right"), act: () => insertColumnsAt(desk, "right") },
          { label: `Remove ${counted(columns, "column")}`, act: () => removeSelectedColumns(desk) },
        ] as const)),
    { label: "Repeat first row downwards", keys: "Ctrl D", begins: true, act: () => fillSelection(desk, "down") },
    { label: "Repeat first column to the right", keys: "Ctrl Shift D", act: () => fillSelection(desk, "right") },
    { label: "Empty the cells", keys: "Delete", act: () => clearBlock(desk) },
    ...calledHere(desk).map((name, i): MenuEntry => {
      const entry = { label: `Unfold ${name} into rows`, act: () => unfold(name) };
      return i === 0 ? { ...entry, keys: "Ctrl Alt U", begins: true } : entry;
    }),
    { label: "Tick the cell as reviewed", keys: "Ctrl Alt K", begins: true, act: () => tick("cell") },
    ...(isOption ? [{ label: "Tick the row as reviewed", act: () => tick("row") }] : []),
    { label: "Wider column", begins: true, act: () => widen(24) },
    { label: "Narrower column", act: () => widen(-24) },
    ...(isOption ? [{ label: "Hull options …", begins: true, act: options } as const] : []),
  ];
}
