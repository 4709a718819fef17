import type { Point } from "../draw/mark";

/** A piece of a contour line, in steps of the grid. */
export type Piece = readonly [Point, Point];

/** Where a straight line between two values passes a level, as a share of the way. */
const share = (from: number, to: number, level: number): number => (level - from) / (to - from);

/**
 * Pieces of the line on which a grid of values has one level: through every square of the grid by straight lines
 * between points on its sides. A square with a corner that has no value is left out; where two lines cross a square,
 * the mean of its corners says which corners belong together.
 *
 * @param rows values line by line; x counts along a line, y counts lines.
 */
export function contour(rows: readonly (readonly number[])[], level: number): Piece[] {
  const pieces: Piece[] = [];
  for (let y = 0; y + 1 < rows.length; y++) {
    const [upper, lower] = [rows[y] ?? [], rows[y + 1] ?? []];
    for (let x = 0; x + 1 < upper.length; x++) {
      const [a, b, c, d] = [upper[x], upper[x + 1], lower[x + 1], lower[x]] as [number, number, number, number];
      if ([a, b, c, d].some(Number.isNaN)) continue;
      const crosses = (p: number, q: number) => p >= level !== q >= level;
      const top = crosses(a, b) && { x: x + share(a, b, level), y };
      const right = crosses(b, c) && { x: x + 1, y: y + share(b, c, level) };
      const bottom = crosses(d, c) && { x: x + share(d, c, level), y: y + 1 };
      const left = crosses(a, d) && { x, y: y + share(a, d, level) };
      if (top && right && bottom && left) {
        const joinsFirst = (a + b + c + d) / 4 >= level === a >= level;
        pieces.push(
          ...(joinsFirst
            ? ([
                [top, right],
                [bottom, left],
              ] as const)
            : ([
                [top, left],
                [right, bottom],
              ] as const)),
        );
        continue;
      }
      const [from, to] = [top, right, bottom, left].filter((one) => one !== false);
      if (from && to) pieces.push([from, to]);
    }
  }
  return pieces;
}
