import { describe, expect, it } from "vitest";
import { auditNotebook } from "../../src/audit/audit";
import { callFunction } from "../../src/formula/call";
import { Fault } from "../../src/formula/fault";
import { whyNotUnfolded } from "../../src/formula/unfold/reason";
import type { Answer, Given } from "../../src/formula/value";
import { catalogue } from "../../src/functions";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, lead, type Notebook, pageByName, textAt } from "../../src/notebook/model";
import { shippedFunction } from "../../src/notebook/named-function";
import { exampleFormula } from "../../src/notebook/proof-page";
import { namedIn } from "../../src/notebook/row-calls";
import { rowOfKey } from "../../src/notebook/rows";
import { unfoldCall } from "../../src/notebook/unfold";
import { anyArguments } from "../formula/any-arguments";
import { seeded } from "../formula/random-expression";
import { argumentsPage, sheetOf } from "./arguments-page";
import { at, sample } from "./sample";
import { formulaCells, worked } from "./worked";

const definition = (name: string) => {
  const found = shippedFunction(name);
  if (!found) throw new Error(name);
  return found;
};

const unfolded = (notebook: Notebook, row: number, name: string) =>
  unfoldCall(notebook, notebook.pages[0]?.id ?? "", row, definition(name));

const texts = (notebook: Notebook, page = 0): string => (notebook.pages[page]?.rows ?? []).join("\n");

const algebraic = catalogue.filter((one) => whyNotUnfolded(one) === undefined);

/** What a cell of a function shows: its answer, NaN for a refusal. */
function answer(one: (typeof catalogue)[number], given: readonly Given[]): Answer {
  try {
    return callFunction(one, given);
  } catch (problem) {
    if (problem instanceof Fault) return Number.NaN;
    throw problem;
  }
}

describe("a call in its place", () => {
  it("becomes one row a step in plain formulas for every option, with units, sources and keys", () => {
    const page = sheetOf(
      'Quantity,Key,Unit,Basis,A,B\nPower,P,kW,chosen,4,6\nVolts,U,V,chosen,12,24\nHead,h,m,,"=OIL.HEAD(0.2,30)*2",',
    );
    const after = unfolded(page, 3, "OIL.HEAD");
    expect(texts(after.notebook)).toMatchInlineSnapshot(`
      "Quantity,Key,Unit,Basis,A,B
      Power,P,kW,chosen,4,6
      Volts,U,V,chosen,12,24
      Waterline down to the shaft's seal, deep condition,h_depth,mm,depth of OIL.HEAD; allowed 0 to 20000 mm,0.2,
      Density of the oil,h_oil,kg/m3,oil of OIL.HEAD; allowed 700 to 1100 kg/m3,30,
      Density of the water,h_water,kg/m3,water of OIL.HEAD; allowed 990 to 1050 kg/m3,1025,
      Inside the limits of OIL.HEAD,h_limits,,depth 0 to 20000 mm; oil 700 to 1100 kg/m3; water 990 to 1050 kg/m3,=AND(ISNUMBER(E4),E4>=0,E4<=20000,ISNUMBER(E5),E5>=700,E5<=1100,ISNUMBER(E6),E6>=990,E6<=1050),
      OIL.HEAD answers only where this holds,h_must_hold,,otherwise: oil: oil kg/m3 is heavier than the water's water kg/m3 (allowed 700 up to the water's),=E5<=E6,
      Oil is lighter, so its column must be longer,h_h,mm,step h of OIL.HEAD,=E4*(E6/E5-1),
      Head,h,m,,=IF(AND(E7,E8),E9,NA())*2,"
    `);
  });
});

describe("every named function", () => {
  it.each(catalogue)("$name: its example keeps its bits, or a sentence says why it cannot be unfolded", (one) => {
    const text = exampleFormula(one, one.examples[0].given);
    const notebook = sheetOf(`Quantity,Key,Unit,Basis,A\nResult,r,,,"${text.replaceAll('"', '""')}"\n`);
    const reason = whyNotUnfolded(one);
    if (reason) {
      expect(reason).toMatch(new RegExp(`^${one.name} cannot be unfolded: .{30,}\\.$`));
      expect(() => unfolded(notebook, 1, one.name)).toThrow(reason);
      return;
    }
    const after = unfolded(notebook, 1, one.name);
    const [before, now] = [new LiveNotebook(notebook), new LiveNotebook(after.notebook)];
    const page = notebook.pages[0]?.id ?? "";
    const value = now.value({ page, row: after.row, column: firstOption });
    expect(value).toEqual(before.value({ page, row: 1, column: firstOption }));
    expect(value.kind).not.toBe("error");
    expect(texts(after.notebook)).not.toContain(`${one.name}(`);
  });

  it("gives the bits of its rows, and no value where they give none, blanks and wrong kinds included", {
    timeout: 60_000,
  }, () => {
    const random = seeded(62);
    let numbers = 0;
    for (const one of algebraic) {
      // A cell holds fifteen digits; past all size, a step on the way is an error in a cell and no number.
      const short = (value: Given): Given => {
        if (typeof value !== "number") return value;
        return Math.abs(value) < 1e-200 || Math.abs(value) > 1e200 ? 0 : Number(value.toPrecision(15)) + 0;
      };
      const columns = Array.from({ length: 40 }, (_, i) =>
        anyArguments(random, one, i % 3 === 0 ? 0.3 : 0).map((value) =>
          short(typeof value === "object" ? null : value),
        ),
      );
      const { notebook, row } = argumentsPage(one, columns);
      const after = unfolded(notebook, row, one.name);
      const live = new LiveNotebook(after.notebook);
      columns.forEach((given, i) => {
        const value = live.value({ page: notebook.pages[0]?.id ?? "", row: after.row, column: firstOption + i });
        const shown =
          value.kind === "error"
            ? Number.NaN
            : value.kind === "text"
              ? value.text
              : value.kind === "blank"
                ? null
                : value.value;
        const wanted = answer(one, given);
        if (typeof wanted === "number" && !Number.isNaN(wanted)) numbers++;
        if (!Object.is(shown, wanted))
          expect({ name: one.name, given, shown }).toEqual({ name: one.name, given, shown: wanted });
      });
      live.close();
    }
    expect(algebraic.length).toBeGreaterThan(70);
    expect(numbers).toBeGreaterThan(1000);
  });
});

describe("every call of the worked notebook that is algebra", () => {
  it("is unfolded, no cell changes its value, and the audit finds no error of its own", { timeout: 60_000 }, () => {
    const notebook = worked("sheets/three-hulls");
    let after = notebook;
    let calls = 0;
    for (const page of notebook.pages.filter(isOptionPage)) {
      for (let row = 1; row < page.rows.length; row++) {
        const key = textAt(page, row, lead.key);
        if (key === "") continue;
        const names = new Set((page.rows[row] ?? []).flatMap((text) => namedIn(text, shippedFunction)));
        for (const one of names) {
          if (whyNotUnfolded(one)) continue;
          const now = pageByName(after, page.name);
          after = unfoldCall(after, page.id, now ? rowOfKey(now, key) : -1, one).notebook;
          calls++;
        }
      }
    }
    expect(calls).toBeGreaterThan(100);
    const [old, live] = [new LiveNotebook(notebook), new LiveNotebook(after)];
    const differing = formulaCells(notebook).filter((cell) => {
      const page = notebook.pages.find(({ id }) => id === cell.page);
      const now = after.pages.find(({ id }) => id === cell.page);
      const key = page && isOptionPage(page) ? textAt(page, cell.row, lead.key) : "";
      if (!page || !now || key === "") return false;
      const [a, b] = [old.value(cell), live.value({ ...cell, row: rowOfKey(now, key) })];
      return a.kind === "error" ? b.kind !== "error" : JSON.stringify(a) !== JSON.stringify(b);
    });
    expect(differing).toEqual([]);
    // A call in a branch that is not taken, with text for a number, has rows that are not used.
    expect(auditNotebook(live).open.filter(({ severity }) => severity === "error")).toEqual([]);
    old.close();
    live.close();
  });
});

describe("the notebook around an unfolded row", () => {
  const supply = `Quantity,Key,Unit,Basis,A,B
Depth,depth,mm,chosen,200,300
Oil,oil,kg/m3,data sheet,870,900
Head,head,mm,rule,"=OIL.HEAD(E2,E3)","=OIL.HEAD(F2,F3,1000)"
Other,other,mm,chosen,5,7
Sum,sum,mm,sum,=SUM(E4:E5),=SUM(F4:F5)
`;

  it("is as before after one undo, and unfolded again after redo", () => {
    const notebook = sheetOf(supply);
    const live = new LiveNotebook(notebook);
    const page = notebook.pages[0]?.id ?? "";
    live.apply("OIL.HEAD unfolded", (now) => unfoldCall(now, page, 3, definition("OIL.HEAD")).notebook);
    const after = live.notebook;
    expect(after.pages[0]?.rows.length).toBeGreaterThan(8);
    live.undo();
    expect(live.notebook).toBe(notebook);
    expect(live.steps.undo).toBeUndefined();
    live.redo();
    expect(live.notebook).toBe(after);
    live.close();
  });

  it("follows: what refers to the row refers to it where it is now", () => {
    const notebook = sheetOf(supply);
    const after = unfolded(notebook, 3, "OIL.HEAD");
    const live = new LiveNotebook(after.notebook);
    const sum = { page: notebook.pages[0]?.id ?? "", row: after.row + 2, column: firstOption };
    expect(live.text(sum)).toBe(`=SUM(E${after.row + 1}:E${after.row + 2})`);
    expect(live.value(sum)).toEqual({ kind: "number", value: 200 * (1025 / 870 - 1) + 5 });
    live.close();
  });

  it("does not count new rows in a range that runs over the row: they go to the end of the page", () => {
    const notebook = sheetOf(supply.replaceAll("SUM(E4", "SUM(E3").replaceAll("SUM(F4", "SUM(F3"));
    const before = new LiveNotebook(notebook);
    const after = unfolded(notebook, 3, "OIL.HEAD");
    const live = new LiveNotebook(after.notebook);
    expect([after.row, after.first]).toEqual([3, 7]);
    expect(after.notebook.pages[0]?.rows[6]?.join()).toBe("Head: steps,,,,,");
    const sum = { page: notebook.pages[0]?.id ?? "", row: 5, column: firstOption };
    expect(live.value(sum)).toEqual(before.value(sum));
    expect(() => unfolded(sheetOf(supply.replace("SUM(E4:E5)", "SUM(E:E)")), 3, "OIL.HEAD")).toThrow(
      "Page!E6 reads whole columns of Page",
    );
  });

  it.each([
    ["=OIL.HEAD(E2,E3,1000,5)", "Page!E4: OIL.HEAD takes 3 arguments, got 4; mend it, then unfold it."],
    ["=OIL.HEAD(E2:E3,5)", "Page!E4: E2:E3 is a range and OIL.HEAD takes single cells; mend it, then unfold it."],
  ])("says what is wrong with %s", (call, sentence) => {
    expect(() => unfolded(sheetOf(supply.replace("=OIL.HEAD(E2,E3)", call)), 3, "OIL.HEAD")).toThrow(sentence);
  });

  it("refuses a row without the call, a free sheet, and a function that reads a table", () => {
    expect(() => unfolded(sheetOf(supply), 1, "OIL.HEAD")).toThrow("Row 2 of Page does not call OIL.HEAD");
    expect(() => unfolded(sheetOf('a,"=OIL.HEAD(200,870)"\n'), 0, "OIL.HEAD")).toThrow("Page is a free sheet");
    const notebook = sample();
    expect(() => unfoldCall(notebook, at(notebook, "Supply", "E7").page, 6, definition("CONDUCTOR.DROP"))).toThrow(
      'CONDUCTOR.DROP cannot be unfolded: its step r reads the table "',
    );
  });
});
