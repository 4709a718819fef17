import type { AnyDefinition } from "../../formula/definition";
import { bevelVolume } from "./bevel-volume";
import { bevelWidth } from "./bevel-width";
import { fabricFraction } from "./fabric-fraction";
import { fabricGrams } from "./fabric-grams";
import { fabricMixed } from "./fabric-mixed";
import { filletArea } from "./fillet-area";
import { filletVolume } from "./fillet-volume";
import { jointHullBand } from "./joint-hull-band";
import { jointPlies } from "./joint-plies";
import { jointShell } from "./joint-shell";
import { jointTubeBand } from "./joint-tube-band";
import { plyCount } from "./ply-count";
import { plyDensity } from "./ply-density";
import { plyFraction } from "./ply-fraction";
import { plyResin } from "./ply-resin";
import { plyThickness } from "./ply-thickness";
import { plyVolume } from "./ply-volume";
import { resinHardener } from "./resin-hardener";
import { resinPortion } from "./resin-portion";
import { resinPortions } from "./resin-portions";
import { resinPotLife } from "./resin-pot-life";
import { stockPacks } from "./stock-packs";

/** Joint and laminate, in the order of the job. */
export const joint: readonly AnyDefinition[] = [
  plyThickness,
  plyResin,
  plyCount,
  plyVolume,
  plyDensity,
  plyFraction,
  fabricGrams,
  fabricFraction,
  fabricMixed,
  jointShell,
  jointHullBand,
  jointTubeBand,
  jointPlies,
  bevelWidth,
  bevelVolume,
  filletArea,
  filletVolume,
  resinPotLife,
  resinPortion,
  resinPortions,
  resinHardener,
  stockPacks,
];
