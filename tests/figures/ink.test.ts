import { describe, expect, it } from "vitest";
import { care, cut, holds, inBlack, inFixedInk, paper, rootInk, short, soft } from "../../src/figures/draw/ink";
import { isDrawn } from "../../src/figures/figure";
import { cases } from "./cases";

/** The two colours of a token, light and dark. */
const colours = (token: string): readonly [string, string] => {
  const [, light = "", dark = ""] = /light-dark\((#\w+), (#\w+)\)/.exec(token) ?? [];
  return [light, dark];
};

/** Relative luminance, WCAG 2.2. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((i) => Number.parseInt(colour.slice(i, i + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

const contrast = (a: string, b: string): number => {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
};

describe("the ink of drawings", () => {
  it.each(Object.entries({ rootInk, soft, holds, short, care }))(
    "%s stands out from the paper by 4.5 to 1 in light and dark (WCAG 2.2, 1.4.3)",
    (_name, token) => {
      colours(token).forEach((colour, scheme) => {
        expect(contrast(colour, colours(paper)[scheme] ?? "")).toBeGreaterThanOrEqual(4.5);
      });
    },
  );

  it("stands out from cut material too", () => {
    colours(rootInk).forEach((colour, scheme) => {
      expect(contrast(colour, colours(cut)[scheme] ?? "")).toBeGreaterThanOrEqual(4.5);
    });
  });

  it("can be fixed for programs that know no variables, and be black for printers", () => {
    for (const draw of Object.values(cases)) {
      const figure = draw();
      if (!isDrawn(figure)) continue;
      expect(inFixedInk(figure.svg)).not.toMatch(/var\(|light-dark|currentColor/);
      const used = new Set(inBlack(figure.svg).match(/#[0-9a-f]{6}/g));
      expect([...used].filter((colour) => !["#000000", "#ffffff", "#dddddd"].includes(colour))).toEqual([]);
    }
  });
});
