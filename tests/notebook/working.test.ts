import { describe, expect, it } from "vitest";
import { insideSentence } from "../../src/formula/inside";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";
import { positionOf, readAddress } from "../../src/notebook/rows";
import { type Working, workingOf } from "../../src/notebook/working";
import { at, sample } from "./sample";
import { formulaCells, worked, workedFolders } from "./worked";

function working(live: LiveNotebook, page: string, cell: string): Working {
  const found = workingOf(live, at(live.notebook, page, cell));
  if (!found) throw new Error(`no working of ${cell}`);
  return found;
}

const withText = (notebook: Notebook, page: string, cell: string, text: string): Notebook =>
  setCells(notebook, [{ ...at(notebook, page, cell), text }]);

describe("the working of a cell", () => {
  it("writes the formula in addresses, in quantity names and with the numbers put in", () => {
    const live = new LiveNotebook(sample());
    const { formula, quantity, address, cell, unit, value, calls, parts, usedBy } = working(live, "Supply", "F7");
    expect({ quantity, address, cell, unit }).toEqual({
      quantity: "Voltage lost",
      address: "Supply.drop@Cruiser",
      cell: "Supply!F7",
      unit: "V",
    });
    expect(formula).toEqual({
      cells: "CONDUCTOR.DROP(F3,F4,F5,50)",
      names: "Voltage lost = CONDUCTOR.DROP(Current while running, Conductor run out and back, Conductor area, 50)",
      numbers: "Voltage lost = CONDUCTOR.DROP(310, 17, 95, 50)",
    });
    expect(calls).toHaveLength(1);
    expect(value).toEqual({ kind: "number", value: calls[0]?.explanation?.result });
    expect(parts.map((part) => part.address)).toEqual([
      "Supply.I_run@Cruiser",
      "Supply.run@Cruiser",
      "Supply.area@Cruiser",
    ]);
    expect(usedBy.map((part) => part.address)).toContain("Supply.drop_ok@Cruiser");
    live.close();
  });

  it("names other pages and other options, and lists ranges", () => {
    const live = new LiveNotebook(sample());
    expect(working(live, "Side force", "E3").formula?.names).toBe("Volts lost = Supply: Voltage lost");
    expect(working(live, "Supply", "E9").formula?.names).toBe("Worst of all = MAX(Voltage lost … Voltage lost @Pilot)");
    expect(working(live, "Free", "B2").formula?.numbers).toBe("SUM({240, 310, 420})");
    live.close();
  });

  it("explains nested calls, inner ones first, and says which branch counts", () => {
    const notebook = withText(
      sample(),
      "Supply",
      "E9",
      "=IF(E3>300,CONDUCTOR.DROP(E3,E4,E5),CONDUCTOR.DROP(E3,E4,CONDUCTOR.LEAST(E3,E4,E6)))",
    );
    const live = new LiveNotebook(notebook);
    const { calls, value } = working(live, "Supply", "E9");
    expect(calls.map(({ name, used }) => [name, used])).toEqual([
      ["CONDUCTOR.DROP", false],
      ["CONDUCTOR.LEAST", true],
      ["CONDUCTOR.DROP", true],
    ]);
    expect(calls[2]?.explanation?.arguments[2]?.value).toBe(calls[1]?.explanation?.result);
    expect(value).toEqual({ kind: "number", value: calls[2]?.explanation?.result });
    live.close();
  });

  it("takes blanks, texts and ranges to a function as the cell does", () => {
    const notebook = withText(sample(), "Supply", "E9", "=HOURS.JOIN(E3:G3,0.5)+CONDUCTOR.DROP(E3,E4,E5,,)");
    const live = new LiveNotebook(notebook);
    const drop = working(live, "Supply", "E9").calls.find(({ name }) => name === "CONDUCTOR.DROP");
    expect(drop?.explanation?.arguments.map(({ by }) => by)).toEqual(["given", "given", "given", "default", "default"]);
    live.close();
  });

  it("shows the refusal of a function, and the error of an argument with its cell", () => {
    const refused = new LiveNotebook(withText(sample(), "Supply", "E7", "=CONDUCTOR.DROP(E3,E4,36,50)"));
    const blank = withText(sample(), "Supply", "E4", "");
    const first = working(refused, "Supply", "E7").calls[0];
    expect(first?.refusal).toContain("next is 50 mm2");
    expect(first?.explanation?.steps[0]?.refusal).toBe(first?.refusal);
    const open = new LiveNotebook(withText(blank, "Supply", "E9", "=CONDUCTOR.DROP(E7,1,50)"));
    const passed = working(open, "Supply", "E9").calls[0];
    expect(passed?.explanation).toBeUndefined();
    expect(passed?.refusal).toBe("run: blank (from Supply!E7)");
    refused.close();
    open.close();
  });

  it("says of an input where it comes from, what is plausible, and who uses it", () => {
    const notebook = sample();
    const live = new LiveNotebook({
      ...notebook,
      about: { ...notebook.about, rows: { "Supply.run": { low: 2, likely: 10, high: 15 } } },
    });
    const input = working(live, "Supply", "F4");
    expect(input).toMatchObject({ kind: "input", basis: "measured", formula: undefined, calls: [] });
    expect(input.limits).toMatchObject({ low: 2, likely: 10, high: 15, plausible: false });
    expect(working(live, "Supply", "E4").limits?.plausible).toBe(true);
    expect(input.usedBy.map(({ address }) => address)).toEqual(["Supply.drop@Cruiser"]);
    live.close();
  });

  it("still tells value, inputs and readers when the engine does not show its formulas", () => {
    const live = new LiveNotebook(sample());
    const closed = new Proxy(live, {
      get: (target, name) =>
        name === "showsFormulas" ? false : name === "parsed" ? () => undefined : Reflect.get(target, name, target),
    });
    const found = workingOf(closed, at(live.notebook, "Supply", "F7"));
    expect(found?.note).toContain("results are not touched");
    expect(found?.formula).toEqual({ cells: "CONDUCTOR.DROP(F3,F4,F5,50)", names: undefined, numbers: undefined });
    expect(found?.value.kind).toBe("number");
    expect(found?.parts).toHaveLength(3);
    live.close();
  });

  it.each(workedFolders)(
    "every result of %s has one, and its functions give the cell's bits",
    { timeout: 60_000 },
    (folder) => {
      const live = new LiveNotebook(worked(folder));
      let alone = 0;
      for (const cell of formulaCells(live.notebook)) {
        const found = workingOf(live, cell) as Working;
        expect(found.formula?.names).toBeTruthy();
        expect(found.formula?.numbers).toBeTruthy();
        for (const call of found.calls) {
          expect(call.explanation ?? call.refusal).toBeDefined();
          if (call.explanation) {
            const { valid, sources, arguments: args } = call.explanation;
            expect(valid).not.toBe("");
            expect(sources.every(({ line }) => line !== "") && sources.length > 0, call.name).toBe(true);
            expect(
              args.every(({ allowed, unit }) => allowed !== "" && unit !== ""),
              call.name,
            ).toBe(true);
            // Every branch that counts was given what the function holds for; the worked notebooks show no refusal.
            if (call.used)
              expect(insideSentence(call.explanation), call.cells).toBe("All inputs are inside what is allowed.");
          }
          for (const step of call.explanation?.steps ?? []) expect(step.symbols.mathml).toContain("<math");
        }
        const only = /^[A-Z.]+\([^()]*\)$/.test(found.formula?.cells ?? "") && found.calls.length === 1;
        if (only && found.value.kind === "number") {
          alone++;
          expect(found.value.value).toBe(found.calls[0]?.explanation?.result);
        }
      }
      expect(alone).toBeGreaterThan(10);
      live.close();
    },
  );
});

describe("an address", () => {
  it("leads to the cell whose working it is", () => {
    const live = new LiveNotebook(sample());
    const found = workingOf(live, positionOf(live.notebook, readAddress("Supply.drop@Pilot")));
    expect(found?.cell).toBe("Supply!G7");
    live.close();
  });
});
