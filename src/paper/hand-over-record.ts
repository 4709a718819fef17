import { say } from "../words/say";
import type { LinesAsked } from "./lines-asked";
import { signatures } from "./pieces";
import { recordTables } from "./record-table";

/** What is measured on the finished boat beside what was predicted, with boxes for the readings. */
export const handOverRecord = (asked: LinesAsked): string =>
  [
    recordTables(asked, "Hand-over", [
      ["tip_gap", "Job sheet.caution_blades"],
      ["insulation", "Job sheet.caution_fault"],
      ["battery", "Job sheet.caution_fault"],
      ["leak_0", "Job sheet.hold_leak"],
      ["isolator", "Job sheet.hold_isolator"],
    ]),
    signatures([say`Yard`, say`Owner`]),
  ].join("\n");
