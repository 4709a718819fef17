import { say } from "../../words/say";
import { element, escaped } from "../draw/mark";
import type { Purpose, Template } from "./template";

// Templates are always black on white: they are paper.
export const black = "#000000";
export const white = "#ffffff";
const pens: Readonly<Record<Purpose, Readonly<Record<string, string | number | undefined>>>> = {
  cut: { stroke: black, "stroke-width": 0.35 },
  mark: { stroke: black, "stroke-width": 0.2, "stroke-dasharray": "6 1.5 1.5 1.5" },
  note: { stroke: black, "stroke-width": 0.12 },
};
const letters = "'IBM Plex Sans', 'Helvetica Neue', Arial, sans-serif";

/** Length of the bar that is measured before a template is used, mm. */
export const checkBar = 100;

/** A thousandth of a mm is finer than any printer; `element` would round to hundredths. */
export const exact = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** The template's lines and words with y down, in mm; `left` and `top` come to lie at 0. */
export function content(template: Template, left: number, top: number): string[] {
  const lines = template.lines.map(({ purpose, points, closed }) => {
    const d = `M${points.map(({ x, y }) => `${exact(x - left)} ${exact(top - y)}`).join("L")}${closed ? "Z" : ""}`;
    return element("path", { d, fill: "none", ...pens[purpose], "data-purpose": purpose });
  });
  const texts = template.texts.map(({ at, says, size, anchor }) =>
    element(
      "text",
      {
        x: exact(at.x - left),
        y: exact(top - at.y),
        "font-size": size,
        fill: black,
        "text-anchor": anchor === "start" ? undefined : anchor,
      },
      escaped(says),
    ),
  );
  return [...lines, ...texts];
}

/** The bar of 100 mm with its ends, its left end at (`x`, `y`). */
export function bar(x: number, y: number): string {
  const d = `M${x} ${y - 2}V${y + 2}M${x} ${y}H${x + checkBar}M${x + checkBar} ${y - 2}V${y + 2}`;
  return (
    element("path", { d, fill: "none", stroke: black, "stroke-width": 0.25, "data-bar": checkBar }) +
    element(
      "text",
      { x: x + checkBar / 2, y: y - 1.5, "font-size": 3.2, fill: black, "text-anchor": "middle" },
      say`check bar: 100 mm`,
    )
  );
}

/** A drawing of so many mm, one unit of it a mm, with its text alternative. */
export function root(width: number, height: number, title: string, says: string, parts: readonly string[]): string {
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width: `${exact(width)}mm`,
      height: `${exact(height)}mm`,
      viewBox: `0 0 ${exact(width)} ${exact(height)}`,
      role: "img",
      "aria-label": `${title}. ${says}`,
      "font-family": letters,
    },
    ["", `<title>${escaped(title)}</title>`, `<desc>${escaped(says)}</desc>`, ...parts, ""].join("\n"),
  );
}
