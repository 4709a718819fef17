import type { Table } from "../formula/table";
import { anodeCapacity } from "./anode-capacity";
import { batteryCranking } from "./battery-cranking";
import { batteryGassing } from "./battery-gassing";
import { cableBending } from "./cable-bending";
import { cableSupports } from "./cable-supports";
import { crimpPull } from "./crimp-pull";
import { fuseBreaking } from "./fuse-breaking";
import { jointResistance } from "./joint-resistance";
import { shortCircuitFactors } from "./short-circuit-factors";

/** Published tables from which people pick an input; no function reads them. */
export const tablesToRead: readonly Table[] = [
  shortCircuitFactors,
  batteryCranking,
  batteryGassing,
  fuseBreaking,
  jointResistance,
  crimpPull,
  cableSupports,
  cableBending,
  anodeCapacity,
];
