import { cellName } from "../../notebook/cell-name";
import type { LiveNotebook } from "../../notebook/live";
import { type Position, pageById } from "../../notebook/model";
import { cellName as cellText } from "../block";
import { textWidth } from "../grid/text-width";
import { rowDecimals } from "../shown/row-decimals";
import { rowUnits } from "../shown/row-units";
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
  if (!page || value.kind === "blank") return "blank";
  if (value.kind === "error") return "no value";
  return worthText(value, rowUnits(live.notebook, page, at.row), rowDecimals(live, page, at.row));
}

/** The words of a node as seen from a cell: what stands on another page or in another option says so. */
export function nodeWords(live: LiveNotebook, home: Position, node: FeedNode): NodeWords {
  if (node.kind === "more") {
    const words = `${node.count} more cells`;
    return { title: `${words} …`, below: "", spoken: `${words}, Enter shows them` };
  }
  const name = cellName(live.notebook, node.at);
  const from = cellName(live.notebook, home);
  const page = node.at.page === home.page ? "" : `${name?.page ?? ""} `;
  if (node.kind === "range") {
    const words = `${page}${node.words}, ${node.count} cells`;
    return { title: words, below: "", spoken: `range ${words}` };
  }
  const option = name?.option && name.option !== from?.option ? ` ${name.option}` : "";
  const cell = cellText(node.at);
  const value = worth(live, node.at);
  const title = name?.quantity || `${page}${cell}`;
  const place = `${page}${cell}${option}`;
  return {
    title,
    below: name?.quantity ? `${place}: ${value}` : value,
    spoken: [name?.quantity, place, value].filter(Boolean).join(", "),
  };
}

/** A text cut to so many px, with three dots where something is missing. */
export function fitted(text: string, width: number, font: string): string {
  if (textWidth(text, font) <= width) return text;
  let end = text.length;
  while (end > 1 && textWidth(`${text.slice(0, end).trimEnd()}…`, font) > width) end--;
  return `${text.slice(0, end).trimEnd()}…`;
}
