import type { Look, Shape } from "./look";

const context = typeof document === "undefined" ? null : document.createElement("canvas").getContext("2d");

const sans = "13.5px 'IBM Plex Sans'";
const small = "12px 'IBM Plex Sans'";
const bold = "600 13.5px 'IBM Plex Sans'";
export const headerFont = "600 12px 'IBM Plex Sans Condensed'";

const fonts: Partial<Record<Shape, string>> = {
  heading: "600 13px 'IBM Plex Sans Condensed'",
  formula: "12px 'IBM Plex Mono'",
  key: "11px 'IBM Plex Mono'",
  basis: small,
  unit: small,
  error: small,
  title: headerFont,
  holds: bold,
  short: bold,
  open: bold,
  caution: bold,
  hold: bold,
};

/** Left and right padding of a cell with its border. */
export const sides = 14;
const markWidth = 15;
const gaugeWidth = 36;

/** Widths that were measured: rows are laid out again at every edit, and most of their words stay. */
const measured = new Map<string, number>();
const mostMeasured = 20_000;

/** Width of a text in px; a guess where the browser measures nothing. */
export function textWidth(text: string, font: string): number {
  if (!context) return text.length * 7;
  const place = `${font}\n${text}`;
  const known = measured.get(place);
  if (known !== undefined) return known;
  context.font = font;
  const { width } = context.measureText(text);
  if (measured.size >= mostMeasured) measured.clear();
  measured.set(place, width);
  return width;
}

const marked: ReadonlySet<Shape> = new Set(["holds", "short", "error", "open", "caution", "hold"]);

const extra = ({ shape, margin }: Look): number => {
  if (margin !== undefined) return gaugeWidth;
  return marked.has(shape) ? markWidth : 0;
};

/** Width that a cell needs to show all of its text in one line, in px. */
export const lookWidth = (look: Look): number => textWidth(look.text, fonts[look.shape] ?? sans) + extra(look) + sides;

/** How many lines a text takes in a column of so many px. */
export function linesOf(look: Look, width: number): number {
  const room = width - sides;
  const font = fonts[look.shape] ?? sans;
  const space = look.shape === "key" ? 0 : textWidth(" ", font);
  let lines = 1;
  // A mark stands before the first word.
  let filled = extra(look);
  for (const word of look.text.split(look.shape === "key" ? /(?<=_)/ : /\s+/)) {
    const own = textWidth(word, font);
    if (filled > 0 && filled + space + own > room) {
      lines++;
      filled = own;
    } else filled += (filled > extra(look) ? space : 0) + own;
    while (filled > room && room > 0) {
      lines++;
      filled -= room;
    }
  }
  return lines;
}
