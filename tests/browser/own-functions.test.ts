import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { unpackNotebook } from "../../src/notebook/zip";
import { findings } from "./accessibility";
import { contentOf, heard, select, textOf, turnTo, typeInto, Workplace, where, worth } from "./desk";
import { give as giveFile } from "./files-given";
import { cellAt } from "./worked";

/** The number of the first row whose Part reads so. */
const rowOf = (page: Page, part: string): Promise<string> =>
  page.evaluate(
    (wanted) =>
      [...document.querySelectorAll("#cells .ht_master tbody tr")]
        .find((tr) => tr.querySelector("td")?.textContent === wanted)
        ?.querySelector("th")?.textContent ?? "",
    part,
  );

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

it("copies a function under another name, changes a row of it, calls it, sees it marked, saves it, and takes it back", {
  timeout: 120_000,
}, async () => {
  const { page, complaints, strayed } = await place.desk();
  await page.getByRole("button", { name: "Functions", exact: true }).click();
  await page.getByLabel("Look for").fill("CONDUCTOR.DROP");
  await page.getByRole("button", { name: "Copy under another name …" }).click();
  const name = page.getByLabel("Name", { exact: true });
  await expect.poll(() => name.inputValue()).toBe("YARD.DROP");
  await name.fill("conductor.drop");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.getByRole("alert").textContent()).toContain("CONDUCTOR.DROP is a shipped function");
  await name.fill("yard.drop");
  await page.keyboard.press("Enter");
  await heard(page, /YARD\.DROP can be called in every cell/);
  await expect.poll(() => page.textContent("h1")).toContain("Own functions");
  expect(await findings(page)).toEqual([]);

  const drop = cellAt("Supply", "drop", "Cruiser");
  await select(page, "Supply", drop.cell);
  const before = await worth(page);
  await typeInto(page, drop.text.replace("CONDUCTOR.DROP", "YARD.DROP"));
  await select(page, "Supply", drop.cell);
  await expect.poll(() => worth(page)).toBe(before);
  await page.waitForSelector(".working .own-mark");
  await expect
    .poll(() => page.textContent(".working .own-mark"))
    .toBe("The notebook's own function, page Own functions");

  // A mistake is one sentence with page and row, where the function is called.
  await turnTo(page, "Own functions");
  const line = await rowOf(page, "result");
  await select(page, "Own functions", `C${line}`);
  await typeInto(page, "R * curent");
  await select(page, "Supply", drop.cell);
  await page.waitForSelector(".working .short");
  await expect
    .poll(() => page.textContent(".working .short"))
    .toContain(`Own functions, row ${line}: step U: curent is not defined before its use`);
  await page.keyboard.press("Control+z");
  await select(page, "Supply", drop.cell);
  await expect.poll(() => worth(page)).toBe(before);

  await page.getByRole("button", { name: "Functions", exact: true }).click();
  await expect.poll(() => page.textContent(".function-list h3")).toBe("The notebook's own");
  await expect.poll(() => page.textContent(".function .own-mark")).toContain("defined on page Own functions");
  expect(await findings(page)).toEqual([]);
  await page.keyboard.press("Escape");

  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: /^Save(, has changes)?$/ }).click();
  const saved = unpackNotebook(new Uint8Array(await contentOf(await download)));
  expect(saved.pages.at(-1)?.rows.map(([part]) => part)).toContain("result");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(() => page.locator('.pages button[data-page="Own functions"]').count()).toBe(0);
  expect([...complaints, ...strayed]).toEqual([]);
});

it("changes a function by keyboard alone: parts and names from lists, mistakes and mathematics as it stands, its header safe", {
  timeout: 120_000,
}, async () => {
  const { page, complaints } = await place.desk();
  await page.getByRole("button", { name: "Functions", exact: true }).click();
  await page.getByRole("button", { name: "A function of your own …" }).click();
  await page.getByLabel("Name", { exact: true }).fill("YARD.CUT");
  await page.keyboard.press("Enter");
  await heard(page, /YARD\.CUT can be called in every cell/);

  // The names of the columns stand above the cells, out of reach of keys.
  await expect
    .poll(() => page.locator("#cells thead .name").allTextContents())
    .toEqual(expect.arrayContaining(["Part", "Name", "Formula", "Unit", "Limits", "Why", "Source"]));
  await select(page, "Own functions", "C2");
  await page.keyboard.press("Control+Home");
  await page.waitForFunction(() => document.querySelector(".cell-line .where b")?.textContent === "A2");
  await page.keyboard.press("ArrowUp");
  await page.waitForFunction(() => document.activeElement?.closest("#cells") !== null);
  await expect.poll(() => where(page)).toMatch(/^[A-G]([2-9]|1\d)$/);

  const step = await rowOf(page, "step");
  await select(page, "Own functions", `C${step}`);
  await page.keyboard.type("kgPerMetre + le");
  await page.waitForSelector("#typing-list li");
  await expect
    .poll(() => page.locator("#typing-list li").allTextContents())
    .toEqual([expect.stringMatching(/length.*run, m/)]);
  await page.keyboard.press("Enter");
  await page.keyboard.type(" * (1 + los)");
  await page.keyboard.press("Enter");
  await page.waitForSelector(".own-mistake");
  await expect
    .poll(() => page.textContent(".own-mistake"))
    .toContain(`Row ${step}: step L: los is not defined before its use.`);
  await select(page, "Own functions", `A${step}`);
  await expect
    .poll(() => page.textContent(".cell-line .sentence"))
    .toContain("step L: los is not defined before its use.");
  expect(await findings(page)).toEqual([]);

  // The audit marks the row; its sentence is said once all the same.
  await page.getByRole("button", { name: "Audit", exact: true }).click();
  await page.waitForSelector("#cells .error-finding");
  const line = `.cell-line:has-text("los is not defined")`;
  const timesSaid = (text: string | null) => text?.split("los is not defined before its use").length ?? 0;
  expect(timesSaid(await page.textContent(line)) - 1).toBe(1);
  expect(
    timesSaid(
      await page.getAttribute("#cells .ht_clone_inline_start td.error-finding, #cells td.error-finding", "title"),
    ) - 1,
  ).toBe(1);
  await page.getByRole("button", { name: "Audit", exact: true }).click();
  await page.waitForSelector("#cells .error-finding", { state: "detached" });

  await select(page, "Own functions", `C${step}`);
  await typeInto(page, "length * (1 + 2 * loss)");
  await page.waitForFunction(() => document.querySelector(".own-function .steps")?.textContent?.includes("2"));
  await page.waitForSelector(".own-function .examples .short");
  const example = await rowOf(page, "example");
  await select(page, "Own functions", `C${example}`);
  await expect
    .poll(() => page.textContent(".cell-line .sentence"))
    .toMatch(/the example gives 14\.39\d* and says 13\.2/);
  await typeInto(page, "10, 0.05");
  await page.waitForSelector(".own-function .examples .holds");

  await select(page, "Own functions", `A${example}`);
  await page.keyboard.type("ca");
  await page.waitForSelector("#typing-list li");
  await expect.poll(() => page.locator("#typing-list .text").allTextContents()).toEqual(["caution"]);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");

  // A link to the first row leads to the first that can be changed.
  await page.evaluate(() => {
    window.location.hash = `#${encodeURIComponent("Own functions")}!A1`;
  });
  await page.waitForFunction(() => document.querySelector(".cell-line .where b")?.textContent !== "A1");
  await expect.poll(() => textOf(page, "Own functions", "B2")).toBe("YARD.CUT");
  expect(await findings(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

it("takes a function page in from a file, says a mistake with its row, refuses a table without the header, and undo brings back", {
  timeout: 120_000,
}, async () => {
  const { page, complaints } = await place.desk();
  const table = (formula: string, header = "Part,Name,Formula,Unit,Limits,Why,Source\n") =>
    `${header}function,YARD.SIDE,,,,side of a square,identity\nargument,area,,m2,from 0,its area,\nresult,a,${formula},m,,by the root,\nexample,,9,,3,,own arithmetic\n`;
  const give = async (content: string, asNew: boolean): Promise<void> => {
    await giveFile(page, "Import …", "yard.csv", content);
    if (asNew) await page.getByLabel("Goes").selectOption({ label: "onto a new page" });
    await page.getByRole("button", { name: "Take the table" }).click();
  };
  await give(table("sqrt(are)"), true);
  await heard(
    page,
    /yard\.csv taken onto the new page yard, with a mistake in a function, row 4: step a: are is not defined before its use; mend it there, or undo\./,
  );
  await page.waitForSelector(".own-mistake");
  await give(table("sqrt(area)"), false);
  await heard(page, /^.*yard\.csv taken onto yard; undo brings back what was there\./);
  await page.waitForSelector(".own-function .examples .holds");

  await give("a,b\n1,2\n", false);
  await page.getByRole("alert").waitFor();
  await expect
    .poll(() => page.getByRole("alert").textContent())
    .toBe(
      "yard defines functions; the table must begin with Part, Name, Formula, Unit, Limits, Why, Source, or go onto a page of its own. Nothing was changed.",
    );
  await page.getByRole("button", { name: "Leave it" }).click();
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.waitForSelector(".own-mistake");
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.waitForFunction(() => !document.querySelector('.pages button[data-page="yard"]'));
  expect(complaints).toEqual([]);
});
