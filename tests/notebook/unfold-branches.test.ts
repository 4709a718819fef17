import { describe, expect, it } from "vitest";
import type { CellValue } from "../../src/engine/value";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, lead, type Notebook } from "../../src/notebook/model";
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
  "IF(E2=1,OIL.HEAD(E3,E4))",
  "IF(E2-1,OIL.HEAD(E3*2,E4),IF(E2=1,7,8))",
  'IF(E2=1,"a (b, c",IF(E3="",5,OIL.HEAD(E3,E4)))',
  "IFERROR(10/(E2-1)+E3,OIL.HEAD(200,E4))",
  'IFNA(IF(E2=1,NA(),E3&""),OIL.HEAD(200,E4))',
  "IFERROR(IF(E2=2,OIL.HEAD(E3,E4),1/(E2-1)),4)",
  "SWITCH(E2,1,2,OIL.HEAD(E3,E4))",
  "CHOOSE(IF(E2=2,1,2),IFS(E2=1,9,TRUE,OIL.HEAD(E3,E4)),11)",
  "IF(SUM(E2:E2)=1,OIL.HEAD(E3,E4),3)",
  "IF(OIL.HEAD(200,870)>E2*20,4,E2)",
] as const;

const states = [1, 2, 3].flatMap((choice) =>
  ["200", "-5", "", "deep", "30000", "=1/0"].flatMap((depth) =>
    ["870", "1100", ""].map((oil) => [String(choice), depth, oil] as const),
  ),
);

/** Which error it is depends on the rows; that it is one does not. */
const shown = (value: CellValue): unknown => (value.kind === "error" ? "error" : value);

/** The texts of the rows that came, under their keys. */
const came = (call: string): Record<string, string> => {
  const before = page(call);
  const after = unfoldCall(before, before.pages[0]?.id ?? "", 4, head);
  const rows = after.notebook.pages[0]?.rows.slice(after.first, after.first + after.count + 1) ?? [];
  return Object.fromEntries(rows.map((cells) => [cells[lead.key] ?? "", cells[firstOption] ?? ""]));
};

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

describe("the rows of a call in a branch", () => {
  it("say while it is not taken that they are not used, whatever is typed, and are worked out when it is", () => {
    const before = page("IF(E2=1,OIL.HEAD(E3*1,E4),5)");
    const id = before.pages[0]?.id ?? "";
    const after = unfoldCall(before, id, 4, head);
    const live = new LiveNotebook(after.notebook);
    const rows = () =>
      Array.from({ length: after.count }, (_, i) =>
        live.value({ page: id, row: after.first + i, column: firstOption }),
      );
    const type = (row: number, text: string) =>
      live.apply("type", (notebook) => setCells(notebook, [{ page: id, row, column: firstOption, text }]));
    const worked = rows();
    expect(worked[0]).toEqual({ kind: "flag", value: true });
    expect(worked.some(({ kind }) => kind === "text" || kind === "error")).toBe(false);
    type(2, "-5");
    expect(shown(live.value({ page: id, row: after.row, column: firstOption }))).toBe("error");
    for (const depth of ["-5", "deep", "=1/0", ""]) {
      type(2, depth);
      type(1, "2");
      expect(live.value({ page: id, row: after.row, column: firstOption })).toEqual({ kind: "number", value: 5 });
      const [taken, ...rest] = rows();
      expect(taken).toEqual({ kind: "flag", value: false });
      expect(rest.every((one) => one.kind === "number" || (one.kind === "text" && one.text === "not used"))).toBe(true);
      expect(rest.filter(({ kind }) => kind === "text").length).toBeGreaterThan(3);
      type(1, "1");
    }
    type(2, "200");
    expect(rows()).toEqual(worked);
    live.close();
  });

  it("ask for the branch in a row of their own, and leave numbers and words as they are", () => {
    expect(came('IF(E2=1,"a (b, c",IF(E3="",5,OIL.HEAD(E3,870)))')).toMatchInlineSnapshot(`
      {
        "head": "=IF(E2=1,"a (b, c",IF(E3="",5,IF(AND(E8,E9),E10,NA())))",
        "head_branch_taken": "=IF(E2=1,FALSE(),IF(E3="",FALSE(),TRUE()))",
        "head_h": "=IF(E5,E3*(E7/E6-1),"not used")",
        "head_limits": "=IF(E5,AND(ISNUMBER(E3),E3>=0,E3<=20000,ISNUMBER(E6),E6>=700,E6<=1100,ISNUMBER(E7),E7>=990,E7<=1050),"not used")",
        "head_must_hold": "=IF(E5,E6<=E7,"not used")",
        "head_oil": "870",
        "head_water": "1025",
      }
    `);
  });

  it.each([
    ["IF(E2=1,3,IF(E2=2,OIL.HEAD(E3,E4),4))", "=IF(E2=1,FALSE(),IF(E2=2,TRUE(),FALSE()))"],
    ["IFS(E2=1,4,TRUE,OIL.HEAD(E3,E4)+1)", "=IFS(E2=1,FALSE(),TRUE,TRUE())"],
    ["SWITCH(E2,1,2,OIL.HEAD(E3,E4))", "=SWITCH(E2,1,FALSE(),TRUE())"],
    ["CHOOSE(E2,6,OIL.HEAD(E3,E4),9)", "=CHOOSE(E2,FALSE(),TRUE(),FALSE())"],
    ["IFERROR(1/E3,OIL.HEAD(E3,E4))", "=IF(NOT(ISERROR(1/E3)),FALSE(),TRUE())"],
    ["IF(SUM(E2:E3)>5,OIL.HEAD(E3,E4),1)", "=IF(SUM(E2:E3)>5,TRUE(),FALSE())"],
  ])("ask of %s", (call, question) => {
    expect(came(call).head_branch_taken).toBe(question);
  });

  it.each([
    ["it is worked out in any case", "OIL.HEAD(E3,E4)+IF(E2=1,2,3)"],
    ["it is the condition", "IF(OIL.HEAD(E3,E4)>5,2,3)"],
    ["its error is replaced", 'IFERROR(OIL.HEAD(E3,E4),"no head")'],
    ["AND works everything out", "AND(E2=1,OIL.HEAD(E3,E4)>3)"],
    ["another cell would draw another number", "IF(RAND()>0.5,OIL.HEAD(E3,E4),3)"],
    ["another row has another number", "IF(ROW()=5,OIL.HEAD(E3,E4),3)"],
    ["there are as many choices as cells", "SUM(IF(E2:E3>1,OIL.HEAD(E3,E4),3))"],
  ])("ask for no branch where %s", (_, call) => {
    expect(Object.keys(came(call))).not.toContain("head_branch_taken");
    expect(came(call).head_limits).toMatch(/^=AND\(/);
  });
});
