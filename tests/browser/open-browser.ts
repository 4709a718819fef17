import { type Browser, chromium } from "playwright-core";
import { findBrowser } from "./find-browser.mjs";

/** Keeps the browser from asking for anything by itself; it starts with an empty profile of its own each time. */
export const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * A browser without a window.
 *
 * @throws Error with the command that installs one, when this machine has none.
 */
export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: findBrowser(), headless: true, args: flags });
