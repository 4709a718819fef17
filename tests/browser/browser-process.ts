import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { type BrowserContext, chromium } from "playwright-core";
import { findBrowser } from "./find-browser.mjs";
import { flags } from "./open-browser";

/** A browser with a profile that stays, started as a process of our own so that it can be killed. */
export interface BrowserProcess {
  readonly context: BrowserContext;
  /** Kills it with all that belongs to it, without a word before, and waits until it is gone. */
  readonly kill: () => Promise<void>;
}

/** The port that a browser started on this profile listens on; it writes it down when it is ready. */
async function portOf(profile: string, child: ChildProcess): Promise<string> {
  for (let tries = 0; tries < 300 && child.exitCode === null; tries++) {
    try {
      const [port] = readFileSync(join(profile, "DevToolsActivePort"), "utf8").split("\n");
      if (port) return port;
    } catch {
      // Not written yet.
    }
    await wait(100);
  }
  throw new Error("The browser did not start.");
}

function isAlive(group: number): boolean {
  try {
    process.kill(-group, 0);
    return true;
  } catch {
    return false;
  }
}

export async function startBrowser(profile: string): Promise<BrowserProcess> {
  rmSync(join(profile, "DevToolsActivePort"), { force: true });
  const own = ["--headless", "--remote-debugging-port=0", `--user-data-dir=${profile}`];
  // A group of its own, to which its helper processes belong as well.
  const child = spawn(findBrowser(), [...flags, ...own, "about:blank"], { detached: true, stdio: "ignore" });
  const { pid } = child;
  if (pid === undefined) throw new Error("The browser could not be started.");
  const kill = async () => {
    if (isAlive(pid)) process.kill(-pid, "SIGKILL");
    while (isAlive(pid)) await wait(20);
  };
  try {
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portOf(profile, child)}`);
    const [context] = browser.contexts();
    if (!context) throw new Error("The browser has no window.");
    return { context, kill };
  } catch (cause) {
    await kill();
    throw cause;
  }
}
