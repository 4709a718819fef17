import type { NumberArgument, RangeArgument, TextArgument } from "../../formula/arguments";

// Arguments that the functions of this folder share. Axes as for the tunnel: stations run forward, heights up, offsets
// outboard from the centreplane; stations and heights may count from anywhere.

export const grid = {
  stations: { kind: "range", unit: "mm", about: "where offsets were measured, rising forward" },
  heights: { kind: "range", unit: "mm", about: "where offsets were measured, rising up" },
  offsets: {
    kind: "range",
    unit: "mm",
    about: "half-breadths, a row for each height and a column for each station; 0 where there is no hull",
    min: 0,
    max: 20000,
  },
} as const satisfies Record<string, RangeArgument>;

const far = 1e6;

export const axis = {
  station: { unit: "mm", about: "tunnel axis, counted as the stations are", min: -far, max: far },
  height: { unit: "mm", about: "tunnel axis, counted as the heights are", min: -far, max: far },
} as const satisfies Record<string, NumberArgument>;

export const angle = {
  unit: "deg",
  about: "place on the tube: 0 top, 90 forward, 180 bottom, 270 aft",
  min: -360,
  max: 360,
} as const satisfies NumberArgument;

export const between = {
  kind: "text",
  about: "how to read between the offsets",
  choices: ["smooth", "straight"],
  otherwise: "smooth",
} as const satisfies TextArgument;

/** What every text of this folder has to say. */
export const validGrid =
  "The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.";
