import { ink, paper } from "./ink";
import { element, type Point } from "./mark";

export const letterSize = 11;
export const lineHeight = 13.5;

/** Advance widths in parts of the letter size, a little wide so that other typefaces fit as well. */
const widths: readonly (readonly [letters: string, width: number])[] = [
  [" \u00a0.,:;'|!ijl\u202f", 0.32],
  ["frtI()[]/-", 0.42],
  ["mwMW%@⌀", 0.92],
  ["ABCDEFGHKLNOPQRSTUVXYZ=+×\u2212~°", 0.7],
];
const widthOf = new Map(widths.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width] as const)));

/** How wide a text will be at most, in drawing units; there is no page here that could measure it. */
export const textWidth = (text: string, size = letterSize): number =>
  [...text].reduce((sum, letter) => sum + (widthOf.get(letter) ?? 0.59), 0) * size;

export interface Lettering {
  readonly anchor?: "start" | "middle" | "end";
  readonly fill?: string;
  readonly size?: number;
  readonly strong?: boolean;
  /** A scale's own figures, which the text alternative need not repeat. */
  readonly tick?: boolean;
  /** Keeps lines off the words by a rim of paper. */
  readonly rim?: boolean;
  /** Degrees, clockwise. */
  readonly turn?: number;
}

/** A line of text; `at` is the end of its baseline that `anchor` names. */
export function text(at: Point, content: string, how: Lettering = {}): string {
  const { anchor = "start", fill = ink, size, strong, tick, rim, turn } = how;
  return element(
    "text",
    {
      x: at.x,
      y: at.y,
      "text-anchor": anchor === "start" ? undefined : anchor,
      fill,
      "font-size": size,
      "font-weight": strong ? 600 : undefined,
      ...(rim && { stroke: paper, "stroke-width": 3, "stroke-linejoin": "round", "paint-order": "stroke" }),
      "data-tick": tick ? "" : undefined,
      transform:
        turn === undefined
          ? undefined
          : `rotate(${turn} ${Math.round(at.x * 100) / 100} ${Math.round(at.y * 100) / 100})`,
    },
    content.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;"),
  );
}

/** Breaks words into lines no wider than `width`; a single long word keeps a line of its own. */
export function wrap(content: string, width: number, size = letterSize): string[] {
  const lines: string[] = [];
  for (const word of content.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || textWidth(longer, size) > width) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}
