import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenDesk, said, select, turnTo, Workplace, worth } from "./desk";
import { cellAt, worked } from "./worked";

let place: Workplace;
let desk: OpenDesk;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

describe("the page", () => {
  it("opens with the worked notebook, its pages numbered in the order of the job", async () => {
    const pages = await desk.page.$$eval(".pages button[data-page]", (buttons) =>
      buttons.map((button) => [button.querySelector(".number")?.textContent, (button as HTMLElement).dataset.page]),
    );
    expect(pages).toEqual(worked.pages.map(({ name }, i) => [String(i + 1), name]));
    await expect.poll(() => desk.page.textContent(".left .job")).toBe(worked.about.title);
  });

  it("says for every page with checks how they stand, in words", async () => {
    const states = await desk.page.$$eval(".pages button small", (all) => all.map((one) => one.textContent ?? ""));
    expect(states.length).toBeGreaterThan(5);
    for (const state of states) expect(state).toMatch(/all hold|falls? short|open|agree|differ/);
  });

  it("shows Proof with every line agreeing", async () => {
    const state = await desk.page.textContent('.pages button[data-page="Proof"] small');
    const [, agree, all] = /(\d+) of (\d+) agree/.exec(state ?? "") ?? [];
    expect(Number(agree)).toBeGreaterThan(50);
    expect(agree).toBe(all);
  });

  it("reads Compare: the verdict names what rules the cruiser out, and each part leads to its row", async () => {
    const { page } = desk;
    await turnTo(page, "Compare");
    const lines = page.locator(".verdict > div");
    await expect.poll(() => lines.locator("dt").allTextContents()).toEqual(["Sloop", "Cruiser", "Pilot"]);
    const cruiser = lines.nth(1);
    await expect.poll(() => cruiser.textContent()).toMatch(/falls? short:\s.+ by \d+ %/s);
    const part = cruiser.locator("a").first();
    const name = (await part.textContent()) ?? "";
    await part.click();
    await page.waitForFunction(
      (quantity) =>
        document.querySelector(".cell-line .where")?.textContent?.toLowerCase().includes(quantity.toLowerCase()),
      name,
    );
    await expect.poll(() => worth(page)).toMatch(/^falls short by /);
  });

  it("shows the job, revision, date and rules in the title block, and that it is a planning aid", async () => {
    const block = (await desk.page.textContent(".title-block")) ?? "";
    expect(block).toContain(worked.about.title);
    expect(block).toContain(worked.about.date);
    expect(block).toMatch(/Planning aid\..+ local codes and licensed practice\s+decide/);
  });

  it("shows the working of a named function with its steps, sources and caution", async () => {
    const { page } = desk;
    await select(page, "Supply", cellAt("Supply", "drop", "Cruiser").cell);
    await page.waitForFunction(() => document.querySelector(".working .steps"));
    const working = ((await page.textContent(".working")) ?? "").replace(/\s+/g, " ");
    expect(working).toContain("CONDUCTOR.DROP");
    expect(working).toContain("Ohm's law");
    expect(working).toContain("IEC 60228");
    await expect.poll(() => page.locator(".working math").count()).toBeGreaterThan(2);
  });

  it("shows the drawing of the page for the option that is looked at", async () => {
    const { page } = desk;
    await select(page, "Supply", cellAt("Supply", "drop", "Pilot").cell);
    await page.waitForFunction(() => document.querySelector(".side figcaption")?.textContent?.includes("Pilot"));
    await expect.poll(() => page.locator(".side .drawing svg").count()).toBe(1);
  });

  it("has said nothing to the console and asked nobody outside this machine", async () => {
    await expect.poll(() => said(desk.page)).toBe("");
    expect(desk.complaints).toEqual([]);
    expect(desk.strayed).toEqual([]);
  });
});
