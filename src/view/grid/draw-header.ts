import { firstOption, isOptionPage, type Page } from "../../notebook/model";
import { hasHeader } from "../../notebook/own/function-page";
import { columnName } from "../../notebook/references";
import type { CellMark } from "../cell-marks";
import { headName } from "./head-name";

function part(name: string, text: string): HTMLElement {
  const element = document.createElement("span");
  element.className = name;
  element.textContent = text;
  return element;
}

/** The head of a column: its letter as a faint mark in the margin, and on option pages its name. */
export function drawHeader(page: Page, column: number, th: HTMLTableCellElement, isSign = false): void {
  const label = th.querySelector(".colHeader");
  if (!label) return;
  const name = headName(page, column);
  const isCorner = column < 0 || th.previousElementSibling === null;
  label.replaceChildren(
    ...(isCorner ? [] : [part("letter", columnName(column)), ...(name ? [part("name", name)] : [])]),
  );
  if (name && !isCorner) label.setAttribute("title", name);
  else label.removeAttribute("title");
  th.classList.toggle("named", hasHeader(page));
  th.classList.toggle("sign", isSign && !isCorner);
  th.classList.toggle("right", isOptionPage(page) && column >= firstOption);
}

/** The head of a row: its number, with the mark of a tick on the whole row. */
export function drawRowHead(th: HTMLTableCellElement, marks: readonly CellMark[]): void {
  const kinds = marks.map(({ kind }) => kind).join(" ");
  th.classList.toggle("tick", kinds.includes("tick"));
  th.classList.toggle("stale-tick", kinds.includes("stale"));
  const words = marks.map((one) => one.words).join("\n");
  if (words) th.title = words;
  else th.removeAttribute("title");
}
