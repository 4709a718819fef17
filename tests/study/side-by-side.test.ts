import { expect, it } from "vitest";
import { LiveNotebook } from "../../src/notebook/live";
import { againstBase } from "../../src/study/against-base";
import { keyedRows, rowsNamed } from "../../src/study/rows";
import { sideBySide } from "../../src/study/side-by-side";
import { sideBySideCsv } from "../../src/study/side-by-side-csv";
import { sample } from "../notebook/sample";

const live = new LiveNotebook(sample());
const all = keyedRows(live.notebook);
const row = (side: ReturnType<typeof sideBySide>, name: string) =>
  side.groups.flatMap(({ rows }) => rows).find((one) => one.name === name);

it("gives differences against the base as value and as share", () => {
  const side = sideBySide(live, { rows: all, base: "Cruiser" });
  const run = row(side, "Supply.run");
  expect(run?.cells.map(({ difference }) => difference)).toEqual([-5.5, 0, expect.closeTo(4.4, 12)]);
  expect(run?.cells[0]?.share).toBeCloseTo(-5.5 / 17, 12);
  expect(side.groups.map(({ page }) => page)).toEqual(["Supply", "Side force"]);
});

it("gives no share where it could not be read: of a margin, of nearly nothing, across 0", () => {
  expect(againstBase(1.2, -0.06, [-0.06, 1.2], true)).toEqual({ difference: 1.26, share: undefined });
  expect(againstBase(1.2, -0.06, [-0.06, 1.2], false).share).toBeUndefined();
  expect(againstBase(3, 0, [0, 3], false).share).toBeUndefined();
  expect(againstBase(3, 0.02, [0.02, 3], false).share).toBeUndefined();
  expect(againstBase(-3, -2, [-2, -3], false)).toEqual({ difference: -1, share: 0.5 });
  expect(againstBase(undefined, 2, [2, undefined], false).difference).toBeUndefined();
  const check = row(sideBySide(live, { rows: all }), "Supply.drop_ok");
  expect(check?.cells.map(({ share }) => share)).toEqual([undefined, undefined, undefined]);
  expect(check?.cells[1]?.difference).not.toBeUndefined();
});

it("says in words what rules an option out, and what the checks have to spare", () => {
  // Limits 1.2, 1.2 and 2.4 V over the drop, less 1; the sloop has the most to spare.
  const side = sideBySide(live, { rows: all });
  const check = row(side, "Supply.drop_ok");
  const margins = check?.cells.map(({ value }) => (value.kind === "number" ? value.value : 0)) ?? [];
  expect(check?.cells.map(({ isBest }) => isBest)).toEqual(margins.map((one) => one === Math.max(...margins)));
  side.options.forEach(({ ruledOutBy, words }, i) => {
    const holds = (margins[i] ?? 0) >= 0;
    expect(ruledOutBy).toEqual(holds ? [] : ["Drop against limit"]);
    expect(words).toBe(holds ? "the one check holds" : "ruled out by Drop against limit");
    expect(check?.cells[i]?.verdict).toMatch(holds ? /^holds/ : /^falls short by/);
  });
});

it("names the best of the options that are not ruled out by a row in which little is good", () => {
  const side = sideBySide(live, { rows: all, best: { name: "Side force.push", is: "least" } });
  const open = side.options.filter(({ ruledOutBy }) => ruledOutBy.length === 0).map(({ name }) => name);
  const best = side.options.filter(({ words }) => words.startsWith("best")).map(({ name }) => name);
  expect(best).toEqual(open.length > 1 ? open.slice(0, 1) : []);
});

it("leaves out rows in which all options show the same, and counts them", () => {
  const shown = sideBySide(live, { rows: all, hideEqual: true });
  expect(row(shown, "Supply.worst")).toBeUndefined();
  expect(row(shown, "Supply.run")).toBeDefined();
  expect(shown.hidden).toBe(all.length - shown.groups.flatMap(({ rows }) => rows).length);
  expect(shown.hidden).toBeGreaterThan(0);
});

it("prints values, differences, shares and words as CSV", () => {
  const side = sideBySide(live, { rows: rowsNamed(live.notebook, "Supply.run"), options: ["Cruiser", "Sloop"] });
  const [head, verdict, line] = sideBySideCsv(side).split("\n");
  expect(head).toBe(
    'Page,Quantity,Key,Unit,Cruiser,Sloop,Sloop less Cruiser,"Sloop less Cruiser, share","Cruiser, in words","Sloop, in words"',
  );
  expect(verdict).toMatch(/^,Verdict,/);
  expect(line).toBe(`Supply,Conductor run out and back,Supply.run,m,17,11.5,-5.5,${-5.5 / 17},,`);
});
