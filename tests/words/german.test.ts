import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import type { Catalogue } from "../../src/words/catalogue";
import { german } from "../../src/words/german";
import { definitionTexts } from "./definitions";
import { saidTexts } from "./texts";

const texts = saidTexts();

const places = (text: string): string[] => [...new Set(text.match(/\{\w+\}/g) ?? [])].sort();

describe("the German catalogue", () => {
  it("has every text that the source says", () => {
    const missing = texts.filter(({ key }) => !Object.hasOwn(german, key)).map(({ key, file }) => `${file}: ${key}`);
    expect(missing).toEqual([]);
  });

  it("says a text alike wherever it stands in the catalogue", async () => {
    const folder = resolve(import.meta.dirname, "../../src/words/german");
    const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
    const areas = await Promise.all(
      files.map((name): Promise<Readonly<Record<string, Catalogue>>> => import(join(folder, name))),
    );
    const entries = areas.flatMap((area) => Object.values(area)).flatMap((area) => Object.entries(area));
    expect(entries.length).toBeGreaterThan(1000);
    // One entry of two would take the other's place without a word.
    const lost = entries.filter(([key, own]) => JSON.stringify(own) !== JSON.stringify(german[key]));
    expect(lost).toEqual([]);
  });

  it("has every text of the named functions and their tables, with the same names to put in", () => {
    const wrong = definitionTexts().filter((key) => {
      const own = german[key];
      return typeof own !== "string" || String(places(own)) !== String(places(key));
    });
    expect(wrong).toEqual([]);
  });

  it("has the names of the settings that the worked notebooks have", () => {
    const names = ["course", "one-hull-three-layouts", "three-hulls"].flatMap((folder) => {
      const { settings = {} } = JSON.parse(readFileSync(`sheets/${folder}/notebook.json`, "utf8"));
      return Object.keys(settings).map((name) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`));
    });
    expect(names.length).toBeGreaterThan(3);
    expect(names.filter((name) => !Object.hasOwn(german, name))).toEqual([]);
  });

  it("puts in what the English text puts in, nothing more and nothing less", () => {
    const wrong = texts.filter(({ key, counts }) => {
      const own = german[key];
      if (own === undefined || counts) return false;
      return typeof own !== "string" || String(places(own)) !== String(places(key));
    });
    expect(wrong.map(({ key }) => key)).toEqual([]);
  });

  it("has one and many of what is counted, each with its number", () => {
    const wrong = texts.filter(({ key, counts }) => {
      const own = german[key];
      return counts && (typeof own !== "object" || !own.one?.includes("{0}") || !own.other.includes("{0}"));
    });
    expect(wrong.map(({ key }) => key)).toEqual([]);
  });
});
