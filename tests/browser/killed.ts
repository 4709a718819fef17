import { setTimeout as wait } from "node:timers/promises";
import type { Page } from "playwright-core";
import { unpackNotebook } from "../../src/notebook/zip";
import { pick } from "../formula/random-expression";
import { type BrowserProcess, startBrowser } from "./browser-process";
import { select } from "./desk";
import { allText, cellOfKey, type Deed, present, type States, statesAfter } from "./edited-model";
import { worked } from "./worked";

/** What one kill has cost. Times in milliseconds. */
export interface Outcome {
  readonly deeds: number;
  readonly lost: number;
  /** How long before the kill the oldest lost deed was done; 0 when none was lost. */
  readonly age: number;
}

/** A state that the notebook was in, and when the deed that led to it was done; the last may not have been done yet. */
interface Moment {
  readonly states: States;
  readonly done: number;
}

/** Inputs of the worked notebook that are typed over. */
const inputs = [
  ["Supply", "I_run"],
  ["Supply", "run"],
  ["Tunnel", "axis_height"],
  ["Boat", "length_overall"],
  ["Joint", "resin_density"],
] as const;

function nextDeed(random: () => number, count: number, states: States): Deed {
  const [page, key] = pick(random, inputs);
  const chance = random();
  if (chance < 0.15 && states.length > 1) return { kind: "undo" };
  if (chance < 0.25) return { kind: "insert", page, key };
  return { kind: "type", page, key, text: String(100 + count) };
}

async function act(page: Page, deed: Deed, states: States): Promise<void> {
  if (deed.kind === "undo") {
    await undo(page);
    return;
  }
  await select(page, deed.page, cellOfKey(present(states), deed.page, deed.key).name);
  if (deed.kind === "insert") {
    await page.keyboard.press("Control+Alt+i");
    return;
  }
  // Into the line above the cells: keys into a cell may be lost on a machine that has too much to do.
  await page.fill(".cell-line textarea", deed.text);
  await page.keyboard.press("Enter");
}

const undo = (page: Page): Promise<void> => page.locator(".tools button.step").first().click();

/** The whole notebook as its own button hands it out. */
async function handedOut(page: Page): Promise<string> {
  const base64 = await page.evaluate(async () => {
    const make = URL.createObjectURL.bind(URL);
    const blob = await new Promise<Blob>((done) => {
      URL.createObjectURL = (file) => {
        done(file as Blob);
        return make(file);
      };
      const button = [...document.querySelectorAll<HTMLButtonElement>(".files button")];
      button.find(({ textContent }) => textContent.startsWith("Save"))?.click();
    });
    URL.createObjectURL = make;
    const bytes = new Uint8Array(await blob.arrayBuffer());
    return btoa(bytes.reduce((text, byte) => text + String.fromCharCode(byte), ""));
  });
  return allText(unpackNotebook(Buffer.from(base64, "base64")));
}

/** Where two texts begin to differ, with some words around. */
function difference(wanted: string, found: string): string {
  const at = [...wanted].findIndex((sign, i) => sign !== found[i]);
  return `${wanted.slice(at - 60, at + 40)} | ${found.slice(at - 60, at + 40)}`;
}

async function openPage({ context }: BrowserProcess, address: string): Promise<Page> {
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(address);
  await page.waitForSelector("html[data-ready]");
  await page.waitForFunction(() => document.querySelector(".safety")?.textContent === "Kept in this browser");
  return page;
}

/** Changes the notebook without a rest until the browser is killed. */
async function editUntilKilled(
  page: Page,
  browser: BrowserProcess,
  from: States,
  random: () => number,
): Promise<{ readonly moments: readonly Moment[]; readonly killed: number }> {
  const moments: Moment[] = [{ states: from, done: 0 }];
  let killed = 0;
  const killing = wait(300 + random() * 3500).then(() => {
    killed = performance.now();
    return browser.kill();
  });
  let states = from;
  try {
    while (killed === 0) {
      const deed = nextDeed(random, moments.length, states);
      const after = statesAfter(states, deed);
      // It may be there although the kill came before we knew that it was done.
      moments.push({ states: after, done: Number.POSITIVE_INFINITY });
      await act(page, deed, states);
      moments[moments.length - 1] = { states: after, done: performance.now() };
      states = after;
      await wait(random() * 250);
    }
  } catch (cause) {
    if (killed === 0) throw cause;
  }
  await killing;
  return { moments, killed };
}

/**
 * Edits in a browser, kills it at a random moment, opens it again, looks whether the notebook is one of those that it
 * was, and goes on from there; so many times.
 *
 * @param random between 0 and 1.
 * @param each is told of every kill.
 * @throws Error when the notebook that is opened is none that it was, or its last step cannot be taken back.
 */
export async function killRuns(
  runs: number,
  { profile, address, random }: { readonly profile: string; readonly address: string; readonly random: () => number },
  each: (outcome: Outcome, run: number) => void,
): Promise<void> {
  let moments: readonly Moment[] = [{ states: [worked], done: 0 }];
  let killed = 0;
  for (let run = 0; run <= runs; run++) {
    const browser = await startBrowser(profile);
    try {
      const page = await openPage(browser, address);
      const found = await handedOut(page);
      const at = moments.findLastIndex(({ states }) => allText(present(states)) === found);
      const opened = moments[at];
      if (!opened) {
        const last = moments.findLast(({ done }) => done < killed) ?? moments[0];
        throw new Error(
          `After kill ${run} the notebook is none of the ${moments.length} that it was: ${last && difference(allText(present(last.states)), found)}`,
        );
      }
      const lost = moments.slice(at + 1).filter(({ done }) => done < killed);
      const age = lost.length > 0 ? killed - (lost[0]?.done ?? killed) : 0;
      if (run > 0) each({ deeds: moments.length - 1, lost: lost.length, age }, run);
      let { states } = opened;
      if (states.length > 1) {
        await undo(page);
        states = statesAfter(states, { kind: "undo" });
        await page.waitForFunction(() => /^Undone/.test(document.querySelector(".said")?.textContent ?? ""));
        if ((await handedOut(page)) !== allText(present(states)))
          throw new Error(`After kill ${run} the last step is not taken back as it was made.`);
      }
      if (run < runs) ({ moments, killed } = await editUntilKilled(page, browser, states, random));
    } finally {
      await browser.kill();
    }
  }
}
