import { say } from "../../words/say";
import { Fault } from "../fault";

/** Half-breadths measured at every station and height; the offsets run along the stations, height after height. */
export interface OffsetGrid {
  /** mm, rising, forward. */
  readonly stations: readonly number[];
  /** mm, rising, up. */
  readonly heights: readonly number[];
  /** mm, one for each station at the first height, then at the second ...; 0 where there is no hull. */
  readonly offsets: readonly number[];
}

/** The part of the hull that a reading touches, mm. */
export interface Reach {
  readonly aft: number;
  readonly fore: number;
  readonly low: number;
  readonly high: number;
}

/** The lines of a grid from the first to the last, both counted. */
interface Window {
  left: number;
  right: number;
  low: number;
  high: number;
}

function checkRising(name: string, list: readonly number[], least: number): void {
  if (list.length < least) throw new Fault("kind", say`${name}: ${list.length} cells, needs at least ${least}`);
  list.forEach((value, i) => {
    const before = list[i - 1];
    if (before !== undefined && value <= before) {
      throw new Fault("range", say`${name}: cell ${i + 1} is ${value} mm, it must be above ${before} mm`);
    }
  });
}

const short = (value: number): string => String(Number(value.toPrecision(6)));

/** First and last line that a stretch needs. @throws Fault where the grid ends before it. */
function needed(name: string, lines: readonly number[], from: number, to: number): readonly [number, number] {
  const [first, last] = [lines[0] as number, lines.at(-1) as number];
  const slack = (last - first) * 1e-12;
  if (from < first - slack || to > last + slack) {
    throw new Fault(
      "missing",
      say`${name}: the grid holds ${short(first)} to ${short(last)} mm, the reading needs ${short(from)} to ${short(to)} mm; measure further out`,
    );
  }
  let left = 0;
  while (left < lines.length - 2 && (lines[left + 1] as number) <= from) left++;
  let right = lines.length - 1;
  while (right > left + 1 && (lines[right - 1] as number) >= to) right--;
  return [left, right];
}

/**
 * The part of a grid that a surface is laid through: what the reading touches, and around it every further line that
 * lies wholly on the hull, so that the stem and the keel bend nothing.
 *
 * @param least lines each way that the way of reading needs.
 * @throws Fault for a grid that is no grid, ends too early, or runs off the hull under the reading.
 */
export function gridPart({ stations, heights, offsets }: OffsetGrid, reach: Reach, least: number): OffsetGrid {
  checkRising("stations", stations, least);
  checkRising("heights", heights, least);
  const n = stations.length;
  if (offsets.length !== n * heights.length) {
    throw new Fault(
      "kind",
      say`offsets: ${offsets.length} cells, ${n} stations and ${heights.length} heights need ${n * heights.length}`,
    );
  }
  const at = (column: number, row: number): number => offsets[row * n + column] as number;
  const [left, right] = needed("stations", stations, reach.aft, reach.fore);
  const [low, high] = needed("heights", heights, reach.low, reach.high);
  const part: Window = { left, right, low, high };
  const hole = (window: Window): readonly [number, number] | undefined => {
    for (let row = window.low; row <= window.high; row++) {
      for (let column = window.left; column <= window.right; column++) if (!(at(column, row) > 0)) return [column, row];
    }
    return undefined;
  };
  const off = hole(part);
  if (off) {
    const place = say`station ${short(stations[off[0]] as number)} mm, height ${short(heights[off[1]] as number)} mm`;
    throw new Fault(
      "missing",
      say`offsets: ${at(...off)} at ${place}: the grid runs off the hull under the tunnel there; move the tunnel or measure closer to it`,
    );
  }
  for (let grown = true; grown; ) {
    grown = false;
    for (const [side, step, end] of [
      ["left", -1, -1],
      ["right", 1, n],
      ["low", -1, -1],
      ["high", 1, heights.length],
    ] as const) {
      const line = part[side] + step;
      const across = side === "left" || side === "right";
      const strip = across ? { ...part, left: line, right: line } : { ...part, low: line, high: line };
      if (line === end || hole(strip)) continue;
      part[side] = line;
      grown = true;
    }
  }
  const inside = {
    stations: stations.slice(part.left, part.right + 1),
    heights: heights.slice(part.low, part.high + 1),
  };
  checkRising(say`stations on the hull`, inside.stations, least);
  checkRising(say`heights on the hull`, inside.heights, least);
  return {
    ...inside,
    offsets: inside.heights.flatMap((_, k) => inside.stations.map((_, i) => at(part.left + i, part.low + k))),
  };
}
