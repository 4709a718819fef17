import { printPage } from "../notebook/page-csv";
import { say } from "../words/say";
import type { MovesAnswer } from "./moves";
import { valueText } from "./options/print";

/** A ranking of inputs as CSV, full precision. */
export function movesCsv({ moves: found }: MovesAnswer): string {
  const head = [
    say`input`,
    say`quantity`,
    say`unit`,
    say`value`,
    say`low`,
    say`high`,
    say`at low`,
    say`at high`,
    say`change`,
    say`percent`,
    say`note`,
  ];
  const rows = found.map((move) => [
    ...[move.name, move.quantity, move.unit],
    ...[move.value, move.low ?? null, move.high ?? null].map(valueText),
    ...[move.atLow, move.atHigh, move.over, move.percent].map((value) => valueText(value ?? null)),
    move.note,
  ]);
  return printPage([head, ...rows]);
}
