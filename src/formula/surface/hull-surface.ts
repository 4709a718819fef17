import { gridPart, type OffsetGrid, type Reach } from "./offset-grid";
import { type Reader, splineReader, straightReader, type Weights } from "./spline-weights";

/** Half-breadth at a place and how it changes there: forward for each mm, and up. */
export interface Spot {
  readonly breadth: number;
  readonly along: number;
  readonly up: number;
}

export type HullSurface = (station: number, height: number) => Spot;

/** `smooth`: cubic splines both ways. `straight`: straight lines both ways. */
export type Between = "smooth" | "straight";

const ways: Readonly<Record<Between, { least: number; reader: (xs: readonly number[]) => Reader }>> = {
  smooth: { least: 3, reader: splineReader },
  straight: { least: 2, reader: straightReader },
};

/**
 * The surface through measured offsets, good for the part of the hull that `reach` names.
 *
 * @throws Fault as `gridPart` does.
 */
export function hullSurface(grid: OffsetGrid, between: Between, reach: Reach): HullSurface {
  const { least, reader } = ways[between];
  const { stations, heights, offsets } = gridPart(grid, reach, least);
  const along = reader(stations);
  const up = reader(heights);
  const n = stations.length;
  const sum = (x: readonly number[], z: readonly number[]): number => {
    let total = 0;
    for (let row = 0; row < z.length; row++) {
      let line = 0;
      for (let column = 0; column < n; column++) line += (x[column] as number) * (offsets[row * n + column] as number);
      total += (z[row] as number) * line;
    }
    return total;
  };
  return (station, height) => {
    const x: Weights = along(station);
    const z: Weights = up(height);
    return { breadth: sum(x.value, z.value), along: sum(x.slope, z.value), up: sum(x.value, z.slope) };
  };
}
