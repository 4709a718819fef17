import { isFormula } from "../../engine/content";
import { cellsOf, feedsOf } from "../../notebook/feeds";
import { type Notebook, type Position, pageById, textAt } from "../../notebook/model";
import { referencesOf } from "../../notebook/references";
import { say } from "../../words/say";
import { blockName } from "../block";

/** A place in the graph: a cell, the head of a range with its cells below, or what stands for cells not shown yet. */
export type FeedNode =
  | { readonly kind: "cell"; readonly id: string; readonly at: Position; readonly inRange: boolean }
  | {
      readonly kind: "range";
      readonly id: string;
      readonly at: Position;
      readonly words: string;
      readonly count: number;
    }
  | { readonly kind: "more"; readonly id: string; readonly list: string; readonly count: number };

/** So many cells of a list are shown until more are asked for. */
const mostShown = 6;

const idOf = (side: string, { page, row, column }: Position): string => `${side} ${page} ${row} ${column}`;

function listed(
  side: string,
  list: string,
  cells: readonly Position[],
  open: ReadonlySet<string>,
  inRange = false,
): FeedNode[] {
  // One more line would take as much room as the last cell.
  const all = open.has(list) || cells.length <= mostShown + 1;
  const shown = all ? cells : cells.slice(0, mostShown);
  return [
    ...shown.map((at): FeedNode => ({ kind: "cell", id: idOf(side, at), at, inRange })),
    ...(all ? [] : [{ kind: "more", id: `more ${list}`, list, count: cells.length - shown.length } as const]),
  ];
}

/** What feeds a cell, in the order of its formula, ranges with their cells below them; each cell once. */
export function feedingNodes(notebook: Notebook, at: Position, open: ReadonlySet<string>): FeedNode[] {
  const page = pageById(notebook, at.page);
  const text = page ? textAt(page, at.row, at.column) : "";
  if (!page || !isFormula(text)) return [];
  const known = new Set<string>();
  return referencesOf(text).flatMap((reference): FeedNode[] => {
    const cells = cellsOf(notebook, page, reference);
    const fresh = cells.filter((cell) => !known.has(idOf("in", cell)));
    for (const cell of fresh) known.add(idOf("in", cell));
    const [first] = fresh;
    const last = cells.at(-1);
    if (!first || !last) return [];
    if (cells.length === 1) return listed("in", idOf("in", first), [first], open);
    const words = blockName({ from: cells[0] ?? first, to: last });
    const list = say`range ${first.page} ${words}`;
    return [
      { kind: "range", id: list, at: cells[0] ?? first, words, count: cells.length },
      ...listed("in", list, fresh, open, true),
    ];
  });
}

/** What a cell feeds, by page, row and column. */
export const fedNodes = (notebook: Notebook, at: Position, open: ReadonlySet<string>): FeedNode[] =>
  listed("out", idOf("out", at), feedsOf(notebook).fedBy(at), open);
