import type { LiveNotebook } from "../../notebook/live";
import type { Position } from "../../notebook/model";
import type { FeedNode } from "./feed-nodes";
import { broken, type NodeWords, nodeWords } from "./feed-words";

/** px */
export const lineHeight = 15;
export const around = 8;
/** Between the edge of a node and its words. */
export const side = 6;
const titleFont = "12px 'IBM Plex Sans'";

/** A node with its words and its place in a column of the drawing. */
export interface Placed {
  readonly node: FeedNode;
  readonly words: NodeWords;
  readonly lines: readonly string[];
  readonly inset: number;
  readonly y: number;
  readonly height: number;
}

/** Nodes of a width in px below one another; a cell of a range hangs on its range. */
export function placed(live: LiveNotebook, home: Position, nodes: readonly FeedNode[], width: number): Placed[] {
  let y = 0;
  return nodes.map((node) => {
    const words = nodeWords(live, home, node);
    const inset = node.kind === "cell" && node.inRange ? 10 : 0;
    const lines = broken(words.title, width - inset - 2 * side, titleFont, 2);
    const height = (lines.length + (words.below ? 1 : 0)) * lineHeight + around;
    const at = { node, words, lines, inset, y, height };
    y += height + 4;
    return at;
  });
}

/** Height of a column in px. */
export const heightOf = (list: readonly Placed[]): number => {
  const last = list.at(-1);
  return last ? last.y + last.height : 0;
};
