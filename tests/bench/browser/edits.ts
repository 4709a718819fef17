import type { Browser, Page } from "playwright-core";
import { packNotebook } from "../../../src/notebook/zip";
import { median, part, short, table } from "../measure";
import { large, largeNotebook } from "./large-notebook";
import type { Benched } from "./served";
import { type EditTimes, watchEdits } from "./watch-edits";

const perRound = 20;
const warmUps = 5;

/** Types numbers into the selected cell again and again, as a person would, and waits for the screen each time. */
async function edit(page: Page, times: number): Promise<void> {
  for (let i = 0; i < times; i++) {
    await page.keyboard.type(String(20 + (i % 60)));
    await page.keyboard.press("Enter");
    await page.waitForTimeout(130);
    await page.evaluate(() => window.endEdit?.());
    await page.keyboard.press("ArrowUp");
    await page.waitForTimeout(30);
  }
}

async function editTimes(page: Page): Promise<EditTimes> {
  await page.evaluate(watchEdits);
  await edit(page, warmUps);
  await page.evaluate(() => {
    for (const list of Object.values(window.edits ?? {})) list.length = 0;
  });
  await edit(page, perRound);
  return (await page.evaluate(() => window.edits)) as EditTimes;
}

async function openLarge(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await page.waitForSelector("html[data-ready]");
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.click('.files >> text="Open …"')]);
  const buffer = Buffer.from(packNotebook(largeNotebook()));
  await chooser.setFiles({ name: "large.zip", mimeType: "application/zip", buffer });
  await page.waitForFunction(() => document.querySelector("h1")?.textContent?.endsWith("Large"));
  await page.evaluate(() => {
    window.location.hash = "#Large!E2";
  });
  await page.waitForFunction(() => document.activeElement?.closest("#cells") !== null);
  await page.waitForTimeout(1000);
  return page;
}

async function openBare(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(`${address}bare.html`);
  await page.waitForSelector("html[data-ready]");
  await page.waitForTimeout(1000);
  return page;
}

/** An edit of an input on which 140 cells hang, against the bare grid's own edit of one number, in turns. */
export async function editsBench({ browser, program, pages }: Benched, rounds: number): Promise<string> {
  const own: EditTimes[] = [];
  const bare: EditTimes[] = [];
  for (let round = 0; round < rounds; round++) {
    for (const [times, open] of [
      [own, () => openLarge(browser, program)],
      [bare, () => openBare(browser, pages)],
    ] as const) {
      const page = await open();
      times.push(await editTimes(page));
      await page.close();
    }
  }
  const all = (times: readonly EditTimes[], key: keyof EditTimes) => times.flatMap((one) => one[key]);
  const cells = (times: readonly EditTimes[], key: keyof EditTimes) =>
    [0.5, 0.95].map((share) => (all(times, key).length > 0 ? `${short(part(all(times, key), share))} ms` : "—"));
  const row = (name: string, times: readonly EditTimes[]) => [
    name,
    ...cells(times, "painted"),
    ...cells(times, "script"),
    ...cells(times, "edit"),
  ];
  const over = (key: "painted" | "script", share: number) =>
    `${short(part(all(own, key), share) / part(all(bare, key), share))} ×`;
  const byRound = own.map((one, i) => part(one.painted, 0.5) / part(bare[i]?.painted ?? [], 0.5));
  return [
    table([
      ["", "painted p50", "p95", "script p50", "p95", "edit alone p50", "p95"],
      row(`notebook, ${large.rows} × ${large.options}, ${large.rows - large.inputs} cells follow`, own),
      row("bare grid of the same size", bare),
      [
        "notebook over bare grid",
        ...[0.5, 0.95].map((share) => over("painted", share)),
        over("script", 0.5),
        over("script", 0.95),
      ],
    ]),
    `${rounds} rounds of ${perRound} edits in turns; median over the rounds of painted p50, notebook over bare grid: ${short(median(byRound))} ×`,
  ].join("\n");
}
