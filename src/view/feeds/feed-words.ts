import { cellName } from "../../notebook/cell-name";
import type { LiveNotebook } from "../../notebook/live";
import { type Position, pageById } from "../../notebook/model";
import { say } from "../../words/say";
import { cellName as cellText } from "../block";
import { textWidth } from "../grid/text-width";
import { rowDecimals } from "../shown/row-decimals";
import { rowUnits } from "../shown/row-units";
import { startOf } from "../shown/start-of";
import { worthText } from "../shown/value-text";
import type { FeedNode } from "./feed-nodes";

/** Two lines of a node, and all of it in one sentence. */
export interface NodeWords {
  readonly title: string;
  readonly below: string;
  readonly spoken: string;
}

function worth(live: LiveNotebook, at: Position): string {
  const page = pageById(live.notebook, at.page);
  const value = live.value(at);
  if (!page || value.kind === "blank") return say`blank`;
  if (value.kind === "error") return say`no value`;
  return worthText(value, rowUnits(live.notebook, page, at.row), rowDecimals(live, page, at.row));
}

/** The words of a node as seen from a cell: what stands on another page or in another option says so. */
export function nodeWords(live: LiveNotebook, home: Position, node: FeedNode): NodeWords {
  if (node.kind === "more") {
    const words = say`${node.count} more cells`;
    return { title: `${words} …`, below: "", spoken: say`${words}, Enter shows them` };
  }
  const name = cellName(live.notebook, node.at);
  const from = cellName(live.notebook, home);
  const page = node.at.page === home.page ? "" : `${name?.page ?? ""} `;
  if (node.kind === "range") {
    const words = say`${page}${node.words}, ${node.count} cells`;
    return { title: words, below: "", spoken: say`range ${words}` };
  }
  const option = name?.option && name.option !== from?.option ? ` ${name.option}` : "";
  const cell = cellText(node.at);
  const value = worth(live, node.at);
  const quantity = startOf(name?.quantity ?? "");
  const title = quantity || `${page}${cell}`;
  const place = `${page}${cell}${option}`;
  return {
    title,
    below: quantity ? `${place}: ${value}` : value,
    spoken: [quantity, place, value].filter(Boolean).join(", "),
  };
}

/** No line of a node takes more letters, however thin they are; measuring all of a long text would take minutes. */
const mostLetters = 200;

/** A text in at most so many lines of so many px, broken between words; the last one is cut where it must be. */
export function broken(text: string, width: number, font: string, most: number): string[] {
  const lines: string[] = [];
  let rest = text.slice(0, mostLetters * most).split(" ");
  while (rest.length > 0 && lines.length < most - 1) {
    let count = 1;
    while (count < rest.length && textWidth(rest.slice(0, count + 1).join(" "), font) <= width) count++;
    lines.push(fitted(rest.slice(0, count).join(" "), width, font));
    rest = rest.slice(count);
  }
  return rest.length > 0 ? [...lines, fitted(rest.join(" "), width, font)] : lines;
}

/** A text cut to so many px, with three dots where something is missing. */
export function fitted(text: string, width: number, font: string): string {
  if (text.length <= mostLetters && textWidth(text, font) <= width) return text;
  let end = Math.min(text.length, mostLetters);
  while (end > 1 && textWidth(`${text.slice(0, end).trimEnd()}…`, font) > width) end--;
  return `${text.slice(0, end).trimEnd()}…`;
}
