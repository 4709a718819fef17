import { callFunction, inOrder } from "../formula/call";
import type { AnyDefinition } from "../formula/definition";
import { hullBend } from "../functions/hull/bend";
import { hullBreadth } from "../functions/hull/breadth";
import { hullEntrance } from "../functions/hull/entrance";
import { hullFlare } from "../functions/hull/flare";
import { hullHalfLength } from "../functions/hull/half-length";
import { hullMeanLength } from "../functions/hull/mean-length";
import { radians, tangent } from "./angle";
import { need } from "./need";
import type { TrimPoint } from "./trim-points";

/** A tunnel in a side whose offsets were measured on a grid. */
export interface CurvedSideInput {
  /** Outside diameter of the tube, mm. */
  readonly outside: number;
  /** Where offsets were measured, mm, rising forward. */
  readonly stations: readonly number[];
  /** Where offsets were measured, mm, rising up. */
  readonly heights: readonly number[];
  /** Half-breadths, mm, a row for each height; 0 where there is no hull. */
  readonly offsets: readonly number[];
  /** Tunnel axis, counted as the stations are, mm. */
  readonly station: number;
  /** Tunnel axis, counted as the heights are, mm. */
  readonly height: number;
}

export interface CurvedSide {
  /** Mean half-length round the tube, mm: the level from which the cut line counts. */
  readonly mean: number;
  /** Half-breadth at the axis, mm. */
  readonly breadth: number;
  /** Degrees. */
  readonly entrance: number;
  /** Degrees. */
  readonly flare: number;
  /** Greatest distance of the skin from the flat side through the axis, mm. */
  readonly bend: number;
  /** The cut line at even angles. */
  readonly points: (count: number) => TrimPoint[];
  /** The cut line of the flat side through the axis, against the same level. */
  readonly flat: (count: number) => TrimPoint[];
}

/** Reads the side by the `HULL.` functions. @throws Fault as they do. */
export function curvedSide(input: CurvedSideInput): CurvedSide {
  need(input);
  const { outside: diameter, ...grid } = input;
  const read = (definition: AnyDefinition, more: Readonly<Record<string, number>> = {}): number =>
    Number(callFunction(definition, inOrder(definition, { ...grid, ...more })));
  const mean = read(hullMeanLength, { diameter });
  const breadth = read(hullBreadth);
  const entrance = read(hullEntrance);
  const flare = read(hullFlare);
  const around = (count: number, half: (angle: number) => number): TrimPoint[] =>
    Array.from({ length: count }, (_, i) => {
      const angle = (i * 360) / count;
      return { number: i + 1, angle, girth: (Math.PI * diameter * i) / count, trim: half(angle) - mean };
    });
  return {
    mean,
    breadth,
    entrance,
    flare,
    bend: read(hullBend, { diameter }),
    points: (count) => around(count, (angle) => read(hullHalfLength, { diameter, angle })),
    // By its own arithmetic: a waterline that opens forward has a flat side too, which TUNNEL.TRIM does not take.
    flat: (count) =>
      around(count, (angle) => {
        const up = Math.cos(radians(angle)) * tangent(flare);
        const ahead = Math.sin(radians(angle)) * tangent(entrance);
        return breadth + (diameter / 2) * (up - ahead);
      }),
  };
}
