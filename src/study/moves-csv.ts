import { printPage } from "../notebook/page-csv";
import type { MovesAnswer } from "./moves";
import { valueText } from "./options/print";

/** A ranking of inputs as CSV, full precision. */
export function movesCsv({ moves: found }: MovesAnswer): string {
  const head = ["input", "quantity", "unit", "value", "low", "high", "at low", "at high", "change", "percent", "note"];
  const rows = found.map((move) => [
    ...[move.name, move.quantity, move.unit],
    ...[move.value, move.low ?? null, move.high ?? null].map(valueText),
    ...[move.atLow, move.atHigh, move.over, move.percent].map((value) => valueText(value ?? null)),
    move.note,
  ]);
  return printPage([head, ...rows]);
}
