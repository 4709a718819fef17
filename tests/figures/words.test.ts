import { describe, expect, it } from "vitest";
import { isDrawn } from "../../src/figures/figure";
import { cases } from "./cases";

const drawn = Object.entries(cases).flatMap(([name, draw]) => {
  const figure = draw();
  return isDrawn(figure) ? [[name, figure] as const] : [];
});

const plain = (text: string): string =>
  text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&amp;", "&");

/** Numbers as they stand in a text, with their sign. */
const numbers = (text: string): string[] => text.match(/\u2212?\d[\d\u202f]*(\.\d+)?/g) ?? [];

describe("the words of a drawing", () => {
  it.each(drawn)("%s says all of its numbers in its text alternative", (_name, { svg, says }) => {
    const spoken = new Set(numbers(says));
    const texts = [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)]
      .filter(([, attributes]) => !attributes?.includes("data-tick"))
      .map(([, , content = ""]) => plain(content));
    const unsaid = texts.flatMap(numbers).filter((number) => !spoken.has(number));
    expect(unsaid).toEqual([]);
  });

  it.each(drawn)("%s is an image with a name, a title and a description", (_name, { svg, says, title }) => {
    const [, label = ""] = /aria-label="([^"]*)"/.exec(svg) ?? [];
    expect(svg).toContain(' role="img"');
    expect(plain(label)).toBe(`${title}. ${says}`);
    expect(plain(/<title>([^<]*)</.exec(svg)?.[1] ?? "")).toBe(title);
    expect(plain(/<desc>([^<]*)</.exec(svg)?.[1] ?? "")).toBe(says);
  });

  it.each(drawn)(
    "%s holds no number that could not be drawn, and nothing a strict page would refuse",
    (_name, { svg }) => {
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg).not.toMatch(/<style|<script|<foreignObject| style=| id=| on\w+=/i);
    },
  );
});
