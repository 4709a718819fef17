import { say } from "../words/say";
import type { LinesAsked } from "./lines-asked";
import { signatures, warned } from "./pieces";
import { recordTables } from "./record-table";

/** What is looked at every year, when it is due, and boxes for this year's readings. */
export const serviceCard = (asked: LinesAsked): string =>
  [
    warned(
      say`before anything is opened`,
      say`isolate, lock and tag before a hand goes into the tunnel, the propeller can start by itself; disconnect the battery before a cover comes off. Local codes and the equipment's builder decide.`,
    ),
    recordTables(asked, "Service", [["motor", "Job sheet.caution_fault"]]),
    signatures([say`Serviced by`, say`Owner`]),
  ].join("\n");
