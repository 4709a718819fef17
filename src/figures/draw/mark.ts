import { ink } from "./ink";

export interface Point {
  readonly x: number;
  readonly y: number;
}

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Hundredths of a unit are finer than any printer. */
export const round = (value: number): string => String(Math.round(value * 100) / 100 + 0);

export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** An element with its attributes in the order given; those without a value are left out. */
export function element(name: string, attributes: Attributes, content = ""): string {
  const list = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(typeof value === "number" ? round(value) : String(value))}"`)
    .join("");
  return content === "" ? `<${name}${list}/>` : `<${name}${list}>${content}</${name}>`;
}

/** How a line is drawn: width in drawing units, dashes, colour, and the fill of a closed shape. */
export interface Pen {
  readonly width?: number;
  readonly dash?: string;
  readonly stroke?: string;
  readonly fill?: string;
}

/** Cut edges and main lines. */
export const bold: Pen = { width: 1.5 };
/** Everything else that is seen. */
export const fine: Pen = { width: 0.8 };
/** What is hidden or was not measured. */
export const hidden: Pen = { width: 0.8, dash: "4 3" };
/** Centre lines. */
export const centre: Pen = { width: 0.6, dash: "9 2 2 2" };

const pen = ({ width = 0.8, dash, stroke = ink, fill = "none" }: Pen): Attributes => ({
  stroke,
  "stroke-width": width,
  "stroke-dasharray": dash,
  fill,
});

export const pathOf = (points: readonly Point[], closed = false): string =>
  `M${points.map(({ x, y }) => `${round(x)} ${round(y)}`).join("L")}${closed ? "Z" : ""}`;

export const path = (d: string, how: Pen, more: Attributes = {}): string =>
  element("path", { d, ...pen(how), "stroke-linejoin": "round", ...more });

export const polyline = (points: readonly Point[], how: Pen = fine): string => path(pathOf(points), how);

export const shape = (points: readonly Point[], how: Pen = fine): string => path(pathOf(points, true), how);

export const line = (from: Point, to: Point, how: Pen = fine): string => polyline([from, to], how);

export const circle = (at: Point, r: number, how: Pen = fine, more: Attributes = {}): string =>
  element("circle", { cx: at.x, cy: at.y, r, ...pen(how), ...more });

export const group = (attributes: Attributes, ...content: readonly string[]): string =>
  element("g", attributes, content.join("\n"));
