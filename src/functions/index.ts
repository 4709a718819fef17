import type { AnyDefinition } from "../formula/definition";
import { conductorDrop } from "./conductor/drop";
import { general } from "./general";
import { survey } from "./survey";
import { tunnel } from "./tunnel";

/** The one list of named functions, by family in the order of the job. */
export const families: Readonly<Record<string, readonly AnyDefinition[]>> = {
  "Tunnel: place, flow, cut": tunnel,
  Survey: survey,
  "Conductor and supply": [conductorDrop],
  General: general,
};

export const catalogue: readonly AnyDefinition[] = Object.values(families).flat();
