import type { AnyDefinition } from "../../formula/definition";
import { hullBackFace } from "./back-face";
import { hullBend } from "./bend";
import { hullBreadth } from "./breadth";
import { hullEntrance } from "./entrance";
import { hullFlare } from "./flare";
import { hullHalfLength } from "./half-length";
import { hullHoleArea } from "./hole-area";
import { hullHoleEdge } from "./hole-edge";
import { hullMeanLength } from "./mean-length";
import { hullStock } from "./stock";
import { hullTrim } from "./trim";
import { hullWater } from "./water";

/** The tunnel in a curved side, from offsets on a grid. */
export const hull: readonly AnyDefinition[] = [
  hullBreadth,
  hullEntrance,
  hullFlare,
  hullHalfLength,
  hullMeanLength,
  hullTrim,
  hullStock,
  hullHoleEdge,
  hullHoleArea,
  hullBackFace,
  hullBend,
  hullWater,
];
