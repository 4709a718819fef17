import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heard, type OpenDesk, select, typedText, typeInto, Workplace, where, worth } from "./desk";
import { cellAt } from "./worked";

let place: Workplace;
let desk: OpenDesk;
const input = cellAt("Supply", "I_run", "Cruiser");
const drop = cellAt("Supply", "drop", "Cruiser");
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
});
afterAll(() => place.close());

const isKept = () =>
  desk.page.waitForFunction(() => /Kept in this browser/.test(document.querySelector(".safety")?.textContent ?? ""));

describe("the notebook in the browser's database", () => {
  it("is there again after a reload, where the person was, with its history", async () => {
    const { page } = desk;
    await isKept();
    await select(page, "Supply", input.cell);
    await typeInto(page, "275");
    await isKept();
    await select(page, "Supply", drop.cell);
    const before = await worth(page);
    await page.evaluate(() => history.replaceState(undefined, "", location.pathname));
    await page.waitForTimeout(1000);
    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await expect.poll(() => page.textContent("h1")).toMatch(/Supply$/);
    await expect.poll(() => where(page)).toContain(drop.cell);
    await expect.poll(() => worth(page)).toBe(before);
    await select(page, "Supply", input.cell);
    await expect.poll(() => typedText(page)).toBe("275");
    await page.keyboard.press("Control+z");
    await expect.poll(() => typedText(page)).toBe(input.text);
  });

  it("is read only in a second window until that window takes it over", async () => {
    const { page } = desk;
    const second = await page.context().newPage();
    await second.goto(page.url());
    await second.waitForSelector("html[data-ready]");
    await expect.poll(() => second.textContent(".alarm")).toMatch(/open in another window/);
    await select(second, "Supply", input.cell);
    await typeInto(second, "280");
    await select(second, "Supply", input.cell);
    await expect.poll(() => typedText(second)).toBe(input.text);
    await second.close();
  });

  it("goes back to a named version and starts anew from a worked notebook", async () => {
    const { page } = desk;
    await page.getByRole("button", { name: "Notebooks …" }).click();
    await page.getByLabel("Name of a version").fill("as measured");
    await page.getByRole("button", { name: "Keep this state under a name" }).click();
    await page.getByText("as measured").waitFor();
    await page.keyboard.press("Escape");
    await select(page, "Supply", input.cell);
    await typeInto(page, "290");
    await page.getByRole("button", { name: "Notebooks …" }).click();
    await page.locator("dialog li", { hasText: "as measured" }).getByRole("button", { name: "Go back to it" }).click();
    await select(page, "Supply", input.cell);
    await expect.poll(() => typedText(page)).toBe(input.text);

    await isKept();
    await page.getByRole("button", { name: "Notebooks …" }).click();
    await page.locator("dialog").getByRole("button", { name: "One hull, three layouts" }).click();
    await expect.poll(() => page.textContent(".job")).toMatch(/three layouts|One hull|launch/i);
    await isKept();
    await page.getByRole("button", { name: "Notebooks …" }).click();
    await page.locator("dialog li", { hasText: "Three hulls" }).getByRole("button", { name: "Open" }).click();
    await expect.poll(() => page.textContent(".job")).toMatch(/Three hulls/);

    await page.getByRole("button", { name: "Notebooks …" }).click();
    const other = page.locator("dialog li", { hasText: "layouts" });
    await other.getByRole("button", { name: "Delete" }).click();
    await other.getByText(/deleted/).waitFor();
    await other.getByRole("button", { name: "Restore" }).click();
    await other.getByRole("button", { name: "Open" }).waitFor();
    await page.locator("dialog summary", { hasText: "states" }).click();
    const before = page.locator("dialog details li").nth(1);
    await before.getByRole("button", { name: "Go back to it" }).click();
    await heard(page, /^Back to: value of/);
    await page.waitForFunction(() => !document.querySelector("dialog"));
    await select(page, "Supply", input.cell);
    await expect.poll(() => typedText(page)).toBe("290");
    expect(desk.complaints).toEqual([]);
    expect(desk.strayed).toEqual([]);
  });
});
