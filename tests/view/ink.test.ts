import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";

const css = readFileSync(resolve(import.meta.dirname, "../../src/view/styles/ink.css"), "utf8");

/** The two colours of a variable, by day and by night. */
function colours(name: string): readonly [string, string] {
  const [, light = "", dark = ""] = new RegExp(`--${name}: light-dark\\((#\\w+), (#\\w+)\\)`).exec(css) ?? [];
  if (!light || !dark) throw new Error(`There is no --${name}.`);
  return [light, dark];
}

/** Relative luminance by WCAG 2.2. */
function luminance(hex: string): number {
  const full = hex.length === 4 ? hex.replace(/\w/g, (digit) => digit + digit) : hex;
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(full.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [high = 0, low = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (high + 0.05) / (low + 0.05);
}

describe("ink on paper (WCAG 2.2, 1.4.3 and 1.4.11)", () => {
  const texts = ["ink", "soft", "holds", "short", "care"];
  const grounds = ["paper", "desk", "field", "pencil", "pick"];

  it.each(texts.flatMap((text) => grounds.map((ground) => [text, ground] as const)))(
    "%s on %s has a contrast of at least 4.5, by day and by night",
    (text, ground) => {
      for (const time of [0, 1] as const) {
        expect(contrast(colours(text)[time], colours(ground)[time])).toBeGreaterThanOrEqual(4.5);
      }
    },
  );

  it.each(["edge", "focus"])("%s stands out from every ground by at least 3", (line) => {
    for (const ground of ["paper", "desk", "field"]) {
      for (const time of [0, 1] as const) {
        expect(contrast(colours(line)[time], colours(ground)[time])).toBeGreaterThanOrEqual(3);
      }
    }
  });
});
