import { describe, expect, it } from "vitest";
import { type Audit, auditNotebook, ruleList } from "../../src/audit/audit";
import { review } from "../../src/audit/review";
import { type CellText, setCells } from "../../src/notebook/edit-cells";
import { insertRows } from "../../src/notebook/edit-lines";
import { addOption } from "../../src/notebook/edit-options";
import { renamePage } from "../../src/notebook/edit-pages";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";
import { at, sample } from "../notebook/sample";
import { worked, workedFolders } from "../notebook/worked";

const write = (notebook: Notebook, page: string, cells: Readonly<Record<string, string>>): Notebook =>
  setCells(
    notebook,
    Object.entries(cells).map(([cell, text]): CellText => ({ ...at(notebook, page, cell), text })),
  );

function audit(notebook: Notebook, shipped?: Notebook): Audit {
  const live = new LiveNotebook(notebook);
  const found = auditNotebook(live, shipped ? { shipped } : {});
  live.close();
  return found;
}

/** `rule cell: message` of what one rule says. */
const said = (rule: string, { open }: Audit): string[] =>
  open.filter((one) => one.rule === rule).map(({ cell, message }) => `${cell}: ${message}`);

const tried: readonly (readonly [rule: string, page: string, cells: Readonly<Record<string, string>>, says: string])[] =
  [
    ["error-value", "Supply", { E7: "=1/0" }, "E7: #DIV/0!"],
    [
      "outside-published",
      "Supply",
      { E7: "=CONDUCTOR.DROP(E3,E4,36,50)" },
      "E7: #N/A area: 36 mm2 is not in IEC 60228 sizes",
    ],
    ["typed-over", "Supply", { F7: "1.2" }, "F7: 1.2 is typed where the other options calculate"],
    ["text-as-number", "Supply", { F4: "17,0" }, 'F4: "17,0" is text in a row of numbers'],
    ["units", "Supply", { C6: "mV" }, "factor 1000"],
    ["unknown-unit", "Supply", { C6: "voltish" }, 'unit "voltish" is not known'],
    [
      "differs",
      "Supply",
      { G7: "=CONDUCTOR.DROP(G3,G4,G5,20)" },
      "G7: =CONDUCTOR.DROP(G3,G4,G5,20) is another formula",
    ],
    ["blank-reference", "Supply", { E3: "" }, "E7: Current while running (Supply!E3) is blank"],
    ["short-range", "Free", { A4: "1", A5: "2", A6: "3", A7: "=SUM(A4:A5)" }, "A7: the range stops before Free!A6"],
    [
      "typed-number",
      "Supply",
      { E7: "=CONDUCTOR.DROP(E3,E4,E5,50)*1.07" },
      "E7: 50, 1.07 are typed inside the formula",
    ],
    ["scale-slip", "Supply", { F4: "17000" }, "F4: 17000 m beside 11.5 to 21.4 m in the other options"],
    ["swallowed-error", "Supply", { E8: "=IFERROR(E6/E7-1,0)" }, "E8: an error in"],
    ["volatile", "Supply", { E9: "=RAND()" }, "E9: RAND gives another result each time"],
    ["long-formula", "Supply", { E9: `=${"E7+".repeat(120)}E7` }, "E9: the formula is 363 letters long"],
    ["link-chain", "Free", { A1: "='Side force'!E3" }, "A1: a link to 'Side force'!E3, which is itself a link"],
  ];

describe("each rule of the audit", () => {
  it.each(tried)(
    "%s is silent on a sound notebook and speaks of one with a mistake on %s",
    (rule, page, cells, says) => {
      expect(said(rule, audit(sample())).join("\n")).not.toContain(says);
      expect(said(rule, audit(write(sample(), page, cells))).join("\n")).toContain(says);
    },
  );

  it("tells an error once, at the cell where it begins, also when it came by an edit", () => {
    const live = new LiveNotebook(sample());
    live.follow(write(sample(), "Supply", { E7: "=SQRT(0-E3)" }));
    const errors = auditNotebook(live).open.filter(({ rule }) => rule === "error-value");
    expect(errors.map(({ cell }) => cell)).toEqual(["E7"]);
    live.close();
  });

  it("names an input that no formula uses", () => {
    const notebook = write(sample(), "Supply", { E8: "=E7-1", F8: "=F7-1", G8: "=G7-1" });
    expect(said("unused-input", audit(sample()))).toEqual([]);
    expect(said("unused-input", audit(notebook)).join()).toContain("no formula uses Allowed drop");
  });

  it("misses a row that a count of blanks leaves out", () => {
    const counted = write(sample(), "Side force", { E4: "=COUNTBLANK(Supply!E3:E5)" });
    expect(said("short-range", audit(counted)).join()).toContain("the range stops before Allowed drop (Supply!E6)");
    const whole = write(sample(), "Side force", { E4: "=COUNTBLANK(Supply!E3:E6)" });
    expect(said("short-range", audit(whole))).toEqual([]);
  });

  it("does not miss a count of blanks beside measured numbers, and still misses a number beside them", () => {
    // Rows 4 to 6 are numbers, row 7 says in a number how many cells are blank, row 8 points to such a count.
    const sheet = (last: string, total = "=MIN(A4:A5)"): string[] =>
      said(
        "short-range",
        audit(write(sample(), "Free", { A4: "1", A5: "2", A6: last, A7: "=1-COUNTA(B1:B2)", B7: total })),
      );
    expect(sheet("=0-COUNTBLANK(B1:B2)-COUNTBLANK(B3:B3)")).toEqual([]);
    expect(sheet("=A7")).toEqual([]);
    expect(sheet("3").join()).toContain("the range stops before Free!A6");
    expect(sheet("=B1*COUNTA(B1:B2)/2").join()).toContain("the range stops before Free!A6");
    // A block of counts is one, too.
    expect(sheet("=0-COUNTBLANK(B1:B2)", "=SUM(A6:A7)")).toEqual([]);
    const counts = {
      A4: "=0-COUNTBLANK(B1:B1)",
      A5: "=0-COUNTBLANK(B2:B2)",
      A6: "=0-COUNTBLANK(B3:B3)",
      B7: "=MIN(A4:A5)",
    };
    expect(said("short-range", audit(write(sample(), "Free", counts))).join()).toContain(
      "the range stops before Free!A6",
    );
  });

  it("does not miss a yes or no or a text beside numbers, and still misses a number there", () => {
    const sheet = (beside: string): string[] =>
      said("short-range", audit(write(sample(), "Free", { A4: "1", A5: "2", A6: beside, B7: "=SUM(A4:A5)" })));
    expect(sheet("=A4>1")).toEqual([]);
    expect(sheet("metres")).toEqual([]);
    expect(sheet('=IF(A4>1,"yes","no")')).toEqual([]);
    expect(sheet("=B4*3").join()).toContain("the range stops before Free!A6");
    expect(sheet("3").join()).toContain("the range stops before Free!A6");
  });

  it.each(workedFolders)("has nothing open in %s", (folder) => {
    expect(said("short-range", audit(worked(folder)))).toEqual([]);
  });

  it("finds a tick of something that has changed since", () => {
    const ticked = review(sample(), "Supply.drop@Cruiser", "N. N.", "2026-11-26");
    expect(said("stale-review", audit(ticked))).toEqual([]);
    expect(said("stale-review", audit(write(ticked, "Supply", { F4: "18" }))).join()).toContain("has changed since");
    expect(said("stale-review", audit(write(ticked, "Supply", { E4: "18" })))).toEqual([]);
  });

  it("has a test of its own", () => {
    // The rule of own functions is tried in tests/notebook/own.
    const shown = new Set([
      ...tried.map(([rule]) => rule),
      "own-function",
      "unused-input",
      "stale-review",
      "adapted",
      "implausible",
    ]);
    expect(new Set(ruleList.map(({ name }) => name))).toEqual(shown);
  });

  it("questions a number outside the limits that its row keeps", () => {
    const limited = { ...sample(), about: { ...sample().about, rows: { "Supply.run": { low: 2, high: 20 } } } };
    expect(said("implausible", audit(limited))).toEqual([
      "G4: 21.4 m is outside the plausible 2 to 20 m; measure again or widen the limits",
    ]);
  });
});

describe("what was adapted in a shipped notebook", () => {
  const told = (now: Notebook) => said("adapted", audit(now, sample()));

  it("is nothing while only numbers, options, page names and places of rows differ", () => {
    const notebook = write(sample(), "Supply", { E4: "99", F3: "12" });
    expect(told(notebook)).toEqual([]);
    const { page } = at(notebook, "Supply", "A1");
    expect(told(insertRows(notebook, page, 3, 2))).toEqual([]);
    expect(told(addOption(notebook, "Ketch"))).toEqual([]);
    expect(told(renamePage(notebook, page, "Battery"))).toEqual(["A1: the page was called Supply"]);
  });

  it("is told row by row: formulas by option, units, names, limits, rows that came and went", () => {
    const notebook = write(sample(), "Supply", {
      F7: "=CONDUCTOR.DROP(F3,F4,F5,60)",
      C6: "mV",
      A4: "Run",
      E8: "1",
      B9: "other",
    });
    const lines = told({ ...notebook, about: { ...notebook.about, rows: { "Supply.run": { low: 1, high: 3 } } } });
    expect(lines).toEqual([
      "A4: quantity: was Conductor run out and back, is Run",
      "A4: choices or plausible limits: was none, is 1 to 3",
      "A5: choices or plausible limits: was 35, 50, 70, 95, is none",
      "A6: unit: was V, is mV",
      "A7: formula was =CONDUCTOR.DROP(E3,E4,E5,50), is =CONDUCTOR.DROP(F3,F4,F5,60) in Cruiser",
      "A8: was calculated (=E6/E7-1), is now typed in Sloop",
      "A9: this row was added",
      "A9: the row Worst of all was removed",
    ]);
  });

  it("is not asked of a notebook that was not begun with a shipped one", () => {
    expect(said("adapted", audit(write(sample(), "Supply", { A4: "Run" })))).toEqual([]);
  });
});
