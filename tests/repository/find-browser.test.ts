import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { findBrowser } from "../browser/find-browser.mjs";

const first = mkdtempSync(join(tmpdir(), "athwart-browser-"));
const second = mkdtempSync(join(tmpdir(), "athwart-browser-"));
const path = [first, second].join(delimiter);

const program = (folder: string, name: string): string => {
  const file = join(folder, name);
  writeFileSync(file, "#!/bin/sh\n");
  chmodSync(file, 0o755);
  return file;
};
const chrome = program(first, "google-chrome");
const chromium = program(second, "chromium");
const own = program(second, "my-browser");
const text = join(second, "notes.txt");
writeFileSync(text, "");

afterAll(() => {
  for (const folder of [first, second]) rmSync(folder, { recursive: true });
});

describe("the browser for the tests", () => {
  it("is the one named in ATHWART_BROWSER, before CHROME_PATH and PATH", () => {
    expect(findBrowser({ ATHWART_BROWSER: own, CHROME_PATH: chrome, PATH: path }, [])).toBe(own);
    expect(findBrowser({ CHROME_PATH: chrome, PATH: path }, [])).toBe(chrome);
  });

  it("is Chromium before Chrome, wherever on PATH each lies", () => {
    expect(findBrowser({ PATH: path }, [])).toBe(chromium);
    expect(findBrowser({ PATH: first }, [])).toBe(chrome);
  });

  it("is looked for in the usual places when PATH has none", () => {
    expect(findBrowser({ PATH: "" }, [second])).toBe(chromium);
  });

  it("is refused with the variable's name when that names no program", () => {
    expect(() => findBrowser({ ATHWART_BROWSER: text, PATH: path }, [])).toThrow(/ATHWART_BROWSER is ".*notes\.txt"/);
    expect(() => findBrowser({ CHROME_PATH: first, PATH: path }, [])).toThrow(/CHROME_PATH is/);
  });

  it("is missed in one sentence with the command that installs one", () => {
    expect(() => findBrowser({ PATH: "" }, [])).toThrow(/`apt-get install -y chromium`/);
  });
});
