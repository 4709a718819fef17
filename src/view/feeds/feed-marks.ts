import type { Notebook, Position } from "../../notebook/model";
import { say } from "../../words/say";
import { cellName } from "../block";
import { type CellMark, markKey } from "../cell-marks";
import { type FeedNode, fedNodes, feedingNodes } from "./feed-nodes";

/** Marks for the cells that feed a cell, and for those that it feeds. */
export function feedMarks(notebook: Notebook, at: Position): ReadonlyMap<string, CellMark> {
  const marks = new Map<string, CellMark>();
  const all = new Set(
    [...feedingNodes(notebook, at, new Set()), ...fedNodes(notebook, at, new Set())].flatMap((node) =>
      node.kind === "more" ? [node.list] : [],
    ),
  );
  const put = (nodes: readonly FeedNode[], mark: CellMark) => {
    for (const node of nodes)
      if (node.kind === "cell") marks.set(markKey(node.at.page, node.at.row, node.at.column), mark);
  };
  put(fedNodes(notebook, at, all), { kind: "fed", words: say`fed by ${cellName(at)}` });
  put(feedingNodes(notebook, at, all), { kind: "feeding", words: say`feeds ${cellName(at)}` });
  return marks;
}
