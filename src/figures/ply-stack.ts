import type { Point } from "./draw/mark";

/** Plies that start at a corner and grow longer one by one. */
export interface PlyStack {
  /** Plies, whole. */
  readonly count: number;
  /** Thickness of one, mm. */
  readonly each: number;
  /** Reach of the first, mm. */
  readonly first: number;
  /** Each further one reaches on by this, mm. */
  readonly step: number;
}

/**
 * Height of the underside of ply `index` above the surface at a distance from the corner: of the plies below it only
 * those count which reach that far.
 */
export function heightUnder({ each, first, step }: PlyStack, index: number, distance: number): number {
  let under = 0;
  for (let below = 0; below < index; below++) if (first + below * step >= distance - 1e-9) under++;
  return under * each;
}

/** Upper edge of ply `index` from the corner outwards, as distance and height in mm; it steps down over each end. */
export function plyEdge(stack: PlyStack, index: number): Point[] {
  const { each, first, step } = stack;
  const points: Point[] = [{ x: 0, y: (index + 1) * each }];
  for (let below = 0; below < index; below++) {
    const end = first + below * step;
    const over = Math.min(each * 1.5, step);
    points.push({ x: end, y: heightUnder(stack, index, end) + each });
    points.push({ x: end + over, y: heightUnder(stack, index, end + over + 1e-6) + each });
  }
  const reach = first + index * step;
  const top = heightUnder(stack, index, reach) + each;
  points.push({ x: reach, y: top }, { x: reach, y: top - each });
  return points;
}
