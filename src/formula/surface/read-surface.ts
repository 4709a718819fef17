import { say } from "../../words/say";
import { type Between, type HullSurface, hullSurface } from "./hull-surface";
import type { OffsetGrid } from "./offset-grid";
import {
  type Bore,
  backFace,
  bend,
  edgeLength,
  greatestHalfLength,
  halfLength,
  holeArea,
  meanHalfLength,
  tunnelVolume,
} from "./round-tunnel";

interface Kind {
  readonly read: (surface: HullSurface, bore: Bore, angle: number) => number;
  /** What is read, for a sentence. */
  readonly says: string;
}

const degrees = 180 / Math.PI;

/** What can be read from a hull surface. Lengths in mm, angles in degrees, areas in mm2, volumes in mm3. */
export const readings = {
  breadth: { says: say`half-breadth`, read: (at, { station, height }) => at(station, height).breadth },
  entrance: {
    says: say`angle of the waterline against the centreline, closing forward`,
    read: (at, { station, height }) => -Math.atan(at(station, height).along) * degrees,
  },
  flare: {
    says: say`angle of the section from upright, outward going up`,
    read: (at, { station, height }) => Math.atan(at(station, height).up) * degrees,
  },
  half: { says: say`half-length at that angle`, read: halfLength },
  mean: { says: say`mean of the half-lengths round the tube`, read: meanHalfLength },
  greatest: { says: say`greatest half-length round the tube`, read: greatestHalfLength },
  edge: { says: say`length of the line in which tube and skin meet`, read: edgeLength },
  strip: { says: say`greatest strip of aft wall past the fore lip`, read: backFace },
  bend: { says: say`greatest distance of the skin from the flat side through the axis`, read: bend },
  area: { says: say`area of skin inside the tube`, read: holeArea },
  volume: { says: say`space inside the tunnel, skin to skin`, read: tunnelVolume },
} as const satisfies Readonly<Record<string, Kind>>;

export type Reading = keyof typeof readings;

/**
 * Reads a hull surface laid through measured offsets.
 *
 * @param bore radius 0 for a reading at the axis alone.
 * @throws Fault for a grid that is no grid, ends too early, or runs off the hull under the tube.
 */
export function readSurface(reading: Reading, grid: OffsetGrid, between: Between, bore: Bore, angle: number): number {
  const { station, height, radius } = bore;
  const reach = { aft: station - radius, fore: station + radius, low: height - radius, high: height + radius };
  return readings[reading].read(hullSurface(grid, between, reach), bore, angle);
}
