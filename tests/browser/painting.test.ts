import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { heard, select, turnTo, typeInto, Workplace } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

/**
 * What the cells in sight show and say, by place: shape, text, words on hovering; not what the selection adds, nor
 * whether the row has one line, since an edit leaves the columns as wide as they were and a whole drawing does not.
 */
const shown = async (page: Page): Promise<ReadonlyMap<string, string>> =>
  new Map(
    await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>("#cells .ht_master td")].map((td): [string, string] => {
        const classes = [...td.classList].filter((name) => !/^(area|current|highlight|ht|low$)/.test(name)).sort();
        const place = `${td.parentElement?.getAttribute("aria-rowindex")} ${td.getAttribute("aria-colindex")}`;
        return [place, `${classes.join(" ")} | ${td.textContent} | ${td.title} | ${td.getAttribute("aria-invalid")}`];
      }),
    ),
  );

/** Those of the cells that are in sight both times: another way to a cell may leave another column at the edge. */
const both = (one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>) =>
  Object.fromEntries([...one].filter(([place]) => other.has(place)));

/** An edit draws only what it changed: a whole drawing of the page afterwards must not look any different. */
it("shows after an edit what a whole drawing of the page would show", async () => {
  const { page, complaints } = await place.desk({ viewport: { width: 1440, height: 2600 } });
  const input = cellAt("Supply", "I_run", "Cruiser").cell;
  const formula = cellAt("Supply", "drop", "Sloop").cell;
  const edits: readonly [string, string][] = [
    [input, "250"],
    [input, "98765.4321"],
    [input, ""],
    [input, "=1/0"],
    [cellAt("Supply", "run", "Cruiser").cell, ""],
    [cellAt("Supply", "run", "Cruiser").cell, "16.25"],
    [input, "310"],
    [formula, "a word that is long enough to need two lines of its cell"],
    [formula, "0.5"],
  ];
  let drawn = 0;
  for (const [cell, text] of edits) {
    await select(page, "Supply", cell);
    const before = await shown(page);
    if (text === "") await page.keyboard.press("Delete");
    else await typeInto(page, text);
    await heard(page, /followed|alue of|leared/);
    await select(page, "Supply", cell);
    const after = await shown(page);
    await turnTo(page, "Boat");
    await select(page, "Supply", cell);
    const whole = await shown(page);
    expect(Object.keys(both(after, whole)).length).toBeGreaterThan(50);
    expect(both(after, whole), `${cell} = ${text}`).toEqual(both(whole, after));
    const changed = [...after].filter(([place, one]) => before.has(place) && before.get(place) !== one);
    expect(changed.length, `${cell} = ${text}`).toBeGreaterThan(0);
    drawn += changed.length;
  }
  expect(drawn).toBeGreaterThan(2 * edits.length);
  expect(complaints).toEqual([]);
});
