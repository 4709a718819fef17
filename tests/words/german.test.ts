import { describe, expect, it } from "vitest";
import { german } from "../../src/words/german";
import { saidTexts } from "./texts";

const texts = saidTexts();

const places = (text: string): string[] => [...new Set(text.match(/\{\d\}/g) ?? [])].sort();

describe("the German catalogue", () => {
  it("has every text that the source says", () => {
    const missing = texts.filter(({ key }) => !Object.hasOwn(german, key)).map(({ key, file }) => `${file}: ${key}`);
    expect(missing).toEqual([]);
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
