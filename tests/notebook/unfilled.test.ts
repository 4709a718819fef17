import { describe, expect, it } from "vitest";
import { isFormula } from "../../src/engine/content";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, lead, optionsOf, type Position } from "../../src/notebook/model";
import { rowKind } from "../../src/notebook/rows";
import { missingBehind } from "../../src/notebook/unfilled";
import { checksOf, outcomeAt } from "../../src/notebook/verdict";
import { at, sample } from "./sample";
import { worked, workedFolders } from "./worked";

const blanked = (name: string, cell: string, more: readonly { cell: string; text: string }[] = []) => {
  const notebook = sample();
  const texts = [
    { ...at(notebook, name, cell), text: "" },
    ...more.map((one) => ({ ...at(notebook, name, one.cell), text: one.text })),
  ];
  return new LiveNotebook(setCells(notebook, texts));
};

describe("an input that is missing", () => {
  it("leaves a check open that would hold with 0 in its place", () => {
    const live = blanked("Supply", "F7", [{ cell: "F8", text: "=1-F7" }]);
    const check = at(live.notebook, "Supply", "F8");
    expect(live.value(check)).toEqual({ kind: "number", value: 1 });
    expect(outcomeAt(live, check)).toEqual({ kind: "open", why: "Voltage lost (Supply!F7) is blank" });
  });

  it("is followed through other cells and pages", () => {
    const live = blanked("Side force", "F2", [
      { cell: "F3", text: "=F2*2" },
      { cell: "F4", text: "=MAX(F3:F3)" },
    ]);
    expect(missingBehind(live, at(live.notebook, "Side force", "F4"))).toContain("Push");
    expect(missingBehind(live, at(live.notebook, "Side force", "E4"))).toBeUndefined();
  });

  it.each([
    ["a formula asks whether it is filled", '=IF(F4="",1,F4)'],
    ["a formula counts blanks", "=1-COUNTBLANK(F4)"],
    ["it stands in a branch that is not taken", "=IF(F3>0,1,F4)"],
    ["it is left out of a sum over a block", "=SUM(F3:F5)"],
  ])("is none where %s", (_, formula) => {
    const live = blanked("Supply", "F4", [{ cell: "F8", text: formula }]);
    expect(live.value(at(live.notebook, "Supply", "F8")).kind).toBe("number");
    expect(missingBehind(live, at(live.notebook, "Supply", "F8"))).toBeUndefined();
  });

  it("is forgotten when it is filled in", () => {
    const live = blanked("Supply", "F7", [{ cell: "F8", text: "=1-F7" }]);
    const [input, check] = [at(live.notebook, "Supply", "F7"), at(live.notebook, "Supply", "F8")];
    expect(outcomeAt(live, check).kind).toBe("open");
    live.apply("type", (notebook) => setCells(notebook, [{ ...input, text: "0.5" }]));
    expect(outcomeAt(live, check)).toEqual({ kind: "holds", margin: 0.5 });
    live.undo();
    expect(outcomeAt(live, check).kind).toBe("open");
  });

  it.each(workedFolders)(
    "%s: no check that moves when an input is blanked says that it holds",
    { timeout: 120_000 },
    (folder) => {
      const notebook = worked(folder);
      const live = new LiveNotebook(notebook);
      const [option = ""] = optionsOf(notebook);
      const column = firstOption;
      const checks = () =>
        live.notebook.pages.flatMap((page) =>
          checksOf(live, page, option).map(({ row, outcome }) => ({ page: page.id, row, outcome })),
        );
      const before = new Map(checks().map((one) => [`${one.page} ${one.row}`, one.outcome]));
      // The longest of a block of lead times: a largest passes over blanks, as a sum does; the page's own last check sees it.
      const passedOver = new Set(["Estimate.lead_unit"]);
      const wrong: string[] = [];
      for (const page of notebook.pages.filter(isOptionPage)) {
        page.rows.forEach((cells, row) => {
          const text = cells[column] ?? "";
          if (row === 0 || text === "" || isFormula(text) || rowKind(page, row) !== "input") return;
          if (passedOver.has(`${page.name}.${cells[lead.key]}`)) return;
          const input: Position = { page: page.id, row, column };
          live.apply("blank", (one) => setCells(one, [{ ...input, text: "" }]));
          for (const { page: where, row: line, outcome } of checks()) {
            const was = before.get(`${where} ${line}`);
            const moved = was && "margin" in was && "margin" in outcome && was.margin !== outcome.margin;
            if (moved && outcome.kind === "holds")
              wrong.push(`${page.name}.${cells[1]} blank: ${where} row ${line + 1} holds`);
          }
          live.undo();
        });
      }
      expect(wrong).toEqual([]);
    },
  );
});
