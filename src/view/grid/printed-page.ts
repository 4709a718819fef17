import type { LiveNotebook } from "../../notebook/live";
import { firstOption, isOptionPage, type Page, textAt } from "../../notebook/model";
import { hasHeader } from "../../notebook/own/function-page";
import type { Desk } from "../desk";
import { firstLine } from "../desk";
import { rowDecimals } from "../shown/row-decimals";
import { cellLook } from "./cell-look";
import { paintCell } from "./paint-cell";

/** All cells of a page as a plain table: the grid draws only those that are in sight, and paper has room for all. */
function printedTable(live: LiveNotebook, page: Page): HTMLTableElement {
  const table = document.createElement("table");
  table.className = "cells printed";
  const columns = page.rows.reduce((most, row) => Math.max(most, row.length), 0);
  if (hasHeader(page)) {
    const head = table.createTHead().insertRow();
    for (let column = 0; column < columns; column++) {
      const th = document.createElement("th");
      th.scope = "col";
      if (isOptionPage(page) && column >= firstOption) th.className = "right";
      th.textContent = textAt(page, 0, column);
      head.append(th);
    }
  }
  const body = table.createTBody();
  for (let row = firstLine(page); row < page.rows.length; row++) {
    const line = body.insertRow();
    const decimals = rowDecimals(live, page, row);
    for (let column = 0; column < columns; column++) {
      paintCell(line.insertCell(), cellLook(live, page, row, column, decimals));
    }
  }
  return table;
}

/** Puts the whole page in the place of the grid while the browser prints it. */
export function listenToPrinting(desk: Desk, cells: HTMLElement): void {
  let table: HTMLTableElement | undefined;
  const takeAway = () => {
    table?.remove();
    table = undefined;
  };
  window.addEventListener("beforeprint", () => {
    takeAway();
    if (!desk.live || !cells.isConnected) return;
    table = printedTable(desk.live, desk.page);
    cells.after(table);
  });
  window.addEventListener("afterprint", takeAway);
}
