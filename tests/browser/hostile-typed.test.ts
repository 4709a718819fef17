// Past 150 lines: one table of the places where a person types.
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hostile } from "../hostile/strings";
import { select, turnTo, typeInto, Workplace } from "./desk";
import { give } from "./files-given";
import { type HostileDesk, hostileDesk, sizes } from "./hostile-watch";
import { cellAt } from "./worked";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

const large = `${"<b>1 MB</b> ".repeat(90_000)}end`;

/** A place to type at: how it is reached, what is done with each text there, how it is left. */
interface Place {
  readonly name: string;
  readonly reach: (page: Page) => Promise<unknown>;
  readonly put: (page: Page, text: string, i: number) => Promise<unknown>;
}

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const inDialog = (page: Page, name: string) => page.locator("dialog").getByRole("button", { name, exact: true });
const open = (page: Page, name: string) =>
  button(page, name)
    .first()
    .click()
    .then(() => page.locator("dialog[open]").waitFor());

/** Types as a person does who pastes: what the field takes is what it lets in. */
async function fill(page: Page, selector: string, text: string): Promise<void> {
  await page.locator(selector).first().focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.insertText(text);
}

const drop = cellAt("Supply", "drop", "Cruiser");
const current = cellAt("Supply", "I_run", "Cruiser");

const places: readonly Place[] = [
  {
    name: "a cell: quantity, key, unit, basis and values",
    reach: (page) => turnTo(page, "Supply"),
    put: async (page, text, i) => {
      await select(page, "Supply", `${"ABCDEFG"[i % 7]}${current.row}`);
      await fill(page, ".cell-line textarea", text);
      await page.keyboard.press("Enter");
      if (await page.locator("dialog[open]").count()) await page.keyboard.press("Escape");
    },
  },
  {
    name: "the notes of a page",
    reach: (page) => turnTo(page, "Fit"),
    put: async (page, text) => {
      await page.getByRole("button", { name: /^(Edit|Write) notes$/ }).click();
      await page.waitForSelector("#note-text");
      await fill(page, "#note-text", text);
      await button(page, "Keep").click();
      await page.waitForFunction(
        () => !document.querySelector("#note-text") || document.querySelector(".said.refused"),
      );
      if (await page.locator("#note-text").count()) await button(page, "Leave as it was").click();
    },
  },
  {
    name: "the name of an option",
    reach: (page) => turnTo(page, "Supply"),
    put: async (page, text) => {
      if (!(await page.locator("dialog").count())) await open(page, "Options");
      await fill(page, ".option-list li:last-child input", text);
      await page.locator(".option-list li:last-child").getByRole("button", { name: "Rename" }).click();
      await page.waitForFunction(
        () => !document.querySelector("dialog") || document.querySelector("dialog [role=alert]"),
      );
    },
  },
  {
    name: "the search for a function",
    reach: (page) => open(page, "Functions"),
    put: (page, text) => fill(page, ".function-search input", text),
  },
  {
    name: "the name of a function of the notebook's own",
    reach: async (page) => {
      await open(page, "Functions");
      await button(page, "A function of your own …").click();
      await page.locator("dialog input[name=name]").waitFor();
    },
    put: async (page, text) => {
      await fill(page, "dialog input[name=name]", text);
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => document.querySelector("dialog [role=alert]")?.textContent);
    },
  },
  {
    name: "the name of a version",
    reach: (page) => open(page, "Notebooks …"),
    put: async (page, text) => {
      await fill(page, "dialog input[name=version]", text);
      await inDialog(page, "Keep this state under a name").click();
      await page.waitForFunction(
        () =>
          (document.querySelector("dialog input[name=version]") as HTMLInputElement).value === "" ||
          document.querySelector("dialog [role=alert]"),
      );
    },
  },
  {
    name: "the name of who reviews, and a tick under it",
    reach: async (page) => {
      await select(page, "Supply", current.cell);
      await button(page, "Audit").click();
      await button(page, "Tick this cell").click();
      await fill(page, "dialog input[name=name]", "A");
      await page.keyboard.press("Enter");
      await button(page, "Another name …").waitFor();
    },
    put: async (page, text) => {
      await button(page, "Another name …").click();
      await fill(page, "dialog input[name=name]", text);
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => !document.querySelector("dialog"));
      await button(page, "Tick this row").click();
      await button(page, "Take tick of this row back").click();
      await button(page, "Tick this row").waitFor();
    },
  },
  {
    name: "the reason of an acceptance, and the name under it",
    reach: async (page) => {
      await select(page, "Supply", drop.cell);
      await typeInto(page, `${drop.text}*1.07`);
      await button(page, "Audit").click();
      await page.locator(".filters").getByLabel("Check").selectOption("Typed number");
    },
    put: async (page, text) => {
      // An accepted finding stands folded away, and opens again when its acceptance is withdrawn.
      if (await page.locator(".accepted").count()) await button(page, "Withdraw acceptance").click();
      // Whoever has not signed yet is asked for the name.
      await page.evaluate(() => window.localStorage.clear());
      await button(page, "Accept with reason …").click();
      await page.locator(".accept textarea").fill(text);
      await button(page, "Accept").click();
      await fill(page, "dialog input[name=name]", text);
      await page.keyboard.press("Enter");
      await page.waitForFunction(
        () => !document.querySelector("dialog") && document.querySelector("details.accepted, .said.refused"),
      );
      const isAccepted = (await page.locator(".accepted").count()) > 0;
      expect(isAccepted, text.slice(0, 60)).toBe(text.length < 100_000);
      if (isAccepted) await page.locator(".accepted summary").click();
    },
  },
  {
    name: "a trainee's number and answers",
    reach: async (page) => {
      await open(page, "Notebooks …");
      await button(page, "Course at Tern Quay").click();
      await page.waitForFunction(() => document.title.endsWith("Course at Tern Quay"));
      await turnTo(page, "Drop");
    },
    put: async (page, text) => {
      if (await button(page, "Another trainee").count()) await button(page, "Another trainee").click();
      await fill(page, "input#trainee", text);
      // What is blank to the eye is no number, and the form asks on.
      if (/^\s*$/.test(await page.inputValue("input#trainee"))) await fill(page, "input#trainee", `T${text}`);
      await page.keyboard.press("Enter");
      await page.waitForSelector(".question");
      for (const field of await page.locator(".answers input:not([type=radio])").all()) {
        await field.focus();
        await page.keyboard.press("Control+a");
        await page.keyboard.insertText(text);
      }
      await button(page, "Mark my answers").click();
      await page.locator(".mark-line").first().waitFor();
    },
  },
  {
    name: "the fields of a study",
    reach: async (page) => {
      await open(page, "Studies");
      await page.getByRole("tab", { name: "Spread" }).click();
    },
    put: async (page, text, i) => {
      const tabs = ["Solve back", "Spread", "Two inputs"] as const;
      await page.getByRole("tab", { name: tabs[i % 3] as string }).click();
      await page.locator(".study input:not([type])").first().waitFor();
      await fill(page, ".study input:not([type])", text);
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => !document.querySelector(".study progress"));
    },
  },
  {
    name: "the name of a page, and the table that comes with it",
    reach: (page) => turnTo(page, "Supply"),
    put: async (page, text) => {
      const table = hostile.map((one) => `"${one.replaceAll('"', '""')}"`).join("\n");
      if (await page.locator("dialog").count()) await inDialog(page, "Leave it").click();
      await give(page, "Import …", `${text.slice(0, 100).replaceAll(/[/\\\0]/g, "_")}`, `${table}\n`);
      await page.locator("dialog .fields select").nth(3).selectOption({ index: 1 });
      await fill(page, "dialog .fields input", text);
      await inDialog(page, "Take the table").click();
      await page.waitForFunction(
        () => !document.querySelector("dialog") || document.querySelector("dialog [role=alert]"),
      );
    },
  },
  {
    name: "the address of the page",
    reach: (page) => turnTo(page, "Supply"),
    put: (page, text) =>
      page.evaluate(
        (hash) => {
          for (const one of [hash, `${hash}!A1`, `${encodeURIComponent(hash)}!B2`, "%E0%A4%A!C3"])
            window.location.hash = one;
        },
        text.slice(0, 100_000),
      ),
  },
  {
    name: "what is pasted into cells, as markup and as plain text",
    reach: (page) => turnTo(page, "Tables"),
    put: async (page, text, i) => {
      await select(page, "Tables", `A${2 + (i % 5)}`);
      // Writing markup to the clipboard would have the browser read it on the way; so the cells are handed it directly.
      await page.evaluate(
        ([html, plain]) => {
          const clipboardData = new DataTransfer();
          clipboardData.setData("text/html", html as string);
          clipboardData.setData("text/plain", plain as string);
          const paste = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
          document.activeElement?.dispatchEvent(paste);
        },
        [`<table><tr><td>${text}</td></tr></table>`, `"${text.replaceAll('"', '""')}"`],
      );
      await page.waitForFunction(() => document.querySelector(".said")?.textContent?.trim());
    },
  },
];

/** What is typed at both sizes; on the wide one, everything. */
const worst = hostile.filter((text) => text.length > 500 || /[\u202a-\u202e\u2066-\u2069\u0600-\u06ff]/.test(text));

async function closeAll(desk: HostileDesk): Promise<void> {
  for (let i = 0; i < 3 && (await desk.page.locator("dialog").count()); i++) await desk.page.keyboard.press("Escape");
}

describe.each(sizes)("at %i × %i hostile texts that are typed", { timeout: 400_000 }, (...size) => {
  it.each(places)("run nowhere and move nothing: $name", async ({ name, reach, put }) => {
    const desk = await hostileDesk(place, size);
    await reach(desk.page);
    const texts = size[0] > 1000 ? hostile : worst;
    for (const [i, text] of texts.entries()) {
      await put(desk.page, text, i);
      await desk.expectWell(`${name}: ${text.slice(0, 60)}`);
    }
    await put(desk.page, large, 0);
    await desk.expectWell(`${name}: 1 MB`);
    await closeAll(desk);
    await desk.expectWell(`${name}: left`);
    await desk.page.context().close();
  });
});
