import { describe, expect, it } from "vitest";
import { isolated, listed } from "../../src/words/isolated";
import { say } from "../../src/words/say";

describe("a text that turns the direction of what stands beside it", () => {
  it.each(["", "Sloop", "Größe", "a\nb", "<b>", "👩‍👦", "Z\u0335\u0301"])(
    "%j turns nothing and stays as it is",
    (text) => {
      expect(isolated(text)).toBe(text);
    },
  );

  it.each([
    ["\u0645\u0631\u062d\u0628\u0627 12", "\u2068\u0645\u0631\u062d\u0628\u0627 12\u2069"],
    ["\u202elive", "\u2068\u202elive\u2069"],
    // What it opens is closed again, and what it would close from within stays open.
    ["\u2066a\u2067b", "\u2068\u2066a\u2067b\u2069\u2069\u2069"],
    ["\u2066a\u2069b", "\u2068\u2066a\u2069b\u2069"],
    ["\u2069\u202elive", "\u2068\u202elive\u2069"],
  ])("%j is set apart", (text, apart) => {
    expect(isolated(text)).toBe(apart);
  });

  it("is set apart in sentences and lists; numbers and other texts are not touched", () => {
    const name = "\u202elive";
    expect(say`${name} is now ${3}.`).toBe(`\u2068${name}\u2069 is now 3.`);
    expect(listed(["Sloop", name, "Pilot"])).toBe(`Sloop, \u2068${name}\u2069, Pilot`);
  });
});
