import type { AnyDefinition } from "../../formula/definition";
import { tunnelAxisDepth } from "./axis-depth";
import { tunnelBackFace } from "./back-face";
import { tunnelCover } from "./cover";
import { tunnelEdge } from "./edge";
import { tunnelFriction } from "./friction";
import { tunnelGrid } from "./grid";
import { tunnelGrill } from "./grill";
import { tunnelHalfLength } from "./half-length";
import { tunnelHoleArea } from "./hole-area";
import { tunnelHoleEdge } from "./hole-edge";
import { tunnelHoleLength } from "./hole-length";
import { tunnelImmersion } from "./immersion";
import { tunnelInlet } from "./inlet";
import { motorLean } from "./lean";
import { tunnelLongest } from "./longest";
import { tunnelLoss } from "./loss";
import { tunnelOblique } from "./oblique";
import { tunnelRecess } from "./recess";
import { tunnelRecessDepth } from "./recess-depth";
import { tunnelSlope } from "./slope";
import { tunnelStock } from "./stock";
import { tunnelSubmerged } from "./submerged";
import { tunnelSuction } from "./suction";
import { tunnelTrim } from "./trim";
import { tunnelVentilation } from "./ventilation";
import { tunnelWall } from "./wall";
import { tunnelWater } from "./water";

/** Tunnel: place, flow, cut, in the order of the job. */
export const tunnel: readonly AnyDefinition[] = [
  tunnelCover,
  tunnelImmersion,
  tunnelAxisDepth,
  tunnelSubmerged,
  tunnelVentilation,
  tunnelEdge,
  tunnelInlet,
  tunnelOblique,
  tunnelGrid,
  tunnelGrill,
  tunnelFriction,
  tunnelLoss,
  tunnelSuction,
  tunnelSlope,
  tunnelLongest,
  tunnelHalfLength,
  tunnelStock,
  tunnelTrim,
  tunnelHoleLength,
  tunnelHoleEdge,
  tunnelHoleArea,
  tunnelBackFace,
  tunnelRecess,
  tunnelRecessDepth,
  tunnelWall,
  tunnelWater,
  motorLean,
];
