import type { CellMark } from "../cell-marks";
import type { Look, Shape } from "./look";

interface Painted {
  readonly shown: string;
  /** The text of a cell that shows words alone, as most numbers do. */
  readonly words: Text | undefined;
}

/** What a cell's element shows now, so that it is left alone when nothing changed. */
const painted = new WeakMap<HTMLElement, Painted>();

function part(name: string, text?: string): HTMLElement {
  const element = document.createElement("span");
  element.className = name;
  if (text !== undefined) element.textContent = text;
  return element;
}

/** A key, which may run on below after each of its words. */
function key(text: string): HTMLElement {
  const element = part("words");
  for (const word of text.split(/(?<=_)/)) element.append(word, document.createElement("wbr"));
  return element;
}

/** A scale with the limit in its middle: the bar goes right as far as there is to spare, left as far as is missing. */
function gauge(margin: number): HTMLElement {
  const element = part("gauge");
  const share = Math.max(-1, Math.min(1, margin / 0.5));
  const bar = part("bar");
  bar.style.setProperty("--share", String(Math.abs(share)));
  element.append(bar);
  return element;
}

/** Shapes that are drawn with more than a text. */
const richShapes: ReadonlySet<Shape> = new Set(["holds", "short", "open", "error", "caution", "hold", "key"]);

function parts(look: Look): HTMLElement[] {
  switch (look.shape) {
    case "holds":
    case "short":
      return look.margin === undefined
        ? [part("shape"), part("words", look.text)]
        : [gauge(look.margin), part("words", look.text)];
    case "open":
    case "error":
    case "caution":
    case "hold":
      return [part("shape"), part("words", look.text)];
    case "key":
      return [key(look.text)];
    default:
      return [part("words", look.text)];
  }
}

/** Puts a look into a cell; one that shows words alone changes its text and keeps its elements. */
function show(td: HTMLTableCellElement, look: Look, before: Text | undefined): Text | undefined {
  const isPlain = look.text !== "" && !richShapes.has(look.shape);
  if (isPlain && before?.parentNode?.parentNode === td) {
    before.data = look.text;
    return before;
  }
  const shown = look.text === "" ? [] : parts(look);
  td.replaceChildren(...shown);
  const words = isPlain ? shown[0]?.firstChild : undefined;
  return words instanceof Text ? words : undefined;
}

/** Draws a cell; the grid has taken the classes away before. */
export function paintCell(td: HTMLTableCellElement, look: Look, extra = ""): void {
  const classes = `cell ${look.shape}${look.isRight ? " right" : ""}${look.isSpilled ? " spilled" : ""}${look.isWrapped ? " wrapped" : ""}${extra}`;
  if (td.className !== classes) td.className = classes;
  const shown = `${look.shape}\n${look.text}\n${look.margin ?? ""}`;
  const before = painted.get(td);
  if (before?.shown !== shown) painted.set(td, { shown, words: show(td, look, before?.words) });
}

/** What a cell says to those who do not see it, and on hovering; after the grid has drawn it. */
export function describeCell(td: HTMLTableCellElement, look: Look, marks: readonly CellMark[]): void {
  const { sentence, text } = look;
  if (look.shape === "error" || look.shape === "open") td.setAttribute("aria-invalid", "true");
  else td.removeAttribute("aria-invalid");
  // A key or a basis may stand in a column that is narrower than its words.
  const isBeside = look.shape === "key" || look.shape === "basis";
  const title = [sentence ?? (isBeside || text.length > 12 ? text : ""), ...marks.map(({ words }) => words)]
    .filter(Boolean)
    .join("\n");
  if (title) td.title = title;
  else td.removeAttribute("title");
}
