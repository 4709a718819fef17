import { isFormula } from "../../engine/content";
import { textAt } from "../../notebook/model";
import { scanCalls } from "../../notebook/scan-calls";
import { cellOf } from "../block";
import type { Desk } from "../desk";

/** Names of the named functions that the selected cell calls, outer ones first. */
export function calledHere(desk: Desk): readonly string[] {
  const { row, column } = cellOf(desk.block);
  const text = textAt(desk.page, row, column);
  if (!isFormula(text)) return [];
  return [...new Set(scanCalls(text).map(({ name }) => name))].filter((name) => desk.live?.find(name));
}
