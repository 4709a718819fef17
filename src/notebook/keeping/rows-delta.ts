import { say } from "../../words/say";
import type { Row } from "../model";
import { rowSplice, type Splice, splicedRow } from "./splice";

/**
 * A part of a page's rows after a change: so many rows as they were, or one row told as the difference from an old
 * one; `row` is -1 where there was none like it.
 */
export type RowsPiece =
  | { readonly same: number; readonly count: number }
  | ({ readonly row: number } & Splice<readonly string[]>);

const weight = (piece: Splice<readonly string[]>): number => piece.put.reduce((sum, text) => sum + text.length + 4, 0);

/** The shortest telling of a row: against the old row that follows the last one used, or that is as far from the end. */
function changedRow(before: readonly Row[], row: Row, candidates: readonly number[]): RowsPiece {
  let best: RowsPiece & Splice<readonly string[]> = { row: -1, at: 0, drop: 0, put: row };
  for (const candidate of candidates) {
    const old = before[candidate];
    if (!old) continue;
    const piece = { row: candidate, ...rowSplice(old, row) };
    if (weight(piece) < weight(best)) best = piece;
  }
  return best;
}

/** How the rows of a page became others. Rows that are shared are found by what they are, not by their content. */
export function rowsDelta(before: readonly Row[], after: readonly Row[]): readonly RowsPiece[] {
  const places = new Map(before.map((row, place) => [row, place]));
  const pieces: RowsPiece[] = [];
  let next = 0;
  after.forEach((row, i) => {
    // Where a row stands twice, the one that continues the run is meant.
    const place = before[next] === row ? next : places.get(row);
    if (place === undefined) {
      const piece = changedRow(before, row, [next, i + before.length - after.length]);
      if ("row" in piece && piece.row >= 0) next = piece.row + 1;
      pieces.push(piece);
      return;
    }
    const last = pieces.at(-1);
    if (last && "same" in last && last.same + last.count === place) {
      pieces[pieces.length - 1] = { same: last.same, count: last.count + 1 };
    } else {
      pieces.push({ same: place, count: 1 });
    }
    next = place + 1;
  });
  return pieces;
}

/** @throws Error when the pieces belong to other rows. */
export function rowsAfter(before: readonly Row[], pieces: readonly RowsPiece[]): readonly Row[] {
  return pieces.flatMap((piece): readonly Row[] => {
    if ("same" in piece) {
      const rows = before.slice(piece.same, piece.same + piece.count);
      if (rows.length !== piece.count)
        throw new Error(say`rows ${piece.same} to ${piece.same + piece.count} are not there`);
      return rows;
    }
    const old = piece.row < 0 ? [] : before[piece.row];
    if (!old) throw new Error(say`row ${piece.row} is not there`);
    return [splicedRow(old, piece)];
  });
}
