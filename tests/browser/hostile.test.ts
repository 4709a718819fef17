import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { canary, hostile } from "../hostile/strings";
import { heard, type OpenDesk, said, Workplace } from "./desk";
import { hostileNotebook, hostileTable, hostileTraineeFile } from "./hostile-files";

let place: Workplace;
let desk: OpenDesk;
let layout: string;
beforeAll(async () => {
  place = await Workplace.open();
  desk = await place.desk();
  layout = await frame(desk.page);
});
afterAll(() => place.close());

/** Where the parts of the screen stand and how large they are. */
const frame = (page: Page): Promise<string> =>
  page.evaluate(() =>
    [".left", "main", ".side", "footer", "#cells"]
      .map((part) => {
        const box = document.querySelector(part)?.getBoundingClientRect();
        // The cells are as high as what stands above them leaves.
        const height = part === "#cells" ? (box?.height ?? 0) > 200 : Math.round(box?.height ?? 0);
        return `${part} ${Math.round(box?.left ?? -1)} ${Math.round(box?.width ?? -1)} ${height}`;
      })
      .join("; "),
  );

/** Nothing ran, nothing was brought in, nothing went out, and the screen stands as it stood. */
async function isUnharmed(where: string): Promise<void> {
  const { page } = desk;
  await page.waitForTimeout(120);
  const found = await page.evaluate((name) => {
    const foreign =
      "script:not([src]),iframe:not(.to-print),object,embed,img,video,audio,base,form[action],meta[http-equiv=refresh]";
    const elements = [...document.querySelectorAll("*")];
    return {
      ran: name in window,
      foreign: [...document.querySelectorAll(foreign)].map((one) => one.outerHTML.slice(0, 80)),
      handlers: elements.flatMap((one) => one.getAttributeNames().filter((attribute) => attribute.startsWith("on"))),
      addresses: [...document.querySelectorAll("a[href]")]
        .map((one) => (one as HTMLAnchorElement).protocol)
        .filter((protocol) => !["http:", "https:", "mailto:", "blob:"].includes(protocol)),
      isShown: getComputedStyle(document.body).display !== "none",
      // Parts that stick out of the window and that nothing around them cuts off; the first few tell enough.
      outside: elements
        .filter((one) => {
          const { right, bottom, width } = one.getBoundingClientRect();
          if (width === 0 || (right <= innerWidth + 1 && bottom <= innerHeight + 1)) return false;
          let around: Element | null = one;
          while (around && around !== document.documentElement) {
            const { overflowY, position } = getComputedStyle(around);
            if (position === "absolute" && around instanceof HTMLElement) around = around.offsetParent;
            else if (position === "fixed" || (overflowY !== "visible" && around !== one)) return false;
            else around = around.parentElement;
          }
          return true;
        })
        .slice(0, 6)
        .map((one) => `${one.tagName} ${one.className} in ${one.parentElement?.className}`),
      overflow: [
        document.documentElement.scrollWidth - innerWidth,
        document.documentElement.scrollHeight - innerHeight,
      ],
    };
  }, canary);
  expect({ where, ...found }).toEqual({
    ...{ where, ran: false, foreign: [], handlers: [], addresses: [], isShown: true, outside: [], overflow: [0, 0] },
  });
  expect(`${where}: ${await frame(page)}`).toBe(`${where}: ${layout}`);
  expect([where, desk.strayed, desk.complaints]).toEqual([where, [], []]);
}

/** Gives a file to a button that asks for one. */
async function give(button: string, name: string, content: string | Buffer): Promise<void> {
  const [chooser] = await Promise.all([
    desk.page.waitForEvent("filechooser"),
    desk.page.click(`.files >> text="${button}"`),
  ]);
  await chooser.setFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(content) });
}

/** Says what stands on the clipboard to whatever has the keyboard. */
const paste = (page: Page, text: string, html: string): Promise<void> =>
  page.evaluate(
    ([plain, rich]) => {
      const data = new DataTransfer();
      if (plain) data.setData("text/plain", plain);
      data.setData("text/html", rich as string);
      const target = document.activeElement ?? document.body;
      target.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
    },
    [text, html],
  );

const fileName = '<img src=x onerror="window.hurt=1">\u202Egpj';

describe(`${hostile.length} hostile texts in every place where text comes in`, () => {
  it("of a notebook's file: title, pages, options, keys, units, cells, notes, reviews, settings", async () => {
    const { page } = desk;
    await give("Open …", `${fileName}.zip`, hostileNotebook());
    await heard(page, /is open/);
    for (const i of [0, 1, 2]) {
      await page.locator(".pages button").nth(i).click();
      await isUnharmed(`page ${i + 1}`);
      await page.keyboard.press("Control+Home");
      for (let down = 0; down < 4; down++) {
        await page.keyboard.press("ArrowDown");
        await page.keyboard.press("ArrowRight");
      }
      await isUnharmed(`page ${i + 1}, a cell`);
    }
    expect(await page.locator(".notes").textContent()).toContain("<script>");
  });

  it.each(["Options", "Paper", "Functions", "Studies", "Audit"])("shown in the dialog or panel %s", async (name) => {
    const { page } = desk;
    await page.locator(".pages button").nth(0).click();
    const button = page.locator(`.tools button:has-text("${name}")`).first();
    expect(await button.count()).toBe(1);
    await button.click();
    await page.waitForTimeout(400);
    const box = await page.evaluate(() => {
      const dialog = document.querySelector("dialog[open]");
      const { left = 0, right = 0, top = 0, bottom = 0 } = dialog?.getBoundingClientRect() ?? {};
      return left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight;
    });
    expect(box).toBe(true);
    await isUnharmed(name);
    await page.keyboard.press("Escape");
    if (name === "Audit") await button.click();
  });

  it("pasted into cells, as text; what was pasted as HTML beside it is left alone", async () => {
    const { page } = desk;
    await page.locator(".pages button").nth(2).click();
    await page.keyboard.press("Control+Home");
    const rich = hostile.join("");
    await paste(page, "", rich);
    await isUnharmed("HTML alone");
    const before = await said(page);
    await paste(page, hostile.filter((text) => !/[\t\r\n]/.test(text)).join("\n"), rich);
    await page.waitForFunction((old) => document.querySelector(".said")?.textContent !== old, before);
    await isUnharmed("paste");
  });

  it("typed into a cell, into notes and into the name of an option", async () => {
    const { page } = desk;
    const notes = `${hostile.join("\n\n")}\n\n**seen**`;
    await page.click("text=Edit notes");
    await page.fill("#note-text", notes);
    await page.click(".note-form button:has-text('Keep')");
    await page.waitForSelector(".notes strong");
    await isUnharmed("notes");
    await page.locator(".pages button").nth(2).click();
    await page.keyboard.press("Control+Home");
    for (const text of [hostile[0], hostile[13], hostile[35], hostile[43]]) {
      await page.keyboard.insertText(text as string);
      await page.keyboard.press("Enter");
    }
    await isUnharmed("typing");
  });

  it("of a table, in its preview and once it is taken", async () => {
    const { page } = desk;
    await give("Import …", `${fileName}.csv`, hostileTable());
    await page.waitForSelector("dialog[open] .preview");
    await isUnharmed("preview");
    await page.locator("dialog button.main").click();
    await page.waitForSelector("dialog[open]", { state: "detached" });
    await isUnharmed("table");
    await page.click('.files >> text="For others …"');
    await page.waitForSelector("dialog[open] .preview");
    await isUnharmed("export");
    await page.keyboard.press("Escape");
  });

  it("of a megabyte in one cell: refused in one sentence, from a file and from the clipboard", async () => {
    const { page } = desk;
    await give("Import …", "large.csv", `a,${"x".repeat(1_048_576)}\n`);
    await page.waitForSelector("dialog[open]");
    expect(await page.textContent("dialog [role=alert]")).toContain(
      "row 1, column 2: the letters of the text are 1048576",
    );
    await page.keyboard.press("Escape");
    await page.locator(".pages button").nth(2).click();
    await page.keyboard.press("Control+Home");
    await paste(page, "y".repeat(1_048_576), "");
    expect(await heard(page, /1048576/)).toContain("(allowed 100000)");
    await isUnharmed("a megabyte");
  });

  it("of a trainee's file", async () => {
    const { page } = desk;
    await give("Open …", `${fileName}.csv`, hostileTraineeFile());
    // Work that only this window has is asked about first.
    await Promise.race([heard(page, /is open|refused|row|task/i), page.waitForSelector("dialog[open]")]);
    await page
      .locator("dialog button:not(.main)")
      .first()
      .click({ timeout: 1500 })
      .catch(() => undefined);
    await page.keyboard.press("Escape");
    await isUnharmed("trainee");
  });
});

describe("a walk through the whole program", () => {
  it("asks no other host for anything, and keeps to its content policy", async () => {
    const { page, strayed } = await place.desk();
    const policy = await page.getAttribute("meta[http-equiv=Content-Security-Policy]", "content");
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/script-src|unsafe-eval|connect-src|\*/);
    const refused = await page.evaluate(async () => {
      const results: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ violatedDirective }) => results.push(violatedDirective));
      await fetch("https://example.org/").catch(() => undefined);
      const script = document.createElement("script");
      script.textContent = "window.hurt = 1";
      document.body.append(script);
      const image = document.createElement("img");
      image.src = "https://example.org/x.png";
      document.body.append(image);
      await new Promise((done) => setTimeout(done, 200));
      for (const one of [script, image]) one.remove();
      return { results: results.sort(), ran: "hurt" in window };
    });
    expect(refused).toEqual({ results: ["connect-src", "img-src", "script-src-elem"], ran: false });
    const pages = await page.locator(".pages button").count();
    for (let i = 0; i < pages; i++) await page.locator(".pages button").nth(i).click();
    for (const name of ["Options", "Units", "Paper", "Functions", "Studies"]) {
      await page.locator(`.tools button:has-text("${name}")`).first().click();
      await page.waitForTimeout(300);
      await page.keyboard.press("Escape");
    }
    expect(strayed.filter((address) => !address.startsWith("https://example.org/"))).toEqual([]);
  });
});
