import { describe, expect, it } from "vitest";
import type { CellValue } from "../../src/engine/value";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, type Notebook } from "../../src/notebook/model";
import { shippedFunction } from "../../src/notebook/named-function";
import { unfoldCall } from "../../src/notebook/unfold";
import { sheetOf } from "./arguments-page";

const head = shippedFunction("OIL.HEAD");
if (!head) throw new Error("OIL.HEAD");

/** Row 2 decides, rows 3 and 4 are what the function is given, row 5 calls it. */
const page = (call: string): Notebook =>
  sheetOf(
    `Quantity,Key,Unit,Basis,A\nChoice,choice,1,chosen,1\nDepth,depth,mm,measured,200\nOil,oil,kg/m3,data sheet,870\nHead,head,mm,rule,"=${call.replaceAll('"', '""')}"\nAfter,after,mm,sum,"=IF(ISNUMBER(E5),E5+1,""none"")"\n`,
  );

const calls = [
  "IF(E2=1,OIL.HEAD(E3,E4),5)",
  "IF(E2=1,5,OIL.HEAD(E3,E4,1000))",
  'IF(ISNUMBER(E3),OIL.HEAD(E3,E4),"not measured yet")',
  "IF(E2=1,IF(E3>100,OIL.HEAD(E3,E4)*2,7),8)",
  "IF(E2=1,3,IF(E2=2,OIL.HEAD(E3/0,E4),OIL.HEAD(E3,E4)))",
  'IFERROR(OIL.HEAD(E3,E4),"no head")',
  "IFS(E2=1,4,E2=2,OIL.HEAD(E3,E4),TRUE,OIL.HEAD(E3,E4)+1)",
  "CHOOSE(E2,6,OIL.HEAD(E3,E4),9)",
  "SWITCH(E2,1,2,2,OIL.HEAD(E3,E4),3)",
  "IF(OR(E2=1,E2=2),1,OIL.HEAD(E3,E4)/E2)",
  "MAX(IF(E2=1,0,OIL.HEAD(E3,E4)),2)",
] as const;

const states = [1, 2, 3].flatMap((choice) =>
  ["200", "-5", "", "deep", "30000", "=1/0"].flatMap((depth) =>
    ["870", "1100", ""].map((oil) => [String(choice), depth, oil] as const),
  ),
);

/** Which error it is depends on the rows; that it is one does not. */
const shown = (value: CellValue): unknown => (value.kind === "error" ? "error" : value);

describe("a call in a branch that is not taken", () => {
  it.each(calls)("keeps the cell's value when it is unfolded, whatever its rows come to: %s", (call) => {
    const before = page(call);
    const id = before.pages[0]?.id ?? "";
    const after = unfoldCall(before, id, 4, head);
    const moved = after.row - 4;
    const [whole, apart] = [new LiveNotebook(before), new LiveNotebook(after.notebook)];
    const seen = new Set<string>();
    for (const [choice, depth, oil] of states) {
      const typed = (notebook: Notebook) =>
        setCells(
          notebook,
          [choice, depth, oil].map((text, i) => ({ page: id, row: i + 1, column: firstOption, text })),
        );
      whole.apply("state", typed);
      apart.apply("state", typed);
      for (const row of [4, 5]) {
        const one = shown(whole.value({ page: id, row, column: firstOption }));
        const other = shown(apart.value({ page: id, row: row + moved, column: firstOption }));
        expect({ choice, depth, oil, row, value: other }).toEqual({ choice, depth, oil, row, value: one });
        seen.add(JSON.stringify(one));
      }
    }
    expect(seen.size).toBeGreaterThan(2);
    whole.close();
    apart.close();
  });
});
