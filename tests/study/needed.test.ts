import { expect, it } from "vitest";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption } from "../../src/notebook/model";
import { onlyNeeded } from "../../src/study/needed";
import { keyedRows } from "../../src/study/rows";
import { sourceFor } from "../../src/study/source";
import { subjectOf } from "../../src/study/subject";
import { at, sample } from "../notebook/sample";
import { readWorked, workedFolders } from "../sheets/worked";
import { resultsOf } from "./random-inputs";

it.each(workedFolders)("the needed cells of %s calculate what the whole notebook does", { timeout: 30_000 }, (name) => {
  const notebook = readWorked(name);
  const whole = new LiveNotebook(notebook);
  const cells = resultsOf(notebook, firstOption + 1, ["Compare", "Estimate"]);
  const { notebook: needed, couldSpill } = onlyNeeded(notebook, cells);
  expect(couldSpill).toBe(false);
  const part = new LiveNotebook(needed);
  expect(cells.map((cell) => part.value(cell))).toEqual(cells.map((cell) => whole.value(cell)));
  const filled = (of: typeof notebook) =>
    of.pages.flatMap(({ rows }) => rows.flat()).filter((text) => text !== "").length;
  expect(filled(needed)).toBeLessThan(filled(notebook) * 0.75);
});

it("keeps other options and free sheets where a formula looks at them", () => {
  const notebook = sample();
  const free = at(notebook, "Free", "B2");
  const { notebook: part } = onlyNeeded(notebook, [free]);
  expect(new LiveNotebook(part).value(free)).toEqual(new LiveNotebook(notebook).value(free));
  expect(part.pages.find(({ name }) => name === "Side force")?.rows[1]?.slice(4)).toEqual(["", "", ""]);
});

it("keeps what could spill into a blank cell that is looked at", () => {
  const notebook = sample();
  const spilled = {
    ...notebook,
    pages: notebook.pages.map((page) =>
      page.name === "Free"
        ? {
            ...page,
            rows: [
              ["=SEQUENCE(3)", ""],
              ["", "=A3*2"],
              ["", ""],
            ],
          }
        : page,
    ),
  };
  const cell = at(spilled, "Free", "B2");
  const { notebook: part, couldSpill } = onlyNeeded(spilled, [cell]);
  expect(couldSpill).toBe(true);
  expect(new LiveNotebook(part).value(cell)).toEqual({ kind: "number", value: 6 });
});

it.each(workedFolders)(
  "formulas of %s that are only read make the same chain as the open notebook",
  { timeout: 30_000 },
  (name) => {
    const notebook = readWorked(name);
    const rows = keyedRows(notebook).filter(({ page }) => page.name === "Compare");
    const read = sourceFor(notebook, firstOption + 2, rows);
    expect(read).not.toBeInstanceOf(LiveNotebook);
    const open = subjectOf(new LiveNotebook(notebook), firstOption + 2, rows);
    expect(subjectOf(read, firstOption + 2, rows)).toEqual(open);
  },
);
