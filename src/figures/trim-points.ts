import { tunnelTrim } from "../functions/tunnel/trim";
import { named } from "./named";

export interface TrimInput {
  /** Outside diameter of the tube, mm. */
  readonly outside: number;
  /** Half-angle of the waterline against the centreline, degrees. */
  readonly entrance: number;
  /** Angle of the side from upright, outward going up, degrees. */
  readonly flare: number;
}

export interface TrimPoint {
  /** From 1 at the top. */
  readonly number: number;
  /** Degrees round the tube from its top; 90 is forward. */
  readonly angle: number;
  /** Along the outside from the top, mm. */
  readonly girth: number;
  /** Cut line against the mean, mm; outboard is above 0. */
  readonly trim: number;
}

/** The cut line at even angles round the outside of the tube, by `TUNNEL.TRIM`. @throws Fault as that does. */
export function trimPoints({ outside, entrance, flare }: TrimInput, count = 24): TrimPoint[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (i * 360) / count;
    return {
      number: i + 1,
      angle,
      girth: (Math.PI * outside * i) / count,
      trim: named(tunnelTrim, { diameter: outside, entrance, flare, angle }),
    };
  });
}
