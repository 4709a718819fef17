import { describe, expect, it } from "vitest";
import { list } from "../../src/cli/list";
import { Misuse } from "../../src/cli/output";
import { catalogue } from "../../src/functions";
import { terminal } from "./terminal";

function listed(words: readonly string[], json = false): string {
  const output = terminal();
  list(output, words, json);
  return output.text();
}

describe("the list of named functions on the terminal", () => {
  it("says of every function its arguments, mathematics, limits, sources and a worked example", () => {
    const all = JSON.parse(listed([], true));
    expect(all.map(({ name }: { name: string }) => name)).toEqual(catalogue.map(({ name }) => name));
    for (const one of all) {
      expect(one.mathematics.length, one.name).toBeGreaterThan(0);
      expect(
        one.mathematics.every(({ text }: { text: string }) => text !== ""),
        one.name,
      ).toBe(true);
      expect(one.valid, one.name).not.toBe("");
      expect(one.sources.length, one.name).toBeGreaterThan(0);
      expect(one.examples[0].formula, one.name).toContain(`=${one.name}(`);
      expect(one.examples[0].source, one.name).not.toBe("");
    }
  });

  it("finds those that say all the words", () => {
    const text = listed(["voltage", "copper", "run"]);
    for (const part of [
      "CONDUCTOR.DROP(current, run, area, temperature = 20, parallel = 1)  ->  V",
      "current [A]: current while running; allowed 0 to 5000 A",
      "R = r / metres per km × run × (1 + α × (temperature − T₂₀)) / parallel",
      "holds: Flexible plain copper",
      "source: IEC 60228",
      "example: =CONDUCTOR.DROP(",
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toContain("WIND.PRESSURE(");
    expect(JSON.parse(listed(["conductor.drop"], true))).toHaveLength(1);
  });

  it("says so when no function does", () => {
    expect(() => listed(["no such word"])).toThrow(Misuse);
    expect(() => listed(["no such word"])).toThrow('No function says "no such word"');
  });
});
